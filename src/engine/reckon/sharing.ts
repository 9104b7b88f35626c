import type { LinearForm, Rational, Row } from '../linear/index.ts';
import type { TorqueBalance } from './balance.ts';
import { hull, isSpan, type Quantity } from './quantity.ts';

/** What forms of a balance come to. */
type Found = ReadonlyMap<LinearForm, Quantity>;

/**
 * What several could carry, in a balance where `known` rows hold: over every way to carry the load
 * with as few of the `shared` pushes as can.
 */
export class Sharing {
  private readonly balance: TorqueBalance;
  private readonly known: readonly Row[];
  private readonly shared: readonly LinearForm[];
  private readonly forms: readonly LinearForm[];

  /** `forms` are what is asked of; the `shared` are among them. */
  constructor(
    balance: TorqueBalance,
    known: readonly Row[],
    shared: readonly LinearForm[],
    forms: readonly LinearForm[],
  ) {
    this.balance = balance;
    this.known = known;
    this.shared = shared;
    this.forms = forms;
  }

  found(): Found {
    const bounds = this.bounds([]);
    if (!bounds) throw new Error('a load that is carried cannot be carried');
    const loose = this.looseIn(bounds);
    const ways = loose.length > MOST_LOOSE ? [] : this.waysWithout([], loose);
    if (ways.length === 0) return bounds;
    return new Map(
      [...bounds].map(([form, bound]) => {
        const settled = ways.map((way) => way.get(form) as Quantity);
        return [form, settled.some(isSpan) ? bound : hull(settled as Rational[])];
      }),
    );
  }

  // Every way to carry the load that leaves nothing unsettled once some carry nothing. They are left
  // out in their order, so that each choice is made once.
  private waysWithout(without: readonly LinearForm[], loose: readonly LinearForm[]): Found[] {
    return loose.flatMap((form) => {
      const less = [...without, form];
      const bounds = this.bounds(less);
      if (!bounds) return []; // the load cannot be carried without them
      const still = this.looseIn(bounds);
      if (still.length === 0) return [bounds];
      const after = this.shared.slice(this.shared.indexOf(form) + 1);
      return this.waysWithout(
        less,
        after.filter((next) => still.includes(next)),
      );
    });
  }

  private looseIn(bounds: Found): readonly LinearForm[] {
    return this.shared.filter((form) => isSpan(bounds.get(form) as Quantity));
  }

  private bounds(without: readonly LinearForm[]): Found | undefined {
    const none = without.map((form): Row => ({ ...form, sense: '=', right: 0 }));
    return this.balance.settle([...this.known, ...none], this.forms);
  }
}

// Two or three devices share a reaction; where more than this many do, there are hundreds of
// ways, and the bounds are those of statics alone.
const MOST_LOOSE = 6;
