import {
  appliedIn,
  isApplied,
  type Gear,
  type Range,
  type Train,
} from '../../engine/train/index.ts';
import { gearName } from '../../telling/narrative/index.ts';
import { meant, split, suggestion } from './names.ts';
import { Refusal } from './refusal.ts';
import type { Options } from './session.ts';

/** The friction devices that are on, and "D 1" where a gear was asked for by name. */
export interface Selection {
  readonly on: readonly string[];
  readonly gear?: string;
}

/** What --on, or --range and --gear, choose; undefined where they choose no one gear. */
export function selectionOf(train: Train, options: Options): Selection | undefined {
  const { on, range, gear } = options;
  if (on !== undefined) {
    if (range !== undefined || gear !== undefined) throw new Refusal('bad.choice');
    return { on: devicesOn(train, on) };
  }
  if (gear === undefined) return undefined;
  const [chosen, among] = gearOf(train, range, gear);
  return { on: appliedIn(train, chosen), gear: gearName({ range: among.name, gear: chosen.name }) };
}

/** The ranges that --range leaves: all where it is not given. */
export function rangesOf(train: Train, { range }: Options): readonly Range[] {
  if (range === undefined) return train.ranges;
  const names = train.ranges.map(({ name }) => name);
  if (names.length === 0) throw new Refusal('no.ranges');
  const name = meant(range, names);
  if (name === undefined) throw new Refusal('no.range', suggestion(range, names));
  return train.ranges.filter((other) => other.name === name);
}

function gearOf(train: Train, range: string | undefined, gear: string): [Gear, Range] {
  if (train.ranges.length === 0) throw new Refusal('no.ranges');
  const found = rangesOf(train, range === undefined ? {} : { range }).flatMap((among) => {
    const name = meant(
      gear,
      among.gears.map((other) => other.name),
    );
    return among.gears
      .filter((other) => other.name === name)
      .map((one): [Gear, Range] => [one, among]);
  });
  const [first] = found;
  if (!first) {
    const ranges = rangesOf(train, range === undefined ? {} : { range });
    const names = [...new Set(ranges.flatMap(({ gears }) => gears.map(({ name }) => name)))];
    throw new Refusal('no.gear', suggestion(gear, names));
  }
  // The same gear of two ranges may be two different things.
  if (found.length > 1) {
    const all = found.map(([, among]) => among.name).join(', ');
    throw new Refusal('bad.gear alone', { gear, all });
  }
  return first;
}

function devicesOn(train: Train, text: string): string[] {
  const friction = train.devices.filter(isApplied).map(({ name }) => name);
  const all = train.devices.map(({ name }) => name);
  const chosen = new Set(
    split(text, friction).map((given) => {
      const name = meant(given, all);
      if (name !== undefined && friction.includes(name)) return name;
      if (name !== undefined) throw new Refusal('no.friction', { given: name });
      if (friction.length === 0) throw new Refusal('no.device.at all', { given });
      throw new Refusal('no.device', suggestion(given, friction));
    }),
  );
  // In the file's order, each once.
  return friction.filter((name) => chosen.has(name));
}
