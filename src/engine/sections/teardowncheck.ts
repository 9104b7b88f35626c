import {
  assemble,
  CASE,
  coversPorts,
  MEASURED,
  MEASURED_KINDS,
  meshMeasured,
  ownName,
  type Part,
  piecesOf,
  setGearing,
  settersOf,
  type Train,
  uncarried,
} from '../train/index.ts';
import { type Findings, near } from '../yaml/index.ts';
import type { PlaceOf } from '../entries/index.ts';

/** Names that mean nothing, things carried twice, and parts that come off before their covers. */
export function checkTeardown(train: Train, at: PlaceOf, findings: Findings): void {
  const { teardown = [] } = train;
  if (teardown.length === 0) return;
  const carriable = carriableIn(train);
  const own = ownName(train);
  const carriers = new Map<string, string>();
  const order = new Map(teardown.map(({ name }, i) => [name, i]));
  const measured = new Set(measuredIn(train));
  teardown.forEach((part, i) => {
    const { name, carries, covers = [], under = [], 'hidden by': hidden = [] } = part;
    carries.forEach((carried, k) => {
      const place = () => at('teardown', name, 'carries', `${k}`);
      const by = carriers.get(own(carried));
      if (!carriable.has(carried)) {
        findings.error(place(), () => {
          return { problem: 'unknown carried', name: carried, ...near(carried, carriable) };
        });
      } else if (by !== undefined) {
        findings.error(place(), { problem: 'carried twice', name: carried, by });
      }
      carriers.set(own(carried), by ?? name);
    });
    const measurable = (its: string, ...path: string[]) => {
      if (measured.has(its)) return;
      findings.error(at('teardown', name, ...path), () => {
        return { problem: 'nothing to measure', name: its, ...near(its, measured) };
      });
    };
    if (part.sets !== undefined) measurable(part.sets, 'sets');
    part.closes?.forEach((its, k) => measurable(its, 'closes', `${k}`));
    const cover = (key: 'covers' | 'under' | 'hidden by') => (other: string, k: number) => {
      const place = () => at('teardown', name, key, `${k}`);
      const j = order.get(other);
      if (j === undefined) {
        findings.error(place(), () => {
          return { problem: 'unknown teardown part', part: other, ...near(other, order.keys()) };
        });
      } else if (key === 'covers' ? j <= i : j >= i) {
        const [its, off] = key === 'covers' ? [other, name] : [name, other];
        findings.error(place(), { problem: 'comes off too early', part: its, cover: off });
      }
    };
    covers.forEach(cover('covers'));
    under.forEach(cover('under'));
    hidden.forEach(cover('hidden by'));
  });
}

/**
 * Warns of what a teardown forgets: devices (a one-way clutch may come as its two races), wheels
 * and carriers of sets, and bodies that no part brings; and of what is taken for a valve body. For
 * trains without mistakes.
 */
export function lookAtTeardown(train: Train, at: PlaceOf, findings: Findings): void {
  if (!train.teardown) return;
  for (const name of uncarried(train)) {
    findings.warning(at('teardown'), { problem: 'not carried', name });
  }
  lookAtClosing(train, train.teardown, at, findings);
  for (const part of train.teardown) {
    if (!coversPorts(train, part)) continue;
    const { name } = part;
    findings.warning(at('teardown', name, 'feeds'), { problem: 'feeds all', part: name });
  }
}

// What is said to be closed while a part that sets it, or a gear of it, is still to go on.
function lookAtClosing(
  train: Train,
  teardown: readonly Part[],
  at: PlaceOf,
  findings: Findings,
): void {
  teardown.forEach(({ name: part, closes = [] }, i) => {
    closes.forEach((name, k) => {
      const play = train.endPlays?.find(({ shaft }) => shaft === name);
      const meshing = play ? meshMeasured(train, play) : [];
      const needed = new Set([...settersOf(train, name), ...meshing]);
      const later = teardown.slice(0, i).find((other) => needed.has(other));
      if (!later) return;
      const problem = { problem: 'closes too early', part, name, later: later.name } as const;
      findings.warning(at('teardown', part, 'closes', `${k}`), problem);
    });
  });
}

// What has a gap that is measured or set: not what is worn, which lies on the bench.
function measuredIn(train: Train): string[] {
  return MEASURED_KINDS.flatMap((kind) => (kind === 'wear' ? [] : MEASURED[kind](train)));
}

// What a part can bring: any name of a member but the case, devices, and races.
function carriableIn(train: Train): Set<string> {
  const names = new Set<string>(assemble(train).members);
  for (const set of train.sets) {
    for (const { member } of setGearing(train, set).planets) names.add(member);
  }
  for (const device of train.devices) for (const piece of piecesOf(device)) names.add(piece);
  names.delete(CASE);
  return names;
}
