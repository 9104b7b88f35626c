import type { Train } from '../train/index.ts';
import { atWork, type AtWork, type PartAtWork, partsOf } from './atwork.ts';

/** A gear in which somebody listened. */
export interface Heard {
  readonly gear: string;
  readonly on: readonly string[];
}

/** A part that may be what is heard. */
export interface Growler {
  readonly part: PartAtWork;
  /**
   * `turns`: it turns within itself in every noisy gear and in no quiet one. `loaded`: it turns
   * in some quiet gear too, but is loaded in the noisy ones alone.
   */
  readonly because: 'turns' | 'loaded';
  /** The noisy gears in which it is loaded. */
  readonly loadedIn: readonly string[];
}

/**
 * Which parts are at work in the noisy gears and not in the quiet ones, those with the better
 * reason first, and of these the more loaded; none where nobody heard anything. A part whose
 * motion nothing settles is not ruled out by it.
 */
export function growlers(
  train: Train,
  noisy: readonly Heard[],
  quiet: readonly Heard[],
): Growler[] {
  if (noisy.length === 0) return [];
  const parts = partsOf(train);
  const loud = noisy.map(({ gear, on }) => ({ gear, work: atWork(train, on, parts) }));
  const silent = quiet.map(({ on }) => atWork(train, on, parts));
  return parts
    .flatMap((part): Growler[] => {
      const heard = loud.map(({ gear, work }) => ({ gear, its: work.get(part) as AtWork }));
      const hushed = silent.map((work) => work.get(part) as AtWork);
      if (heard.some(({ its }) => its.turns === 'no')) return [];
      const loadedIn = heard.filter(({ its }) => its.loaded).map(({ gear }) => gear);
      if (hushed.every(({ turns }) => turns !== 'yes')) {
        return [{ part, because: 'turns', loadedIn }];
      }
      const only = loadedIn.length === heard.length && hushed.every(({ loaded }) => !loaded);
      return only ? [{ part, because: 'loaded', loadedIn }] : [];
    })
    .toSorted((a, b) => rank(a) - rank(b) || b.loadedIn.length - a.loadedIn.length);
}

// What is meshed or loaded growls sooner than a bearing that turns alone.
function rank({ part, because }: Growler): number {
  return (because === 'turns' ? 0 : 2) + (part.part === 'bearing' ? 1 : 0);
}
