import {
  assemble,
  hidersOf,
  type MemberName,
  outputsOf,
  ownName,
  type Part,
  type Train,
  upOf,
} from '../train/index.ts';

/** A part that hands get hold of, by the members of it that are in reach. */
export interface Reached {
  readonly part: Part;
  /** Of what it carries; all of it, unless the part merely sticks out of the unit. */
  readonly carries: readonly MemberName[];
}

/**
 * What hands get hold of while a train is built. A part that is on is in reach while none of its
 * hiders is on, and while the end of the unit is up at which it went in; where nobody says which
 * end is up, it may be any. The input and the outputs stick out of the unit at its ends: they are
 * in reach always, and nothing else that is carried by the same part, such as the case of a
 * differential that brings its two side gears.
 */
export class Reach {
  private readonly build: readonly Part[];
  private readonly hiders: ReadonlyMap<Part, readonly string[]>;
  private readonly up: ReturnType<typeof upOf>;
  private readonly ends: ReadonlyMap<Part, readonly MemberName[]>;

  constructor(train: Train) {
    const { teardown = [] } = train;
    this.build = teardown.toReversed();
    this.hiders = new Map(teardown.map((part) => [part, hidersOf(teardown, part)]));
    this.up = upOf(teardown);
    this.ends = endsOf(train);
  }

  /** Those in reach after a step of the build, the last to go on first. */
  after(step: number): Reached[] {
    const on = this.build.slice(0, step);
    const last = on.at(-1);
    const names = new Set(on.map(({ name }) => name));
    const up = last && this.up(last);
    const open = (part: Part) => {
      const its = this.up(part);
      if (up !== undefined && its !== undefined && its !== up) return false;
      return !this.hiders.get(part)?.some((hider) => names.has(hider));
    };
    return on.toReversed().flatMap((part): Reached[] => {
      if (open(part)) return [{ part, carries: part.carries }];
      const carries = this.ends.get(part);
      return carries ? [{ part, carries }] : [];
    });
  }
}

// What sticks out at the ends of the train: of the parts that carry an end by its name, else of
// every part of the same body, the members that are that body.
function endsOf(train: Train): ReadonlyMap<Part, readonly MemberName[]> {
  const { teardown = [] } = train;
  const own = ownName(train);
  const { bodyOf } = assemble(train);
  const out = new Map<Part, MemberName[]>();
  for (const end of [train.input, ...outputsOf(train)]) {
    const body = bodyOf(end);
    const isEnd = (name: string) => own(name) === own(end);
    const sticksOut = (name: string) =>
      isEnd(name) || (body !== undefined && bodyOf(name) === body);
    const named = teardown.filter(({ carries }) => carries.some(isEnd));
    for (const part of named.length > 0 ? named : teardown) {
      const its = part.carries.filter(sticksOut);
      if (its.length > 0) out.set(part, [...new Set([...(out.get(part) ?? []), ...its])]);
    }
  }
  return out;
}
