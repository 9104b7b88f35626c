import type { Fault } from '../faults/index.ts';
import {
  CASE,
  type FrictionDevice,
  halfBuilt,
  ownName,
  type Part,
  type Pawl,
  piecesOf,
  setGearing,
  type Train,
} from '../train/index.ts';
import type { Felt, Grip, Mistake, Still } from './answer.ts';
import { Feel } from './feel.ts';
import { mistaken } from './mistakes.ts';
import { Reach } from './reach.ts';

/** Hold one member or none and turn another, after a step; the lowest rank is liked best. */
export interface Check {
  readonly step: number;
  readonly hold: Grip | undefined;
  readonly turn: Grip;
  readonly rank: number;
}

/** The unit on the bench, after each step of a right build or of one with a mistake in it. */
export class Bench {
  /** In the order in which the parts go on; step n is the n-th of them. */
  readonly build: readonly Part[];
  private readonly train: Train;
  private readonly reach: Reach;
  private readonly known = new Map<string, Felt>();
  private readonly right = new Map<number, Stage>();
  private readonly spoilt = new Map<Mistake, Train>();

  constructor(train: Train) {
    this.train = train;
    this.reach = new Reach(train);
    this.build = (train.teardown ?? []).toReversed();
  }

  /** What a right build does, or one with the mistake: proved. */
  felt({ step, hold, turn }: Check, mistake?: Mistake): Felt {
    const feel = mistake ? this.wrong(step, mistake) : this.stage(step).feel;
    return feel.proved(hold?.member, turn.member);
  }

  /** Whether the whole train tells the mistake from a right build in any way at all. */
  shows(mistake: Mistake): boolean {
    const last = this.build.length;
    return this.wrong(last, mistake).signature !== this.stage(last).feel.signature;
  }

  /** Every check after a step that a right build and one with the mistake answer differently. */
  differences(step: number, mistake: Mistake): Check[] {
    const { feel, grips } = this.stage(step);
    const wrong = this.wrong(step, mistake);
    if (wrong.signature === feel.signature) return [];
    const gone = mistake.what === 'part' ? mistake.part : undefined;
    const missing = (grip: Grip | undefined) => grip !== undefined && grip.part === gone;
    return [undefined, ...this.holds(step)].flatMap((hold, h) =>
      grips.flatMap((turn, t): Check[] => {
        if (hold === turn || missing(hold) || missing(turn)) return [];
        const [held, turned] = [hold?.member, turn.member];
        if (feel.felt(held, turned) === wrong.felt(held, turned)) return [];
        return [{ step, hold, turn, rank: step * 1e6 + h * 1e3 + t }];
      }),
    );
  }

  /** How the input turns under the hand; undefined while it is not on, or turns no way at all. */
  still(step: number): Still | undefined {
    const { feel, grips } = this.stage(step);
    const body = feel.bodyOf(this.train.input);
    const turn = grips.find(({ member }) => body !== undefined && feel.bodyOf(member) === body);
    if (!turn) return undefined;
    const felt = feel.proved(undefined, turn.member);
    return felt === 'neither way' ? undefined : { turn, felt };
  }

  /**
   * The check that shows air on a device, or an engaged pawl, best: of its own two members, if
   * hands reach both.
   * Air or a hand locks a device as a jammed one is locked.
   */
  onAir(step: number, device: FrictionDevice | Pawl): Check | undefined {
    const { feel } = this.stage(step);
    const ends = new Set([device.first, device.second].map((member) => feel.bodyOf(member)));
    const onAir = this.wrong(step, jammed(device));
    const liking = ({ hold, turn }: Check) => {
      const held = hold ? feel.bodyOf(hold.member) : feel.bodyOf(CASE);
      if (ends.has(held) && ends.has(feel.bodyOf(turn.member))) return 0;
      return onAir.felt(hold?.member, turn.member) === 'neither way' ? 1 : 2;
    };
    const checks = this.differences(step, jammed(device));
    return checks.toSorted((a, b) => liking(a) - liking(b) || a.rank - b.rank)[0];
  }

  /** What is felt with air on a device: proved. */
  feltOnAir(check: Check, device: FrictionDevice | Pawl): Felt {
    return this.felt(check, jammed(device));
  }

  /** The same with a mistake, where it is not as `right`. */
  spoiltOnAir(
    { step, hold, turn }: Check,
    device: FrictionDevice | Pawl,
    right: Felt,
    mistake: Mistake,
  ): Felt | undefined {
    const train = mistaken(mistaken(this.train, jammed(device)), mistake);
    const feel = new Feel(this.after(step, train), this.known);
    if (feel.felt(hold?.member, turn.member) === right) return undefined;
    return feel.proved(hold?.member, turn.member);
  }

  // The output is what a builder holds if anything: what carries its name stands first.
  private holds(step: number): readonly Grip[] {
    const { feel, grips } = this.stage(step);
    const body = feel.bodyOf(this.train.output);
    const carriesOutput = ({ part }: Grip) => {
      return this.build.find(({ name }) => name === part)?.carries.includes(this.train.output);
    };
    const liking = (grip: Grip) => {
      if (body === undefined || feel.bodyOf(grip.member) !== body) return 2;
      return carriesOutput(grip) ? 0 : 1;
    };
    return grips.toSorted((a, b) => liking(a) - liking(b));
  }

  private stage(step: number): Stage {
    let stage = this.right.get(step);
    if (!stage) {
      const feel = new Feel(this.after(step, this.train), this.known);
      stage = { feel, grips: this.grips(step, feel) };
      this.right.set(step, stage);
    }
    return stage;
  }

  private wrong(step: number, mistake: Mistake): Feel {
    let train = this.spoilt.get(mistake);
    if (!train) this.spoilt.set(mistake, (train = mistaken(this.train, mistake)));
    return new Feel(this.after(step, train), this.known);
  }

  private after(step: number, train: Train): Train {
    const on = new Set(this.build.slice(0, step).map(({ name }) => name));
    return halfBuilt(train, ({ name }) => on.has(name));
  }

  // What hands can take hold of: of each part in reach, each piece once; the last one first.
  private grips(step: number, feel: Feel): Grip[] {
    const own = ownName(this.train);
    const notForHands = new Set([
      ...this.train.devices.flatMap(piecesOf),
      ...this.train.sets.flatMap((set) => {
        return setGearing(this.train, set).planets.map(({ member }) => member);
      }),
    ]);
    const piecesOfPart = (members: readonly string[]) => {
      const forHands = members.filter((name) => !notForHands.has(own(name)));
      const bodies = forHands.map((member) => feel.bodyOf(member) ?? member);
      return forHands.filter((_, i) => bodies.indexOf(bodies[i] as number | string) === i);
    };
    return this.reach.after(step).flatMap(({ part, carries }) => {
      const whole = piecesOfPart(part.carries).length === 1;
      return piecesOfPart(carries).map((member): Grip => ({ part: part.name, member, whole }));
    });
  }
}

function jammed({ name }: FrictionDevice | Pawl): Fault {
  return { what: 'device', device: name, is: 'will not release' };
}

interface Stage {
  readonly feel: Feel;
  readonly grips: readonly Grip[];
}
