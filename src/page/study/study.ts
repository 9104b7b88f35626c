import { batch, computed, signal } from '@preact/signals';
import { drive } from '../../engine/flow/index.ts';
import {
  appliedIn,
  type Gear,
  gearsOf,
  isApplied,
  type MemberName,
  type Range,
  type Train,
  type Way,
} from '../../engine/train/index.ts';
import type { SceneSubject } from '../../telling/scene/index.ts';
import { Build } from './build.ts';
import { faulting, learnFaults } from './faulting.ts';
import type { ByEngine, TurnedBy, Side } from './setting.ts';
import { type Edits, TrainFile } from './trainfile.ts';
import { Turning } from './turning.ts';
import { train as firstTrain } from 'virtual:first-train';

/**
 * All that the screen shows is a function of this: the file, what is applied, who turns what,
 * what is held, and what is wrong with the build beside. Members are named by body labels.
 */
export class Study {
  readonly file = new TrainFile();
  /** The friction devices that are applied; those that the train lacks are ignored. */
  readonly on = signal<readonly string[]>([]);
  readonly setting = signal<TurnedBy>({ by: 'engine', side: 'drive' });
  readonly turned = computed(() => {
    const setting = this.setting.value;
    return setting.by === 'hand' ? setting.turn : undefined;
  });
  /** What hands hold while one is turned; the engine turns with hands off. */
  readonly held = signal<ReadonlySet<MemberName>>(new Set());
  /** Of the wrong build, in the words of `--fault`; none: it is not shown. */
  readonly faults = signal<readonly string[]>([]);
  /** Whether questions are answered: a new page first shows the train as it lies. */
  readonly answers = signal(false);
  /** What is pointed at, in whichever view. */
  readonly pointed = signal<SceneSubject | undefined>(undefined);
  /** The one-way clutch whose races are shown, by name. */
  readonly lookedInto = signal<string | undefined>(undefined);

  readonly right = new Build(this, this.file.train);
  readonly wrong = new Build(
    this,
    computed(() => {
      if (this.faults.value.length === 0) return undefined;
      // The two turn together from when both are there.
      if (!faulting.value) void learnFaults().then(() => this.turning.reset());
      return faulting.value?.(this.file.train.value, this.faults.value);
    }),
  );
  readonly turning = new Turning([this.right, this.wrong], () => this.setting.value.by);

  /** The gears of the file whose devices are just those that are applied. */
  readonly gears = computed(() => {
    const on = new Set(this.on.value);
    const train = this.file.train.value;
    return (train?.ranges ?? []).flatMap((range) =>
      range.gears
        .filter((gear) => train && isSame(appliedIn(train, gear), on))
        .map((gear) => ({ range, gear })),
    );
  });

  /** Opens a file of its own, in the first gear that drives, with hands off. */
  open(name: string, text: string, saved?: string, edits?: Edits): void {
    batch(() => {
      this.file.open(name, text, saved, edits);
      this.release();
      this.faults.value = [];
      const train = this.file.train.value;
      this.on.value = train ? firstToDrive(train) : [];
    });
  }

  shift(range: Range, gear: Gear): void {
    const train = this.file.train.value;
    if (train && range.gears.includes(gear)) this.run(appliedIn(train, gear));
  }

  /** Applies just these devices and lets the engine turn. */
  run(on: readonly string[], side?: Side): void {
    batch(() => {
      this.on.value = on;
      this.release(side);
    });
  }

  /** Looks into a one-way clutch, or no longer. */
  lookInto(device: string): void {
    this.lookedInto.value = this.lookedInto.value === device ? undefined : device;
  }

  /** Applies a friction device, or releases it. */
  toggle(device: string): void {
    const on = this.on.value;
    if (this.file.train.value?.devices.some((one) => one.name === device && isApplied(one))) {
      this.on.value = on.includes(device) ? on.filter((name) => name !== device) : [...on, device];
    }
  }

  /** Puts a build with these faults beside the right one, its marks where the right one's are. */
  spoil(faults: readonly string[]): void {
    this.faults.value = faults;
    this.wrong.angles.clear();
    for (const [member, angle] of this.right.angles) this.wrong.angles.set(member, angle);
  }

  /** Hands off: the engine turns again. */
  release(side?: Side): void {
    const setting = this.setting.value;
    const before: ByEngine = setting.by === 'engine' ? setting : { by: 'engine', side: 'drive' };
    this.held.value = new Set();
    this.setting.value = side ? { by: 'engine', side } : before;
  }

  hold(member: MemberName, held = !this.held.value.has(member)): void {
    const others = [...this.held.value].filter((name) => name !== member);
    this.held.value = new Set(held ? [...others, member] : others);
  }

  /**
   * Lays a holding hand on a member, or takes it off. Where the engine turns, a hand takes its
   * place at the input; the member that is turned is released and held.
   */
  lay(member: MemberName): void {
    batch(() => {
      this.hold(member);
      const { turned } = this;
      const assembly = this.right.assembly.value;
      const labelOf = (name: MemberName) => assembly?.bodies[assembly.bodyOf(name) ?? 0]?.label;
      const train = this.file.train.value;
      if (!train || (turned.value !== undefined && turned.value !== member)) return;
      const input = labelOf(train.input) ?? train.input;
      this.grab(input === member ? (labelOf(train.output) ?? train.output) : input);
    });
  }

  /** Lays a hand on a member: from now on it is what turns, clockwise at first. */
  grab(turn: MemberName, way: Way = 'clockwise'): void {
    this.setting.value = { by: 'hand', turn, way };
  }

  /**
   * Turns the member under the hand, in degrees, clockwise positive, and all others with it;
   * false where it locks that way, and nothing moves.
   */
  turnBy(degrees: number): boolean {
    const setting = this.setting.value;
    if (setting.by !== 'hand' || degrees === 0) return false;
    const way = degrees > 0 ? 'clockwise' : 'anticlockwise';
    if (setting.way !== way) this.setting.value = { ...setting, way };
    this.turning.turn(Math.abs(degrees) / 360);
    return this.right.answer.value?.moves ?? false;
  }
}

// Park and neutral show nothing that moves.
function firstToDrive(train: Train): readonly string[] {
  const gears = gearsOf(train);
  // The first picture waits for no answer: the first train begins with a gear that drives.
  if (train === firstTrain) return gears[0]?.on ?? [];
  const drives = gears.find(({ on }) => drive(train, on).state === 'driving');
  return (drives ?? gears[0])?.on ?? [];
}

function isSame(applied: readonly string[], on: ReadonlySet<string>): boolean {
  return applied.length === on.size && applied.every((device) => on.has(device));
}
