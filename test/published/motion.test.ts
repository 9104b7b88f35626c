import { describe, expect, it } from 'vitest';
import { inertiasOf } from '../../src/engine/inertia/index.ts';
import { motionOf } from '../../src/engine/motion/index.ts';
import { Stepper } from '../../src/engine/step/index.ts';
import { trainOf } from '../line.ts';
import { markOf } from './marks.ts';
import motion from './motion.json' with { type: 'json' };

// The examples SimpleGearShift and CoupledClutches of the Modelica Standard Library (rotational
// mechanics; BSD-3-Clause), with the reference results that are published beside it: parameters and
// figures alone. Ours are fixed steps of a tenth of a millisecond, theirs of a variable length.
const H = 1e-4;

describe('motion as a published library has it', () => {
  it('is of the results that stand beside the library, as they stand there', () => {
    expect(motion.cases.map(markOf)).toEqual(['printed', 'printed']);
  });

  it('shifts one planetary set: brake off, clutch on', () => {
    const { stepper } = moving(
      `set 50:75; in sun shaft = set.sun; out arm = set.carrier; rim = set.ring;
      ring brake holds rim; ring clutch joins sun shaft + rim`,
      { 'set.sun': 1, 'set.carrier': 10, 'set.ring': 0 },
      ['set.sun', 'set.carrier'],
    );
    const found = followed(0, stepper, (time) => {
      const share = Math.min(1, Math.max(0, (time + H / 2 - 2) / 0.1));
      capacity(stepper, 0, 100 * (1 - share));
      capacity(stepper, 1, 100 * share);
      const speed = stepper.speed('set.carrier');
      stepper.torque[0] = time >= 0.5 - H / 2 ? 20 : 0;
      stepper.torque[1] = -20 * (speed / 10.471975511966) ** 2;
    });
    const worst = found(() => [
      stepper.speed('set.sun'),
      stepper.speed('set.carrier'),
      stepper.speed('set.ring') - stepper.speed('set.sun'),
    ]);
    expect(worst.rows).toBe(25);
    expect(worst.most).toBeLessThan(1e-3); // where it may be 1e-2 too
  });

  it('couples four inertias by three clutches in a row', () => {
    const { stepper } = moving(
      'in a; out d; first clutch joins b + a; second clutch joins c + b; third clutch joins d + c',
      { a: 1, b: 1, c: 1, d: 1 },
      ['a'],
      { a: 10 },
    );
    stepper.sticking.fill(1.1);
    const found = followed(1, stepper, (time) => {
      const middle = time + H / 2;
      stepper.torque[0] = 10 * Math.sin(10 * Math.PI * middle);
      capacity(stepper, 0, 10 * Math.max(0, Math.cos(0.4 * Math.PI * middle)));
      capacity(stepper, 1, middle < 0.4 ? 0 : 10);
      capacity(stepper, 2, middle < 0.9 ? 0 : 10);
    });
    const worst = found(() => [stepper.speed('a'), ...[0, 1, 2].map((k) => stepper.slipOf(k))]);
    expect(worst.rows).toBe(31);
    expect(worst.most).toBeLessThan(2e-2);
  });
});

function moving(
  line: string,
  kgm2: Readonly<Record<string, number>>,
  ports: readonly string[],
  start: Readonly<Record<string, number>> = {},
): { readonly stepper: Stepper } {
  const train = trainOf(line);
  const inertias = inertiasOf(train, new Map(Object.entries(kgm2)));
  const stepper = new Stepper(motionOf(train), inertias, ports);
  stepper.start(new Map(Object.entries(start)));
  return { stepper };
}

function capacity(stepper: Stepper, k: number, torque: number): void {
  stepper.pushing[k] = stepper.pulling[k] = torque;
}

/** Steps from row to row of a case; how far the worst column of the worst row is from the figures. */
function followed(at: number, stepper: Stepper, drive: (time: number) => void) {
  return (columns: () => number[]): { readonly rows: number; readonly most: number } => {
    const { rows } = (motion.cases[at] as (typeof motion.cases)[number]).values;
    let most = 0;
    let step = 0;
    for (const [time = 0, ...figures] of rows) {
      for (; step < Math.round(time / H); step++) {
        drive(step * H);
        stepper.step(H);
      }
      for (const [k, value] of columns().entries()) {
        most = Math.max(most, Math.abs(value - (figures[k] as number)));
      }
    }
    return { rows: rows.length, most };
  };
}
