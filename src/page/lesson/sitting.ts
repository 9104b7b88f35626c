import { batch, effect, type ReadonlySignal, signal } from '@preact/signals';
import { type Question, type Round, roundOf } from '../../shop/lessons/index.ts';

type Kept = Pick<Round, 'stage' | 'votes' | 'before'>;

/**
 * A class that is asked about a train: which question set, at which question, and its votes. It
 * outlives the room and a reload, for as long as the tab is open.
 */
export class Sitting {
  readonly seed: ReadonlySignal<number>;
  readonly place: ReadonlySignal<number>;
  private readonly set = signal(1);
  private readonly at = signal(0);
  private readonly rounds = signal<Readonly<Record<string, Kept>>>({});

  private constructor(name: string) {
    [this.seed, this.place] = [this.set, this.at];
    const shelf = `holdturn class ${name}`;
    this.recall(shelf);
    effect(() => {
      const kept = { seed: this.set.value, place: this.at.value, rounds: this.rounds.value };
      try {
        sessionStorage.setItem(shelf, JSON.stringify(kept));
      } catch {
        // Forbidden or full: it holds until the page is closed.
      }
    });
  }

  /** The class of the train of this name. */
  static of(name: string): Sitting {
    const sitting = sittings.get(name) ?? new Sitting(name);
    sittings.set(name, sitting);
    return sitting;
  }

  /** Another question set, from its first question on. */
  begin(seed: number): void {
    batch(() => {
      this.set.value = seed;
      this.at.value = 0;
    });
  }

  go(place: number): void {
    this.at.value = place;
  }

  /** The round of a question, as it was left. */
  roundOf(question: Question): Round {
    const begun = roundOf(question);
    const kept = this.rounds.value[this.keyOf(question)];
    return kept && kept.votes.length === begun.votes.length ? { ...begun, ...kept } : begun;
  }

  keep({ question, stage, votes, before }: Round): void {
    const kept = { stage, votes, ...(before && { before }) };
    this.rounds.value = { ...this.rounds.value, [this.keyOf(question)]: kept };
  }

  // The choices stand in the order of the set, and the votes with them.
  private keyOf({ kind, subject, setting }: Question): string {
    return JSON.stringify([this.set.value, kind, subject, setting]);
  }

  private recall(shelf: string): void {
    try {
      const { seed, place, rounds } = JSON.parse(sessionStorage.getItem(shelf) ?? '{}');
      if (isCount(seed) && seed > 0) this.set.value = seed;
      if (isCount(place)) this.at.value = place;
      const known = Object.entries(rounds ?? {}).flatMap(([key, kept]) => {
        return isKept(kept) ? [[key, kept] as const] : [];
      });
      this.rounds.value = Object.fromEntries(known);
    } catch {
      // Forbidden, or not ours: the class begins anew.
    }
  }
}

const sittings = new Map<string, Sitting>();

function isKept(value: unknown): value is Kept {
  const { stage, votes, before = [] } = (value ?? {}) as Record<string, unknown>;
  return (
    (stage === 'asked' || stage === 'voting' || stage === 'revealed') &&
    [votes, before].every((counts) => Array.isArray(counts) && counts.every(isCount))
  );
}

function isCount(value: unknown): value is number {
  return Number.isSafeInteger(value) && (value as number) >= 0;
}
