import path from 'node:path';
import type { Source } from './sources.ts';

/** The rooms in order, as `src/house.ts` lists them. */
export type Rooms = readonly (readonly [folder: string, purpose: string])[];

/** One import (or re-export) of a source, as it is written there. */
export interface Import {
  readonly from: string;
  /** Nothing of it is left when the program runs. */
  readonly typeOnly: boolean;
}

/** What is wrong with where the sources under `src/` stand and what they import; a sentence each. */
export function misplaced(sources: readonly Source[], rooms: Rooms): string[] {
  const house = sources.filter(({ path: file }) => /^src\/.*\.tsx?$/u.test(file));
  const stray = house.filter((source) => !isFront(source) && roomOf(source.path, rooms) < 0);
  const empty = rooms.filter(([folder]) => !house.some(({ path: file }) => isIn(file, folder)));
  return [
    ...stray.map((source) => `${source.path} stands in no room that src/house.ts lists`),
    ...empty.map(
      ([folder]) => `src/house.ts lists ${folder}, but there is nothing in src/${folder}`,
    ),
    ...house.filter((source) => !isTest(source)).flatMap((source) => trespasses(source, rooms)),
  ];
}

/** The imports of a TypeScript source, in the order in which they stand; comments have none. */
export function importsOf(text: string): Import[] {
  return [...text.matchAll(STATEMENT), ...text.matchAll(CALL)]
    .toSorted((a, b) => a.index - b.index)
    .map(({ groups = {} }) => ({
      from: groups['from'] ?? '',
      typeOnly: groups['type'] !== undefined || onlyTypes(groups['names']),
    }));
}

// A statement begins a line, as the formatter sees to; what stands in a comment does not.
const STATEMENT =
  /^(?:import|export)\b(?<type> type\b(?! from))?(?:(?<names>[^;'"`=]*?)\bfrom\s*)?\s*'(?<from>[^']+)'/gm;
const CALL = /(?<!\*.*|\/\/.*)\bimport\(\s*'(?<from>[^']+)'/g;

function onlyTypes(names: string | undefined): boolean {
  const listed = /^\s*\{([^}]*)\}\s*$/.exec(names ?? '')?.[1];
  const items = listed?.split(',').filter((item) => item.trim() !== '') ?? [];
  return items.length > 0 && items.every((item) => item.trim().startsWith('type '));
}

function trespasses(source: Source, rooms: Rooms): string[] {
  const own = roomOf(source.path, rooms);
  return importsOf(source.text)
    .filter(({ from }) => from.startsWith('.'))
    .flatMap(({ from, typeOnly }) => {
      const target = path.posix.join(path.posix.dirname(source.path), from);
      const room = roomOf(target, rooms);
      if (room >= 0 && room === own) return [];
      const wrong = trespass(source, own, target, room, typeOnly, rooms);
      return wrong === undefined ? [] : [`${source.path} imports ${from}: ${wrong}`];
    });
}

function trespass(
  source: Source,
  own: number,
  target: string,
  room: number,
  typeOnly: boolean,
  rooms: Rooms,
): string | undefined {
  const name = (index: number) => rooms[index]?.[0] ?? '';
  // Data that a room reads from outside the house, such as the version in package.json.
  if (!target.startsWith('src/'))
    return target.endsWith('.json') ? undefined : 'it is outside src/';
  if (room < 0) return isFront(source) ? undefined : `${target} is not in a room`;
  if (target !== `src/${name(room)}/index.ts`) return `enter ${name(room)} by its index.ts`;
  if (own < 0) return undefined;
  if (room > own) return `${name(own)} is listed above ${name(room)}`;
  if (name(room).startsWith('doors/')) return 'doors do not import one another';
  if (name(own) === 'engine/proof' && name(room) === 'engine/linear' && !typeOnly) {
    return 'proof shares no code with linear; import types only';
  }
  return undefined;
}

function roomOf(file: string, rooms: Rooms): number {
  return rooms.findIndex(([folder]) => isIn(file, folder));
}

function isIn(file: string, folder: string): boolean {
  return file.startsWith(`src/${folder}/`);
}

// The front of the house: the list of its rooms and its public names.
function isFront(source: Source): boolean {
  return ['src/index.ts', 'src/needed.ts', 'src/house.ts'].includes(source.path);
}

function isTest(source: Source): boolean {
  return source.path.endsWith('.test.ts');
}
