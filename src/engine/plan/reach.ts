import {
  assemble,
  hidersOf,
  outputsOf,
  ownName,
  type Part,
  type Train,
  upOf,
} from '../train/index.ts';

/**
 * Which parts hands get hold of while a train is built. One that is on is in reach while none of
 * its hiders is on, and while the end of the unit is up at which it went in; where nobody says
 * which end is up, it may be any. The parts with the input and the output stick out of the unit
 * at its ends: they are in reach always.
 */
export class Reach {
  private readonly build: readonly Part[];
  private readonly hiders: ReadonlyMap<Part, readonly string[]>;
  private readonly up: ReturnType<typeof upOf>;
  private readonly ends: ReadonlySet<Part>;

  constructor(train: Train) {
    const { teardown = [] } = train;
    this.build = teardown.toReversed();
    this.hiders = new Map(teardown.map((part) => [part, hidersOf(teardown, part)]));
    this.up = upOf(teardown);
    this.ends = new Set([train.input, ...outputsOf(train)].flatMap((end) => partsAt(train, end)));
  }

  /** Those in reach after a step of the build, the last to go on first. */
  after(step: number): Part[] {
    const on = this.build.slice(0, step);
    const last = on.at(-1);
    const names = new Set(on.map(({ name }) => name));
    const up = last && this.up(last);
    const inReach = (part: Part) => {
      if (this.ends.has(part)) return true;
      const its = this.up(part);
      if (up !== undefined && its !== undefined && its !== up) return false;
      return !this.hiders.get(part)?.some((hider) => names.has(hider));
    };
    return on.filter(inReach).toReversed();
  }
}

// What carries an end of the train by its name; else every part of the same body.
function partsAt(train: Train, end: string): Part[] {
  const { teardown = [] } = train;
  const own = ownName(train);
  const named = teardown.filter(({ carries }) => carries.some((name) => own(name) === own(end)));
  if (named.length > 0) return named;
  const { bodyOf } = assemble(train);
  const body = bodyOf(end);
  const carried = (name: string) => body !== undefined && bodyOf(name) === body;
  return teardown.filter(({ carries }) => carries.some(carried));
}
