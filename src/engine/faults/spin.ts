import { compare, ONE, type Rational } from '../linear/index.ts';
import type { Motion } from '../motion/index.ts';
import { isSpan, type Quantity, sizeOf } from '../reckon/index.ts';
import { type MemberName, outputsOf } from '../train/index.ts';
import type { FaultMatrix, FaultRow, MatrixGear, Spins } from './answer.ts';
import type { Speeds } from './trial.ts';

/** What spins free or fast of a faulty train's bodies, held against the healthy `sound` speeds. */
export function spinsOf({ assembly, train }: Motion, speeds: Speeds, sound: Speeds): Spins {
  const { bodies, onPins } = assembly;
  const ends = [train.input, ...outputsOf(train)].flatMap((end) => speeds.get(end) ?? []);
  const limit = greatest(ends.map(sizeOf).filter((size): size is Rational => !isSpan(size)));
  const free: MemberName[] = [];
  const fast = new Map<MemberName, Quantity>();
  bodies.forEach(({ label, names }, body) => {
    const speed = speeds.get(label);
    if (!speed || onPins.has(body)) return;
    const before = names.flatMap((name) => sound.get(name) ?? []);
    if (isSpan(speed) && before.some((was) => !isSpan(was))) free.push(label);
    const least = leastSize(speed);
    if (!least || compare(least, limit) <= 0) return;
    // A body that was free might have turned as fast.
    const faster = before.every((was) => {
      const size = sizeOf(was);
      return !isSpan(size) && compare(least, size) > 0;
    });
    if (faster) fast.set(label, speed);
  });
  return { free, fast };
}

/** The member that a row's faults make spin fastest: under power, else on coast. */
export function fastest({ gears }: FaultMatrix, { cells }: FaultRow): Fast | undefined {
  for (const end of ['drive', 'coast'] as const) {
    const all = cells.flatMap(({ spins }, k) => {
      return [...(spins?.[end].fast ?? [])].map(([member, speed]): Fast => {
        return { gear: gears[k] as MatrixGear, end, member, speed };
      });
    });
    const size = ({ speed }: Fast) => leastSize(speed) as Rational;
    const [first, ...others] = all;
    if (!first) continue;
    return others.reduce((a, b) => (compare(size(b), size(a)) > 0 ? b : a), first);
  }
  return undefined;
}

/** A member that spins fast: its speed is per turn of the turned end. */
export interface Fast {
  readonly gear: MatrixGear;
  readonly end: 'drive' | 'coast';
  readonly member: MemberName;
  readonly speed: Quantity;
}

// The turned end turns once, so an end that is free counts for nothing.
function greatest(sizes: readonly Rational[]): Rational {
  return sizes.reduce((a, b) => (compare(b, a) > 0 ? b : a), ONE);
}

function leastSize(speed: Quantity): Rational | null {
  const size = sizeOf(speed);
  return isSpan(size) ? size.from : size;
}
