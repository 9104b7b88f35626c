import { describe, expect, test } from 'vitest';
import {
  type Efficiency,
  flow,
  flowAt,
  isSpan,
  type Quantity,
  type Working,
} from '../../src/engine/flow/index.ts';
import {
  fraction,
  fromText,
  minus,
  ONE,
  over,
  type Rational,
  times,
  toNumber,
  toText,
} from '../../src/engine/linear/index.ts';
import { geometryOf } from '../../src/engine/teeth/index.ts';
import type { Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { type Mark, markOf } from './marks.ts';
import cases from './cases.json' with { type: 'json' };

/** One train that somebody has published figures about. */
interface Case {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  /** Whether the source was read for this, or is told from memory. */
  readonly provenance: 'read' | 'memory';
  readonly train: File;
  readonly figures: readonly Figure[];
}

interface File {
  readonly sets: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  readonly [key: string]: unknown;
}

interface Figure {
  readonly what: string;
  readonly value: number | boolean | string | readonly number[];
  readonly tolerance?: number;
  readonly exact?: string;
  readonly from: Mark;
  /** Of a printed figure: as it stands in the source. */
  readonly printed?: string;
  readonly ask: Ask;
}

/** How a figure is asked of the engine; `times` turns it into the source's unit. */
type Ask = { readonly times?: number } & (
  | {
      readonly speed: string;
      readonly given: Readonly<Record<string, number | string>>;
      readonly per?: string;
    }
  | { readonly ratio: Ends }
  | { readonly torque: Ends & { readonly on: string } }
  | { readonly 'mesh torque': Ends & { readonly on: string } }
  | {
      readonly efficiency: Ends & { readonly losses: Losses };
      readonly state?: Efficiency['state'];
      readonly loss?: true;
    }
  | {
      readonly gear: readonly string[];
      readonly coast?: true;
      readonly 'torque on'?: string;
      readonly state?: string;
      readonly braking?: true;
    }
  | { readonly geometry: Geometry }
  | { readonly 'ring teeth': string }
);

interface Ends {
  readonly input: string;
  readonly output: string;
  readonly held: readonly string[];
}

interface Losses {
  readonly external: string;
  readonly internal: string;
}

interface Geometry {
  readonly set?: string;
  readonly planets?: number;
  readonly pairs?: number;
  /** The one problem asked about; absent: none may be there. */
  readonly without?: string;
  /** Which numbers of planets from the first to the second pass. */
  readonly counts?: readonly [number, number];
}

for (const one of cases as unknown as readonly Case[]) {
  const memory = one.provenance === 'memory' ? ', from memory' : '';
  describe(`${one.title} (${one.source}${memory})`, () => {
    test.each(one.figures.map((figure) => [titleOf(figure), figure] as const))(
      '%s',
      (_, figure) => {
        const found = answer(one.train, figure.ask);
        if (typeof found !== 'object' || !('num' in found)) {
          expect(found).toEqual(figure.value);
          return;
        }
        const factor = figure.ask.times ?? 1;
        const off = Math.abs(toNumber(found) * factor - (figure.value as number));
        expect(off).toBeLessThanOrEqual(figure.tolerance as number);
        const exact = figure.exact === undefined ? undefined : fromText(figure.exact);
        if (exact !== undefined && isWritten(exact, figure) && Number.isInteger(factor)) {
          expect(toText(times(found, fraction(factor)))).toBe(toText(exact));
        }
      },
    );
  });
}

test('every figure that is exact is near the one beside it', () => {
  for (const { figures } of cases as unknown as readonly Case[]) {
    for (const { what, exact, value, tolerance } of figures) {
      const known = exact === undefined ? undefined : fromText(exact);
      if (known === undefined || typeof value !== 'number') continue;
      expect(Math.abs(toNumber(known) - value), what).toBeLessThanOrEqual((tolerance ?? 0) + 1e-12);
    }
  }
});

// A printed figure stands in its source as it is quoted, or upside down; what comes from memory is never
// printed, and of a source that was read nothing is remembered.
test('each figure is marked, and no memory passes for print', () => {
  const marks = (cases as unknown as readonly Case[]).flatMap(({ provenance, figures }) =>
    figures.map(({ what, value, tolerance = 0, printed = '', from }) => {
      const mark = markOf({ from });
      expect(['read', 'memory']).toContain(provenance);
      if (mark === 'remembered') expect(provenance, what).toBe('memory');
      if (mark !== 'printed') {
        expect(printed, what).toBe('');
        return mark;
      }
      expect(provenance, what).toBe('read');
      const quoted = [...printed.matchAll(/\d+(?:\.\d+)?/gu)].map(Number);
      const near = [...quoted, ...quoted.map((its) => 1 / its)].some((its) => {
        return Math.abs(its - Math.abs(value as number)) <= tolerance;
      });
      expect(near, `${what}: ${printed}`).toBe(true);
      return mark;
    }),
  );
  expect(marks.filter((mark) => mark === 'printed').length).toBeGreaterThanOrEqual(39);
});

// A decimal in place of p/q is a float's digits, and is not exact.
function isWritten(exact: Rational, figure: Figure): boolean {
  return figure.exact === toText(exact);
}

function titleOf({ what, from }: Figure): string {
  return from === 'remembered' ? `${what}, the figure from memory` : `${what}, ${from}`;
}

function answer(file: File, ask: Ask): Rational | boolean | string | readonly number[] {
  if ('speed' in ask) {
    const { speeds } = asWorking(file, ask.given);
    const speed = settled(speeds.get(ask.speed));
    return ask.per === undefined ? speed : over(speed, settled(speeds.get(ask.per)));
  }
  if ('ratio' in ask) return drive(file, ask.ratio).ratio as Rational;
  if ('torque' in ask) return torqueOf(drive(file, ask.torque), ask.torque.on, ask.torque.held);
  if ('mesh torque' in ask) {
    const mesh = drive(file, ask['mesh torque']).meshes.find(
      ({ a }) => a === ask['mesh torque'].on,
    );
    return settled(mesh?.onA);
  }
  if ('efficiency' in ask) {
    const { efficiency } = drive(file, ask.efficiency, ask.efficiency.losses);
    expect(efficiency?.state).toBe(ask.state ?? 'runs');
    const value = efficiency?.value as Rational;
    return ask.loss ? minus(ONE, value) : value;
  }
  if ('gear' in ask) {
    const { drive: under, coast } = flow(read(file), ask.gear);
    const working = ask.coast ? coast : under;
    if (ask.state !== undefined) {
      const state = working.devices.get(ask.state)?.state as string;
      return ask.braking
        ? `${coast.engineBraking ? '' : 'no '}engine braking, ${ask.state} ${state}`
        : state;
    }
    const on = ask['torque on'];
    return on === undefined ? (working.ratio as Rational) : torqueOf(working, on, []);
  }
  if ('geometry' in ask) return geometry(file, ask.geometry);
  return fraction(ringThatFits(file, ask['ring teeth']));
}

function asWorking(file: File, given: Readonly<Record<string, number | string>>): Working {
  const members = Object.keys(given);
  const [first, last] = [members[0], members.at(-1)];
  const train = read({ input: first, output: last === first ? 'out' : last, ...file });
  const speeds = members.map((member) => ({
    member,
    speed: fromText(String(given[member])) as Rational,
  }));
  return flowAt(train, [], speeds);
}

/** The train with brakes on the held members, driven from the input. */
function drive(file: File, { input, output, held }: Ends, losses?: Losses): Working {
  const devices = Object.fromEntries(held.map((member) => [brakeOf(member), { brake: member }]));
  const train = read({ ...file, input, output, devices });
  const { external = '1', internal = '1' } = losses ?? {};
  const fractions = {
    external: fromText(external) as Rational,
    internal: fromText(internal) as Rational,
  };
  return flow(train, Object.keys(devices), fractions).drive;
}

// Names of devices have no dot.
function brakeOf(member: string): string {
  return `brake of ${member.replace('.', ' ')}`;
}

function torqueOf(working: Working, on: string, held: readonly string[]): Rational {
  const device = held.includes(on) ? brakeOf(on) : on;
  return settled(working.devices.get(device)?.torque ?? working.torques.get(on));
}

function geometry(
  file: File,
  { set, planets, pairs, without, counts }: Geometry,
): boolean | number[] {
  const name = set ?? (Object.keys(file.sets)[0] as string);
  const problems = (count: object) => {
    const sets = { [name]: { ...file.sets[name], ...count } };
    const train = read({ ...file, sets, input: `${name}.sun`, output: `${name}.ring` });
    return geometryOf(train).map(({ problem }) => problem as string);
  };
  if (counts !== undefined) {
    const [least, most] = counts;
    const all = Array.from({ length: most - least + 1 }, (_, k) => least + k);
    return all.filter((count) => problems({ planets: count }).length === 0);
  }
  const found = problems({ ...(planets && { planets }), ...(pairs && { pairs }) });
  return without === undefined ? found.length === 0 : !found.includes(without);
}

// The only ring that the geometry check takes without a tooth of profile shift, in the middle
// of those that it takes.
function ringThatFits(file: File, name: string): number {
  const fits = Array.from({ length: 200 }, (_, ring) => ring + 1).filter((ring) => {
    const sets = { [name]: { ...file.sets[name], ring } };
    const train = read({ sets, input: `${name}.sun`, output: `${name}.ring` });
    return geometryOf(train).every(({ problem }) => problem !== 'ring does not fit');
  });
  return fits[(fits.length - 1) / 2] as number;
}

function read(file: object): Train {
  const { train, problems } = readTrain(
    JSON.stringify({ holdturn: 1, name: 'Published', ...file }),
  );
  if (train === undefined) throw new Error(`the case is no train: ${JSON.stringify(problems)}`);
  return train;
}

function settled(quantity: Quantity | undefined): Rational {
  if (quantity === undefined || isSpan(quantity)) throw new Error('the figure is not settled');
  return quantity;
}
