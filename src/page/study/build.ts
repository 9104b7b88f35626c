import { computed, type ReadonlySignal } from '@preact/signals';
import { hand } from '../../engine/hand/index.ts';
import {
  assemble,
  type Assembly,
  type MemberName,
  type Train,
  type Way,
} from '../../engine/train/index.ts';
import { type Showing, ofEngine, ofHand } from './showing.ts';
import type { TurnedBy } from './setting.ts';

/** What both builds are asked; the page's `Study` is one. */
interface Asked {
  readonly on: ReadonlySignal<readonly string[]>;
  readonly setting: ReadonlySignal<TurnedBy>;
  readonly turned: ReadonlySignal<MemberName | undefined>;
  readonly held: ReadonlySignal<ReadonlySet<MemberName>>;
  readonly answers: ReadonlySignal<boolean>;
}

/**
 * A train with what is asked of it answered: the right build, or the wrong one
 * that stands beside it. Both hear the same questions.
 */
export class Build {
  readonly train: ReadonlySignal<Train | undefined>;
  readonly assembly: ReadonlySignal<Assembly | undefined>;
  readonly answer: ReadonlySignal<Showing | undefined>;
  /** Degrees that each member has turned, clockwise seen from the input end; no signal. */
  readonly angles = new Map<MemberName, number>();

  constructor(study: Asked, train: ReadonlySignal<Train | undefined>) {
    this.train = train;
    this.assembly = computed(() => train.value && assemble(train.value));
    // Both ways at once, when a hand is laid on: what moves then follows it without asking.
    const hands = computed(() => {
      const [turn, built] = [study.turned.value, train.value];
      if (turn === undefined || !built || !this.assembly.value?.bodyOf(turn)) return undefined;
      const hold = [...study.held.value].filter((member) => this.isAnother(member, turn));
      const felt = (way: Way) => hand(built, { hold, turn, way, on: study.on.value });
      return { clockwise: felt('clockwise'), anticlockwise: felt('anticlockwise') };
    });
    this.answer = computed(() => {
      const [setting, built] = [study.setting.value, train.value];
      if (!built || !study.answers.value) return undefined;
      if (setting.by === 'hand') return hands.value && ofHand(hands.value[setting.way], setting);
      return ofEngine(built, study.on.value, setting);
    });
  }

  /** Turns every member by its speed, times `turns` of the end or the member that is turned. */
  turn(turns: number): void {
    for (const [member, speed] of this.answer.value?.drawn ?? []) {
      const angle = (this.angles.get(member) ?? 0) + speed * turns * 360;
      this.angles.set(member, angle);
    }
  }

  private isAnother(member: MemberName, turned: MemberName): boolean {
    const bodyOf = (name: MemberName) => this.assembly.value?.bodyOf(name);
    return bodyOf(member) !== undefined && bodyOf(member) !== bodyOf(turned);
  }
}
