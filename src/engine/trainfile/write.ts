import {
  type Car,
  type Device,
  type Engine,
  type Fluid,
  type GearPair,
  type GearSet,
  outputsOf,
  type Part,
  type Train,
} from '../train/index.ts';
import { VERSION } from './definition.ts';
import { PART } from './part.ts';

/** What can be written into a train file. A map keeps its order, and may have any key. */
export type Value = string | number | readonly Value[] | ReadonlyMap<string, Value>;

/**
 * A whole train in the house style: reading it gives the train again. What a fault has set
 * (`stuck`, `stripped`, `missing`, `healthy`) is no part of a train file and is not written.
 */
export function trainText(train: Train): string {
  const lines = [`holdturn: ${VERSION}`];
  if (train.name !== '') lines.push(`name: ${scalarText(train.name)}`);
  if (train.about !== '') lines.push(`about: ${scalarText(train.about)}`);
  lines.push(`input: ${scalarText(train.input)}`);
  lines.push(`output: ${flowText(train.others ? outputsOf(train) : train.output, false)}`);
  if (train.forward) lines.push(`forward: ${train.forward}`);
  if (train.finalDrive) lines.push(`final drive: ${flowText(train.finalDrive, false)}`);
  if (train.ends) lines.push(`ends: ${flowText(train.ends, false)}`);
  const section = (key: string, entries: readonly (readonly [string, Value])[]) => {
    if (entries.length > 0) lines.push('', ...sectionLines(key, new Map(entries), false));
  };
  section(
    'sets',
    train.sets.map((set) => [set.name, setValue(set)]),
  );
  section(
    'gear pairs',
    train.pairs.map((pair) => [pair.name, pairValue(pair)]),
  );
  section(
    'joined',
    train.joins.map(({ name, members }) => [name, members]),
  );
  section(
    'devices',
    train.devices.map((device) => [device.name, deviceValue(device)]),
  );
  section(
    'ranges',
    train.ranges.map(({ name, gears }) => {
      return [name, new Map(gears.map((gear) => [gear.name, gear.on]))];
    }),
  );
  section(
    'teardown',
    (train.teardown ?? []).map((part) => [part.name, partValue(part)]),
  );
  section(
    'capacities',
    (train.capacities ?? []).map(({ device, ...its }) => [device, plainValue(its) as Value]),
  );
  section('engine', entriesOf(train.engine));
  section('car', entriesOf(train.car));
  section('fluid', entriesOf(train.fluid));
  section(
    'endplay',
    (train.endPlays ?? []).map(({ shaft, ...its }) => [shaft, plainValue(its) as Value]),
  );
  section(
    'preload',
    (train.preloads ?? []).map(({ bearings, ...its }) => [bearings, plainValue(its) as Value]),
  );
  section(
    'bands',
    (train.bands ?? []).map(({ device, ...its }) => [device, plainValue(its) as Value]),
  );
  section(
    'wear',
    (train.wear ?? []).map(({ part, ...its }) => [part, plainValue(its) as Value]),
  );
  section(
    'packs',
    (train.packs ?? []).map(({ device, ...pack }) => [device, plainValue(pack) as Value]),
  );
  return `${lines.join('\n')}\n`;
}

/** A section with its entries on lines of their own, each in flow style. */
export function sectionLines(
  key: string,
  entries: ReadonlyMap<string, Value>,
  json: boolean,
): string[] {
  const word = (text: string) => (json ? quoted(text) : scalarText(text));
  return [
    `${word(key)}:`,
    ...[...entries].map(([name, value]) => `  ${word(name)}: ${flowText(value, json)}`),
  ];
}

/** A value on one line; as JSON, or with quotes only where YAML needs them. */
export function flowText(value: Value, json: boolean): string {
  if (typeof value === 'number') return `${value}`;
  if (typeof value === 'string') return json ? quoted(value) : scalarText(value);
  if (value instanceof Map) {
    const entries = [...(value as ReadonlyMap<string, Value>)].map(([key, its]) => {
      return `${json ? quoted(key) : scalarText(key)}: ${flowText(its, json)}`;
    });
    return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
  }
  return `[${(value as readonly Value[]).map((item) => flowText(item, json)).join(', ')}]`;
}

