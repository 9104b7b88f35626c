import { equal, toText } from '../linear/index.ts';
import { type Motion, withDevices } from '../motion/index.ts';
import { gearsOf, type Train, trainInGear } from '../train/index.ts';
import type {
  Changed,
  FaultCell,
  FaultClass,
  FaultMatrix,
  FaultRow,
  MatrixGear,
  Outcome,
} from './answer.ts';
import { everyFault } from './every.ts';
import { type Fault, isSlipping } from './fault.ts';
import { spinsOf } from './spin.ts';
import { type Trial, Trials } from './trial.ts';
import { Variants } from './variants.ts';

export interface MatrixOptions {
  /** Every two faults at once too, but for two of one device, which exclude each other. */
  readonly pairs?: boolean;
  /** The faults to reckon with; all that the train can have where it is left out. */
  readonly only?: readonly Fault[];
  /** What spins free or fast, which takes several times as long. */
  readonly spins?: boolean;
  /** Called with each row that is done, and how many there are. */
  readonly tell?: (done: number, all: number) => void;
}

/**
 * What each fault does to every gear that the ranges name, under power and on coast.
 * Every answer has been checked against its certificate. Throws where `only` names what the
 * train lacks.
 */
export function faultMatrix(train: Train, options: MatrixOptions = {}): FaultMatrix {
  const singles = options.only ?? everyFault(train);
  const combinations = options.pairs
    ? [...singles.map((fault) => [fault]), ...pairsOf(singles)]
    : singles.map((fault) => [fault]);
  const variants = new Variants(train);
  const test = new RoadTest(variants.motion([]), options.spins ?? false);
  const rows = combinations.map((faults, k): FaultRow => {
    const firm = faults.filter((fault) => !isSlipping(fault));
    const row = { faults, cells: test.row(variants.motion(faults), variants.motion(firm)) };
    options.tell?.(k + 1, combinations.length);
    return row;
  });
  return { gears: test.gears, rows, classes: classesOf(rows) };
}

// Whether a cell is that of the healthy train.
function isSame({ drive, coast, inReverse }: FaultCell): boolean {
  return [drive, coast, inReverse].every((end) => !end || end.is === 'same');
}

function pairsOf(singles: readonly Fault[]): Fault[][] {
  return singles.flatMap((first, k) =>
    singles.slice(k + 1).flatMap((second) => {
      const one = 'device' in first && 'device' in second && first.device === second.device;
      return one ? [] : [[first, second]];
    }),
  );
}

// The gears of the healthy train, against which all are held.
class RoadTest {
  readonly gears: readonly MatrixGear[];
  private readonly trials: Trials;
  private readonly sound: readonly Trial[];

  constructor(motion: Motion, spins: boolean) {
    this.trials = new Trials(spins);
    const declared = gearsOf(motion.train);
    this.sound = declared.map(({ on }) => this.trials.of(motion, on));
    this.gears = declared.map((gear, k) => {
      const { drive, coast, inReverse } = this.sound[k] as Trial;
      return { ...gear, drive, coast, ...(inReverse && { inReverse }) };
    });
  }

  /** `firm`: without what slips, as it is below the load at which that runs up. */
  row(motion: Motion, firm: Motion): FaultCell[] {
    // What is wrong upstream of the devices applies others in the same gear.
    const [now, firmly] = [motion, firm].map(({ train }) => gearsOf(train));
    return this.gears.map((_, k) => {
      const gear = now?.[k];
      const on = gear?.on ?? [];
      // What oil pushes on too weakly slips in this gear, and in no other.
      const here = gear?.weak ? withDevices(motion, trainInGear(motion.train, gear)) : motion;
      const [sound, found] = [this.sound[k] as Trial, this.trials.of(here, on)];
      const below = here === firm ? found : this.trials.of(firm, firmly?.[k]?.on ?? on);
      return cellOf(here, sound, found, below);
    });
  }
}

function cellOf(motion: Motion, sound: Trial, found: Trial, below: Trial): FaultCell {
  const [was, now] = [sound.speeds, found.speeds];
  const end = (of: 'drive' | 'coast') => changed(sound[of], found[of], below[of]);
  return {
    drive: end('drive'),
    coast: end('coast'),
    ...(sound.inReverse &&
      found.inReverse && {
        inReverse: changed(sound.inReverse, found.inReverse, below.inReverse),
      }),
    braking: brakingOf(sound.coast, below.coast),
    ...(was &&
      now && {
        spins: {
          drive: spinsOf(motion, now.drive, was.drive),
          coast: spinsOf(motion, now.coast, was.coast),
        },
      }),
  };
}

// What a device can be without, it does not carry: there its slip shows nothing. What it cannot
// be without holds until the load is more than it still carries.
function changed(was: Outcome, now: Outcome, below: Outcome = now): Changed {
  if (said(now) !== said(below)) return { ...now, is: 'slips' };
  if (now.state !== 'driving') {
    return { ...now, is: now.state === was.state ? 'same' : now.state };
  }
  if (!was.ratio || !now.ratio) return { ...now, is: 'drives' };
  return { ...now, is: equal(was.ratio, now.ratio) ? 'same' : 'another ratio' };
}

function brakingOf(was: Outcome, now: Outcome): FaultCell['braking'] {
  if (was.state !== 'driving' && now.state === 'driving') return 'gained';
  return was.state === 'driving' && now.state === 'neutral' ? 'lost' : 'same';
}

// Rows whose every cell is alike, in the order of their first.
function classesOf(rows: readonly FaultRow[]): FaultClass[] {
  const classes = new Map<string, { rows: number[]; silent: boolean }>();
  rows.forEach(({ cells }, place) => {
    const key = cells
      .map(({ drive, coast, inReverse = coast }) => [drive, coast, inReverse].map(shown).join(' '))
      .join();
    const known = classes.get(key);
    if (known) known.rows.push(place);
    else classes.set(key, { rows: [place], silent: cells.every(isSame) });
  });
  return [...classes.values()];
}

function shown(end: Changed): string {
  return end.is === 'slips' ? `slips ${said(end)}` : said(end);
}

function said({ state, ratio }: Outcome): string {
  return ratio ? toText(ratio) : state;
}
