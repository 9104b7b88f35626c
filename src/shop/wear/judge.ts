import {
  compare,
  fraction,
  minus,
  type Rational,
  signOf,
  times,
} from '../../engine/linear/index.ts';
import type { WearCheck } from '../../engine/train/index.ts';
import { type Length, less } from '../length/index.ts';
import {
  type Bounds,
  boundsOf,
  digitRemarks,
  type GapRemark,
  limitRemarks,
  speakAgainst,
  sizeOf,
  usableBounds,
  type Verdict,
  verdictOfReading,
} from '../limits/index.ts';
import type { WearReadings } from './readings.ts';

/** What the readings of a worn part say. The worst reading counts, never the mean. */
export interface WearJudgement {
  readonly check: WearCheck;
  /** Of a bushing: the tightest shaft in its bore, and the loosest. */
  readonly smallest?: Length;
  readonly largest?: Length;
  readonly spreadUm?: Rational;
  /** The one that the verdict is of; where all is well, the one that wear will take first. */
  readonly worst?: Length;
  readonly bounds?: Bounds;
  readonly verdict?: Verdict;
  readonly remarks: readonly GapRemark[];
}

/** Judges what wears by its worst reading against the limit of the file. */
export function judgeWear(check: WearCheck, readings: Omit<WearReadings, 'part'>): WearJudgement {
  const bounds = check.limit && boundsOf(check.limit);
  const usable = usableBounds(bounds);
  const gaps = gapsOf(readings);
  const [smallest, largest] = [gaps[0], gaps.at(-1)];
  // Wear is limited on one side only, mostly.
  const limits = limitRemarks(bounds).filter(({ remark }) => remark !== 'one limit');
  const kept = { check, ...(bounds && { bounds }) };
  if (!smallest || !largest) return { ...kept, remarks: [{ remark: 'nothing read' }, ...limits] };
  // What wears grows larger; a spring sags, and a washer grows thinner.
  const sags = check.measure === 'spring length' || check.measure === 'thickness';
  const tooBig = usable && verdictOfReading(largest, usable) === 'too big';
  const tooSmall = usable && verdictOfReading(smallest, usable) === 'too small';
  const verdict: Verdict = tooBig ? 'too big' : tooSmall ? 'too small' : 'inside';
  const worst = tooBig ? largest : tooSmall || sags ? smallest : largest;
  const noSlack = sags ? signOf(smallest.um) <= 0 : signOf(smallest.um) < 0;
  const apart = sizesApart(readings);
  const against: GapRemark[] = [
    ...(noSlack ? [{ remark: 'no slack' } as const] : []),
    ...apart,
    ...(usable && apart.length === 0 ? digitRemarks(gaps, usable).slice(0, 1).map(ofPart) : []),
  ];
  const judged = usable && !speakAgainst(against);
  return {
    ...kept,
    smallest,
    largest,
    spreadUm: minus(largest.um, smallest.um),
    worst,
    ...(judged && { verdict }),
    remarks: [...against, ...limits],
  };
}

// Gaps are sorted, so a place would not be where it was read.
function ofPart(remark: GapRemark): GapRemark {
  return remark.remark === 'other unit' ? { remark: 'other unit', meant: remark.meant } : remark;
}

function sizesApart({ bore, shaft }: Omit<WearReadings, 'part'>): GapRemark[] {
  const [bores, shafts] = [sorted(bore), sorted(shaft)];
  const pairs = [
    [bores.at(-1), shafts[0]],
    [bores[0], shafts.at(-1)],
  ] as const;
  const odd = pairs.find(([a, b]) => {
    return a && b && compare(times(sizeOf(minus(a.um, b.um)), fraction(10)), sizeOf(a.um)) > 0;
  });
  return odd?.[0] && odd[1] ? [{ remark: 'sizes apart', bore: odd[0], shaft: odd[1] }] : [];
}

// From the smallest to the largest, whatever the order in which they were read.
function gapsOf({ read, bore, shaft }: Omit<WearReadings, 'part'>): Length[] {
  const gaps = [...(read ?? [])];
  const [bores, shafts] = [sorted(bore), sorted(shaft)];
  if (bores.length > 0 && shafts.length > 0) {
    gaps.push(less(bores.at(-1) as Length, shafts[0] as Length));
    gaps.push(less(bores[0] as Length, shafts.at(-1) as Length));
  }
  return sorted(gaps);
}

// Of those alike, the coarser last: the order in which they were read plays no part.
function sorted(lengths: readonly Length[] = []): Length[] {
  return lengths.toSorted((a, b) => compare(a.um, b.um) || compare(a.stepUm, b.stepUm));
}