// Plain YAML on one line, in flow style too: starts with a letter, holds nothing that YAML
// reads as a mark, and is not one of its words.
const PLAIN = /^\p{L}(?:[\p{L}\p{M}\p{N} ._+'()/&-]*[\p{L}\p{M}\p{N}.)])?$/u;
const WORDS = /^(?:true|false|null)$/i;

/** A text as YAML, without quotes where it may go without. */
export function scalarText(text: string): string {
  return PLAIN.test(text) && !WORDS.test(text) ? text : quoted(text);
}

/** A text in double quotes, as JSON and YAML both read it. */
export function quoted(text: string): string {
  // JSON lets these stand, and a train file does not.
  return JSON.stringify(text).replace(
    /[\x7f-\x9f\u2028\u2029\ufeff\ufffd-\uffff]/gu,
    (character) => {
      return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
    },
  );
}

function setValue(set: GearSet): Value {
  switch (set.kind) {
    case 'plain':
      return mapOf({ sun: set.sun, ring: set.ring, planets: set.planets, planet: set.planet });
    case 'pair':
      return mapOf({
        sun: set.sun,
        ring: set.ring,
        pairs: set.pairs,
        inner: set.inner,
        outer: set.outer,
      });
    case 'stepped':
      return mapOf({ sun: set.sun, ring: set.ring, planets: set.planets, steps: set.steps });
    case 'sharing': {
      const { shares, sun, ring, planets, pairs, inner } = set;
      return mapOf({ shares, sun, ring, planets, pairs, inner });
    }
    case 'wheels': {
      const meshes = set.meshes.map(({ a, b, internal }) =>
        internal ? [a, b, 'internal'] : [a, b],
      );
      return mapOf({ wheels: set.wheels, carried: set.carried, meshes });
    }
    case 'bevel':
      return mapOf({ sides: set.sides, pinions: set.pinions, pinion: set.pinion });
  }
}

function pairValue({ driver, driven, kind }: GearPair): Value {
  return mapOf({
    driver: [driver.member, driver.teeth],
    driven: [driven.member, driven.teeth],
    kind: kind === 'external' ? undefined : kind,
  });
}

function deviceValue(device: Device): Value {
  switch (device.kind) {
    case 'clutch':
      return mapOf({ clutch: [device.first, device.second] });
    case 'brake':
    case 'band':
    case 'pawl':
      return mapOf({ [device.kind]: device.first });
    case 'one-way':
      return mapOf({ 'one-way': [device.first, device.second], lets: device.lets });
  }
}

// In the order of the file form.
function partValue(part: Part): Value {
  const { carries, selective, bolts } = part;
  const said = (yes: boolean | undefined) => (yes === undefined ? undefined : yes ? 'yes' : 'no');
  const its = {
    ...part,
    carries: carries.length > 0 ? carries : undefined,
    selective: said(selective),
    bolts: bolts && { ...bolts, once: said(bolts.once) },
  };
  const keys = Object.keys(PART.entries) as (keyof typeof its)[];
  return plainValue(Object.fromEntries(keys.map((key) => [key, its[key]]))) as Value;
}

function entriesOf(its: Engine | Car | Fluid = {}): [string, Value][] {
  return Object.entries(its).map(([key, value]) => [key, value as Value]);
}

// Sections and lists of texts, as they are.
function plainValue(data: unknown): Value | undefined {
  if (Array.isArray(data)) return data.map((item) => plainValue(item) as Value);
  if (typeof data !== 'object' || data === null) return data as string | undefined;
  return mapOf(
    Object.fromEntries(Object.entries(data).map(([key, its]) => [key, plainValue(its)])),
  );
}

function mapOf(entries: Readonly<Record<string, Value | undefined>>): Value {
  return new Map(
    Object.entries(entries).filter((entry): entry is [string, Value] => entry[1] !== undefined),
  );
}
