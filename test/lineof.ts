import { CASE, type Device, type GearSet, type Train } from '../src/engine/train/index.ts';
import { kindBy } from './line.ts';

/** The line of a train, as `trainOf` reads it: sets, pairs, joins, devices and gears, nothing else. */
export function lineOf(train: Train): string {
  const { input, output, others = [], forward } = train;
  const joined = new Set(train.joins.map(({ name }) => name));
  const ends: readonly [string, string][] = [
    [input, 'in'],
    ...(others.length === 0 ? [[output, 'out'] as [string, string]] : []),
  ];
  const endOf = new Map(ends);
  return [
    ...train.sets.map(setPhrase),
    ...train.pairs.map(({ name, driver, driven, kind }) => {
      const how = { external: '', internal: ' internally', chain: ' by chain' }[kind];
      const [from, to] = [driver, driven].map(({ member, teeth }) => `${member} ${teeth}`);
      return `${name}: ${from} drives${how} ${to}`;
    }),
    ...[...endOf].flatMap(([name, end]) => (joined.has(name) ? [] : [`${end} ${name}`])),
    ...(others.length > 0 ? [output, ...others].map((name) => `out ${name}`) : []),
    ...train.joins.map(({ name, members }) => {
      const end = endOf.get(name);
      return `${end ? `${end} ` : ''}${name} = ${members.join(' + ')}`;
    }),
    ...train.devices.map(devicePhrase),
    ...train.ranges.flatMap(({ name, gears }) =>
      gears.map((gear) => `${name} ${gear.name} applies ${gear.on.join(' + ') || 'nothing'}`),
    ),
    ...(forward ? [`forward ${forward}`] : []),
  ].join('; ');
}

function setPhrase(set: GearSet): string {
  const named = `${set.name} `;
  const times = (count: number | undefined) => (count === undefined ? '' : ` x${count}`);
  switch (set.kind) {
    case 'plain':
      return `${named}${[set.sun, set.planet, set.ring].filter(Boolean).join(':')}${times(set.planets)}`;
    case 'pair':
      return `${named}${set.sun}:${set.inner ?? ''}+${set.outer ?? ''}:${set.ring}${times(set.pairs)}`;
    case 'stepped':
      return `${named}${set.sun}:${set.steps.join('-')}:${set.ring}${times(set.planets)}`;
    case 'sharing': {
      const between = set.pairs === undefined ? '' : `${set.inner ?? ''}+:`;
      const teeth = `${set.sun ?? ''}:${between}${set.ring ?? ''}`;
      return `${named}${teeth}${times(set.pairs ?? set.planets)} shares ${set.shares}`;
    }
    case 'bevel':
      return `${named}${set.sides.join(`<${set.pinion ?? ''}>`)}${times(set.pinions)}`;
    case 'wheels': {
      const told = new Set<string>();
      const wheel = (name: string) => {
        if (told.has(name)) return name;
        told.add(name);
        return `${name}${set.carried.includes(name) ? '*' : ''} ${set.wheels.get(name)}`;
      };
      const meshes = set.meshes.map(({ a, b, internal }) => {
        return `${wheel(a)} ${internal ? '~~' : '~'} ${wheel(b)}`;
      });
      return `${set.name}: ${meshes.join(', ')}`;
    }
  }
}

function devicePhrase({ name, first, second, ...device }: Device): string {
  switch (device.kind) {
    case 'clutch':
      return `${name} joins ${first} + ${second}`;
    case 'one-way':
      return `${name} lets ${first} ${device.lets}${second === CASE ? '' : ` in ${second}`}`;
    default:
      return `${name} holds ${first}${device.kind === kindBy(name) ? '' : ` by ${device.kind}`}`;
  }
}
