import { compare } from '../../engine/linear/index.ts';
import type { Length } from '../length/index.ts';
import { type Limited, type Verdict, verdictOf } from '../limits/index.ts';
import type { PackReadings } from './readings.ts';

/** A step gauge: the largest step that fits, the smallest that does not. */
export interface Gauge {
  readonly fits?: Length;
  readonly doesNotFit?: Length;
  /** Absent: the steps do not settle it. */
  readonly verdict?: Verdict;
  readonly turnedRound: boolean;
}

/** The gap is at least the step that fits, and below the one that does not. */
export function gaugeOf(
  { stepGauge }: PackReadings,
  bounds: Limited | undefined,
): Gauge | undefined {
  if (!stepGauge) return undefined;
  const { fits, doesNotFit } = stepGauge;
  const turnedRound = Boolean(fits && doesNotFit && compare(fits.um, doesNotFit.um) >= 0);
  const verdict = bounds && !turnedRound ? settled(fits, doesNotFit, bounds) : undefined;
  return { ...stepGauge, ...(verdict && { verdict }), turnedRound };
}

function settled(
  fits: Length | undefined,
  doesNotFit: Length | undefined,
  bounds: Limited,
): Verdict | undefined {
  const { least, most } = bounds;
  if (fits && verdictOf(fits.um, bounds) === 'too big') return 'too big';
  if (doesNotFit && least && compare(doesNotFit.um, least.um) <= 0) return 'too small';
  const above = !least || (fits !== undefined && compare(fits.um, least.um) >= 0);
  const below = !most || (doesNotFit !== undefined && compare(doesNotFit.um, most.um) <= 0);
  return above && below ? 'inside' : undefined;
}
