import { coversOf, type Part } from '../../engine/train/index.ts';

/**
 * How far a unit is stripped: its parts, and the names of those that are off. Plain data; what may
 * be done next follows from what covers what.
 */
export interface Stripping {
  readonly teardown: readonly Part[];
  readonly off: ReadonlySet<string>;
}

/** What is still on and must come off before a part does; none where it may come off, or is off. */
export function heldOnBy({ teardown, off }: Stripping, part: Part): string[] {
  if (off.has(part.name)) return [];
  return coversOf(teardown, part).filter((name) => !off.has(name));
}

/** What is still off and must go on before a part does, for it is under that part. */
export function keptOffBy({ teardown, off }: Stripping, part: Part): string[] {
  if (!off.has(part.name)) return [];
  const under = teardown.filter((its) => coversOf(teardown, its).includes(part.name));
  return under.map(({ name }) => name).filter((name) => off.has(name));
}

/** The first part, in the order of the file, that may come off; undefined when all are off. */
export function nextOff(stripping: Stripping): Part | undefined {
  const { teardown, off } = stripping;
  return teardown.find((part) => !off.has(part.name) && heldOnBy(stripping, part).length === 0);
}

/** The last part of the file that is off and may go on; undefined when none is off. */
export function nextOn(stripping: Stripping): Part | undefined {
  const { teardown, off } = stripping;
  return teardown.findLast((part) => off.has(part.name) && keptOffBy(stripping, part).length === 0);
}
