import { compare, minus, plus, type Rational, signOf, times, ZERO } from '../linear/index.ts';
import type { Valve } from './circuit.ts';
import type { LineNow } from './lines.ts';

/** What a line has, by its name. */
export interface LinesNow {
  get(line: string): LineNow | undefined;
}

/**
 * Where a valve's forces take it, from where it stands: the position next to it or its own, and
 * `unsure` where that hangs on a pressure that nobody can say.
 */
export interface Wanted {
  readonly position: number;
  readonly unsure: boolean;
}

/** One step of a valve: it goes to the next position, and its lands are looked at anew there. */
export function wanted(valve: Valve, at: number, lines: LinesNow): Wanted {
  if (valve.stuck !== undefined) return { position: valve.stuck, unsure: false };
  const [least, most] = netForce(valve, at, lines);
  const low = stepFor(valve, at, least);
  const high = stepFor(valve, at, most);
  return low === high ? { position: at + low, unsure: false } : { position: at, unsure: true };
}

/** Oil's push away from the first position less its push back: the least and the most it may be. */
function netForce(
  { pushes }: Valve,
  at: number,
  lines: LinesNow,
): readonly [least: Rational, most: Rational] {
  let least = ZERO;
  let most = ZERO;
  for (const { line, to, area, in: only } of pushes) {
    const now = lines.get(line);
    if (!now || (only !== undefined && only !== at)) continue;
    const [small, large] = [times(now.least, area), times(now.most, area)];
    least = to === 'away' ? plus(least, small) : minus(least, large);
    most = to === 'away' ? plus(most, large) : minus(most, small);
  }
  return [least, most];
}

function stepFor({ positions, springs, stays }: Valve, at: number, net: Rational): -1 | 0 | 1 {
  if (stays) {
    const way = signOf(net);
    return way > 0 && at + 1 < positions.length ? 1 : way < 0 && at > 0 ? -1 : 0;
  }
  const ahead = springs[at];
  if (ahead !== undefined && compare(net, ahead) > 0) return 1;
  const behind = springs[at - 1];
  return behind !== undefined && compare(net, behind) <= 0 ? -1 : 0;
}
