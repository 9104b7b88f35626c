import {
  appliedIn,
  type Gear,
  gearsOf,
  isApplied,
  type Range,
  type Train,
} from '../../engine/train/index.ts';
import { meant, split, unknown } from './names.ts';
import { NoAnswer } from './refused.ts';

/** Which gear, or which devices, as a person says it. */
export interface GearChoice {
  readonly range?: string;
  readonly gear?: string;
  /** Friction devices with commas between; '' for none. */
  readonly on?: string;
}

/** The friction devices that are on, and the gear where one was asked for by name. */
export interface GearSelection {
  readonly on: readonly string[];
  readonly gear?: { readonly range: string; readonly gear: string };
  /** Those of them that oil pushes on too weakly, where a fault makes it so. */
  readonly weak?: readonly string[];
}

/** What is chosen; undefined where no one gear is. */
export function selectionOf(train: Train, choice: GearChoice): GearSelection | undefined {
  const { on, range, gear } = choice;
  if (on !== undefined) {
    if (range !== undefined || gear !== undefined) throw new NoAnswer({ refused: 'bad.choice' });
    if (train.oilFaults) throw new NoAnswer({ refused: 'bad.oil on' });
    return { on: devicesOn(train, on) };
  }
  if (gear === undefined) return undefined;
  const [chosen, among] = gearOf(train, range, gear);
  const { weak } = chosen;
  const named = { range: among.name, gear: chosen.name };
  return { on: appliedIn(train, chosen), gear: named, ...(weak && { weak }) };
}

/** The gears of the range that is named, or of all. */
export function gearsAsked(train: Train, { range }: Pick<GearChoice, 'range'>) {
  return gearsOf(train, rangesOf(train, range));
}

function rangesOf(train: Train, range: string | undefined): readonly Range[] {
  if (range === undefined) return train.ranges;
  const names = train.ranges.map(({ name }) => name);
  if (names.length === 0) throw new NoAnswer({ refused: 'no.ranges' });
  const name = meant(range, names, train);
  if (name === undefined) throw new NoAnswer({ refused: 'no.range', ...unknown(range, names) });
  return train.ranges.filter((other) => other.name === name);
}

function gearOf(train: Train, range: string | undefined, gear: string): [Gear, Range] {
  if (train.ranges.length === 0) throw new NoAnswer({ refused: 'no.ranges' });
  const ranges = rangesOf(train, range);
  const found = ranges.flatMap((among) => {
    const name = meant(
      gear,
      among.gears.map((other) => other.name),
      train,
    );
    return among.gears
      .filter((other) => other.name === name)
      .map((one): [Gear, Range] => [one, among]);
  });
  const [first] = found;
  if (!first) {
    const names = [...new Set(ranges.flatMap(({ gears }) => gears.map(({ name }) => name)))];
    throw new NoAnswer({ refused: 'no.gear', ...unknown(gear, names) });
  }
  // The same gear of two ranges may be two different things.
  if (found.length > 1) {
    const all = found.map(([, among]) => among.name);
    throw new NoAnswer({ refused: 'bad.gear alone', gear, ranges: all });
  }
  return first;
}

function devicesOn(train: Train, text: string): string[] {
  const friction = train.devices.filter(isApplied).map(({ name }) => name);
  const all = train.devices.map(({ name }) => name);
  const chosen = new Set(
    split(text, friction, train).map((given) => {
      const name = meant(given, all, train);
      if (name !== undefined && friction.includes(name)) return name;
      if (name !== undefined) throw new NoAnswer({ refused: 'no.friction', given: name });
      if (friction.length === 0) throw new NoAnswer({ refused: 'no.device.at all', given });
      throw new NoAnswer({ refused: 'no.device', ...unknown(given, friction) });
    }),
  );
  // In the file's order, each once.
  return friction.filter((name) => chosen.has(name));
}
