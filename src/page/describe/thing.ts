import { entriesOf } from '../../asking/describe/index.ts';
import {
  CASE,
  type Device,
  type GearSet,
  type MemberName,
  namesOf,
  type Train,
} from '../../engine/train/index.ts';
import type { Thing } from '../../engine/trainfile/index.ts';
import type { Value } from '../../engine/yaml/index.ts';
import type { Voice } from '../../telling/narrative/index.ts';
import { isWorded, labelOf, valueWord } from '../../telling/questions/index.ts';
import { language } from '../words/index.ts';
import type { words } from './words.ts';

/** A thing of the train and what the file says of it, on a line. */
export interface Described {
  readonly thing: Thing;
  readonly name: string;
  readonly says: string;
}

type Say = ReturnType<typeof words>;
type Naming = (name: string) => string;

/** All that is described so far, section by section; empty sections are left out. */
export function describedIn(
  train: Train,
  say: Say,
  voice: Voice,
): (readonly [Section, Described[]])[] {
  const naming = (name: MemberName) => voice.name(name);
  const told = (thing: Named, name: string, says: string): Described => {
    return { thing: { thing, name }, name: voice.called(name), says };
  };
  const all: (readonly [Section, Described[]])[] = [
    ['set', train.sets.map((set) => told('set', set.name, setText(set, say.told)))],
    [
      'gear pair',
      train.pairs.map(({ name, driver, driven }) => {
        const [a, b] = [naming(driver.member), naming(driven.member)];
        return told('gear pair', name, say.told.pair(a, driver.teeth, b, driven.teeth));
      }),
    ],
    [
      'join',
      train.joins.map(({ name, members }) => ({
        ...told('join', name, members.map(naming).join(', ')),
        name: naming(name),
      })),
    ],
    [
      'device',
      train.devices.map((device) =>
        told('device', device.name, deviceText(device, say.told, naming)),
      ),
    ],
    [
      'gear',
      train.ranges.flatMap(({ name: within, gears }) =>
        gears.map(({ name, on }) => ({
          thing: { thing: 'gear', within, name } as const,
          name: `${voice.called(within)} ${voice.called(name)}`,
          says: on.length === 0 ? say.told.noneOn : on.map((one) => voice.called(one)).join(', '),
        })),
      ),
    ],
  ];
  return all.filter(([, list]) => list.length > 0);
}

type Section = keyof Say['sections'];

type Named = 'set' | 'gear pair' | 'join' | 'device';

function setText(set: GearSet, say: Say['told']): string {
  const count = 'planets' in set && set.planets !== undefined ? [say.planets(set.planets)] : [];
  const list = (...parts: readonly string[]) => [...parts, ...count].join(', ');
  switch (set.kind) {
    case 'plain':
      return list(say.set.plain(set.sun, set.ring));
    case 'pair':
      return list(say.set.pair(set.sun, set.ring), say.pairs(set.pairs));
    case 'stepped':
      return list(say.set.stepped(set.sun, set.ring, ...set.steps));
    case 'sharing':
      return list(
        ...(set.sun === undefined ? [] : [say.sun(set.sun)]),
        ...(set.ring === undefined ? [] : [say.ring(set.ring)]),
        say.set.sharing(set.shares),
      );
    case 'wheels':
      return say.set.wheels;
    case 'bevel':
      return say.set.bevel(...set.sides);
  }
}

function deviceText(device: Device, say: Say['told'], naming: Naming): string {
  const [first, second] = [naming(device.first), naming(device.second)];
  switch (device.kind) {
    case 'clutch':
      return say.clutch(first, second);
    case 'brake':
    case 'band':
    case 'pawl':
      return say[device.kind](first);
    case 'one-way': {
      const outer = device.second === CASE ? say.theCase : second;
      return say['one-way'](first, outer, device.lets);
    }
  }
}

/** What the sections say that are asked for by their forms, an entry a line. */
export function entriesIn(train: Train, voice: Voice): Described[] {
  const names = new Set(namesOf(train));
  const calling = (name: string) => (names.has(name) ? voice.called(name) : name);
  return entriesOf(train).map(({ section, name, value }) => {
    const label = labelOf(section, language.value);
    // What says how the file's own names are told names them itself.
    const valueText = valueIn(section === 'languages' ? (own) => own : calling);
    return {
      thing: { thing: 'entry', within: section, name } as const,
      name: calling(name) || label,
      says: name ? `${label}: ${valueText(section, value)}` : valueText(section, value),
    };
  });
}

// Plates are counted; of the rest each key is told by what it is called, and so is what the file names.
function valueIn(calling: Naming) {
  const valueText = (path: string, value: Value): string => {
    if (value instanceof Map) {
      const entries = [...(value as ReadonlyMap<string, Value>)];
      const holds = entries.some(([, its]) => its instanceof Map || Array.isArray(its));
      return entries
        .map(([key, its]) => {
          const at = `${path}.${key}`;
          const label = labelOf(at, language.value);
          const said = isWorded(at, language.value) ? label.toLocaleLowerCase() : calling(key);
          return `${said} ${valueText(at, its)}`;
        })
        .join(holds ? '; ' : ', ');
    }
    if (!Array.isArray(value)) {
      const said = `${value as string}`;
      return valueWord(path, said, language.value) ?? calling(said);
    }
    const list: readonly Value[] = value;
    if (list.some((one) => one instanceof Map)) return `${list.length}`;
    return list.map((one) => valueText(path, one)).join(', ');
  };
  return valueText;
}
