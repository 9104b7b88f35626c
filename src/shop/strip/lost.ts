import { coversOf, type Part } from '../../engine/train/index.ts';
import type { Stripping } from './stripping.ts';

/**
 * Whether a play (or a preload) that is not read can be read no more once a part is off: the part
 * that is said to close it, while all that close it are on; where the file says of none, any part
 * that is the first to come off.
 */
export function isLostWith({ teardown, off }: Stripping, part: Part, name: string): boolean {
  const closers = closersOf(teardown, name);
  if (closers.length === 0) return off.size === 0;
  return closers.includes(part) && !closers.some((its) => off.has(its.name));
}

/** Whether it can be read while the unit is whole: nothing is over what closes it. */
export function isReadWhole(teardown: readonly Part[], name: string): boolean {
  const closers = closersOf(teardown, name);
  if (closers.length === 0) return true;
  return closers.some((part) => coversOf(teardown, part).length === 0);
}

function closersOf(teardown: readonly Part[], name: string): readonly Part[] {
  return teardown.filter(({ closes }) => closes?.includes(name));
}
