import {
  type CauseWord,
  type ReasonWord,
  OUTCOMES,
  type OutcomeWord,
  type Experience,
  type ExperienceRow,
  type TestWord,
} from '../experience/index.ts';
import { isFriction } from '../train/index.ts';
import type { Fault } from '../faults/index.ts';
import type { Cause } from './cause.ts';
import { type Road, SOUND } from './road.ts';
import type { Test } from '../sight/index.ts';

/** A cause, and why it is so as far as the experience tells. */
export interface Reason {
  /** The place of its cause. */
  readonly cause: number;
  /** Of the cause's reasons together 1. */
  readonly share: number;
  /** One of the cause, or of each of two. */
  readonly kinds: readonly (ReasonWord | undefined)[];
}

/** Why each of the causes may be so. */
export function reasonsOf(causes: readonly Cause[], { kinds }: Experience, road: Road): Reason[] {
  const bands = new Set(
    road.train.devices.flatMap(({ name, kind }) => (kind === 'band' ? name : [])),
  );
  const of = (cause: Cause): { kind: ReasonWord | undefined; share: number }[] => {
    const [fault] = cause.faults;
    const band = fault && 'device' in fault && bands.has(fault.device);
    const entries = Object.entries(kinds[cause.cause] ?? {}) as [ReasonWord, number][];
    const its = entries.filter(([kind, weight]) => weight > 0 && (band || kind !== 'band loose'));
    if (its.length === 0) return [{ kind: undefined, share: 1 }];
    const sum = its.reduce((total, [, weight]) => total + weight, 0);
    return its.map(([kind, weight]) => ({ kind, share: weight / sum }));
  };
  return causes.flatMap((cause, c): Reason[] => {
    if (!cause.both) {
      return of(cause).map(({ kind, share }) => ({ cause: c, share, kinds: [kind] }));
    }
    const [a, b] = cause.both;
    return of(a).flatMap((one) =>
      of(b).map((other) => {
        return { cause: c, share: one.share * other.share, kinds: [one.kind, other.kind] };
      }),
    );
  });
}

type Tabled = Exclude<
  Test,
  { test: 'under power' | 'coast' | 'hand check' | 'stall' | 'engagement' | 'stray pressure' }
>;

/** What the experience says that a test shows, by its rows; the words are `OUTCOMES`'. */
export class Tables {
  private readonly experience: Experience;
  private readonly road: Road;

  constructor(experience: Experience, road: Road) {
    this.experience = experience;
    this.road = road;
  }

  /** Of a cause and its kinds: what each part of it shows, where it shows something of its own. */
  shown(test: Tabled, cause: Cause, kinds: readonly (ReasonWord | undefined)[]): readonly number[] {
    const parts = cause.both ?? [cause];
    const own = parts.flatMap((part, k) => {
      const row = this.own(test, part, kinds[k]);
      return row ? [row] : [];
    });
    if (own.length === 0) return this.row(test.test, ['otherwise']) as readonly number[];
    const [first = []] = own;
    return first.map((_, o) => own.reduce((sum, row) => sum + (row[o] as number), 0) / own.length);
  }

  /** The first of the rows that the experience has, as chances; undefined where it has none. */
  row(test: TestWord, rows: readonly (ExperienceRow | undefined)[]): readonly number[] | undefined {
    const { shows = {} } = this.experience.tests[test];
    const words: readonly OutcomeWord[] = OUTCOMES[test];
    const found = rows.find((row) => row !== undefined && shows[row]);
    const table = found && shows[found];
    if (!table) return undefined;
    const sum = words.reduce((total, word) => total + (table[word] ?? 0), 0);
    return words.map((word) => (table[word] ?? 0) / sum);
  }

  private own(
    test: Tabled,
    cause: Cause,
    kind: ReasonWord | undefined,
  ): readonly number[] | undefined {
    const its = this.rowOf(test, cause);
    if (its === undefined) return undefined;
    // Kinds are why something is wrong, and its own row how it shows.
    return this.row(test.test, its === cause.cause ? [kind, its] : [its]);
  }

  // Whether a gear applies a device, or leaves a load to a one-way clutch.
  private takes(on: readonly string[], device: string): boolean {
    const friction = this.road.train.devices.some((d) => d.name === device && isFriction(d));
    if (friction) return applies(on, device);
    return (this.road.torques(SOUND, on, 'under power').get(device)?.most ?? 0) !== 0;
  }

  // The row of a cause in a test; undefined for what the test cannot show of it.
  private rowOf(test: Tabled, { cause, faults, at }: Cause): ExperienceRow | undefined {
    const [fault] = faults;
    const device = fault && 'device' in fault ? fault.device : undefined;
    switch (test.test) {
      case 'device pressure':
      case 'air check':
      case 'band check':
      case 'seal rings':
      case 'seals':
        if (device !== undefined) return device === test.device ? cause : undefined;
        return test.test === 'device pressure' ? eased(cause, test) : cause;
      case 'shift':
        if (device === undefined) return cause;
        if (applies(test.before, device) && !applies(test.on, device)) {
          return cause === 'device will not release' ? 'off-going will not release' : undefined;
        }
        return this.takes(test.on, device) && !this.takes(test.before, device) ? cause : undefined;
      case 'noise': {
        const set = at?.slice(0, at.lastIndexOf('.'));
        return set !== undefined && this.road.works(set, test.on) ? 'set at work' : undefined;
      }
      case 'pressure':
        if (device === undefined) return eased(cause, test);
        return test.on === undefined || applies(test.on, device) ? cause : undefined;
      case 'end play':
        if (test.set === undefined || at === undefined) return cause;
        return at.startsWith(`${test.set}.`) ? cause : undefined;
      case 'one-way check':
        return device === test.device ? cause : undefined;
      case 'inspection':
        return at?.startsWith(`${test.device}.`) || (fault && isOf(fault, test.device))
          ? cause
          : undefined;
      case 'fluid':
      case 'codes':
      case 'selector':
      case 'manual shift':
      case 'build record':
      case 'engine':
      case 'converter':
      case 'pump':
      case 'pan':
      case 'filter':
      case 'valve body':
        return cause;
    }
  }
}

function applies(on: readonly string[], device: string): boolean {
  return on.includes(device);
}

// Whether a fault is of the device, or of a wheel or a carrier of the set.
function isOf(fault: Fault, name: string): boolean {
  switch (fault.what) {
    case 'device':
    case 'one-way':
      return fault.device === name;
    case 'set':
      return fault.set === name;
    case 'wheel':
    case 'planet':
    case 'member':
      return fault.member.startsWith(`${name}.`);
    case 'join':
      return (fault.of ?? fault.join).startsWith(`${name}.`);
    case 'pair':
    case 'part':
    case 'oil':
      return false;
  }
}

// Cold oil leaks little, and a pump that turns faster makes up for a leak.
function eased(
  cause: CauseWord,
  { heat, ...test }: { heat?: string; speed?: string },
): ExperienceRow {
  const easy = heat === 'cold' || test.speed === 'fast idle';
  return cause === 'low line pressure' && easy ? 'pressure eased' : cause;
}
