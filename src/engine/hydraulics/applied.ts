import { compare, minus, plus, type Rational, signOf, times, ZERO } from '../linear/index.ts';
import type { Servo, Side } from './circuit.ts';
import type { LineNow } from './lines.ts';

/**
 * `applied`: oil pushes it on; `weak`: fed at a pressure that nobody can say, or leaking; `held off`:
 * fed, but its release side wins; `released`: no oil on it.
 */
export type Application = 'applied' | 'weak' | 'held off' | 'released';

export interface ServoNow {
  readonly device: string;
  readonly is: Application;
  /** The most that pushes it on: of one chamber its pressure, of several pressure times area. */
  readonly push: Rational;
}

/** What the oil does to a device now: by areas where all are known. */
export function servoNow(servo: Servo, lines: ReadonlyMap<string, LineNow>): ServoNow {
  const { device, chambers, wins = 'releases' } = servo;
  const known = chambers.every(({ area }) => area !== undefined);
  const on = side(servo, 'applies', lines);
  const off = side(servo, 'releases', lines);
  const is = ((): Application => {
    if (signOf(on.most) === 0) return 'released';
    if (signOf(off.most) === 0) return signOf(on.least) > 0 ? 'applied' : 'weak';
    if (!known) {
      if (wins === 'applies') return signOf(on.least) > 0 ? 'applied' : 'weak';
      return signOf(off.least) > 0 ? 'held off' : 'weak';
    }
    if (compare(on.most, off.least) <= 0) return 'held off';
    return compare(on.least, off.most) > 0 ? 'applied' : 'weak';
  })();
  const net = known ? minus(on.most, off.most) : on.most;
  return { device, is, push: is === 'applied' || is === 'weak' ? net : ZERO };
}

function side(
  { chambers }: Servo,
  which: Side,
  lines: ReadonlyMap<string, LineNow>,
): { readonly least: Rational; readonly most: Rational } {
  let [least, most] = [ZERO, ZERO];
  for (const { side: its, line, area } of chambers) {
    const now = lines.get(line);
    if (!now || its !== which) continue;
    least = plus(least, area ? times(now.least, area) : now.least);
    most = plus(most, area ? times(now.most, area) : now.most);
  }
  return { least, most };
}
