import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type MemberName, namesOf, type Train } from '../src/engine/train/index.ts';
import { trainText } from '../src/engine/trainfile/index.ts';
import { ask } from '../src/doors/cli/asked.ts';
import { nameIn } from '../src/engine/words/index.ts';
import { OURS, ours } from './trains.ts';

// A train whose things are told in Spanish by words that stand nowhere else, and whose notes are blank:
// whatever of its own names comes out was told past the voice.
const MARK = 'Ñ';
const TRAINS = [
  'kestrel-three-speed',
  'curlew-four-speed-overdrive',
  'avocet-four-speed',
  'dunlin-final-drive',
  'wren-plain-set',
];
let folder = '';
const file = (name: string) => path.join(folder, `${name}.train.yaml`);

beforeAll(() => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'holdturn-names-'));
  for (const name of TRAINS) fs.writeFileSync(file(name), trainText(renamed(ours(name))));
});
afterAll(() => fs.rmSync(folder, { recursive: true }));

function renamed(train: Train): Train {
  const told = namesOf(train).filter((name) => !/^[DLRNP0-9]+$/u.test(name));
  const names = new Map(told.map((name, k) => [name, `${MARK}${k}`]));
  const teardown = train.teardown?.map((part) => {
    const notes = new Set(['inner', 'outer', 'face', 'faces', 'align', 'bolts']);
    return Object.fromEntries(Object.entries(part).filter(([key]) => !notes.has(key))) as never;
  });
  return {
    ...train,
    ...(teardown && { teardown }),
    languages: { es: { name: `${MARK} entero`, names } },
  };
}

const KESTREL: readonly string[] = [
  'flow T',
  'flow T --gear 1 --range D --all',
  'flow T --gear R',
  'flow T --on "forward clutch,direct clutch,low brake"',
  'chart T',
  'chart T --all',
  'chart T --csv',
  'hand T --turn rear.carrier',
  'hand T --one-way',
  'faults T --only "low sprag: backwards,second brake: will not apply,front.planet: seized"',
  'faults T --csv --only "low sprag: backwards"',
  'faults T --only "1-2 shift valve: stuck in position 2,direct ball: left out,low apply: leaks"',
  'flow T --gear 3 --range D --fault "2-3 shift valve: spring broken"',
  'capacity T',
  'plan T',
  'endplay T plays',
  'band T bands',
  'wear T worn',
  'pack T readings',
  'suspects T seen --all',
  'suspects T noisy',
  'draw T --range D --gear 2',
  'draw T --end front --range D --gear 2',
  'draw T --lever --range D --gear 2',
  'draw T --exploded',
  'sheet set T -o F/set.typ',
];

it.each(KESTREL)('a name of the file is told in the reader’s words alone: %s', async (typed) => {
  await toldIn('kestrel-three-speed', typed);
});
it.each([
  ['avocet-four-speed', 'flow T --gear 1 --range D'],
  ['avocet-four-speed', 'plan T --seen-from output'],
  ['avocet-four-speed', 'band T rods'],
  ['dunlin-final-drive', 'flow T --on "differential lock"'],
  ['dunlin-final-drive', 'preload T preloads'],
  ['dunlin-final-drive', 'endplay T teeth'],
  ['dunlin-final-drive', 'draw T --end differential'],
  ['dunlin-final-drive', 'sheet set T -o F/set.typ'],
  ['curlew-four-speed-overdrive', 'faults T --only "shift A: wires swapped with shift B"'],
  ['curlew-four-speed-overdrive', 'flow T --gear 4 --range D --fault "orifice A: blocked"'],
  ['wren-plain-set', 'chart T'],
  ['wren-plain-set', 'flow T'],
  ['wren-plain-set', 'faults T --only "hold sun: will not apply"'],
  ['wren-plain-set', 'sheet chart T -o F/set.typ'],
])('the same of %s: %s', async (train, typed) => {
  await toldIn(train, typed);
});

async function toldIn(train: string, typed: string): Promise<void> {
  const { out, err } = await ask(
    `${typed.replaceAll('T', file(train)).replaceAll('F/', `${folder}/`)} --lang es`,
  );
  expect(err).toBe('');
  const written = typed.includes('-o F/') ? fs.readFileSync(`${folder}/set.typ`, 'utf8') : '';
  const told = (out + written)
    .replaceAll(folder, '')
    .replaceAll(/<style>.*?<\/style>|<[^>]*>/gsu, ' ');
  expect(told).toContain(MARK);
  const past = spokenNames(ours(train)).filter((name) => {
    const word = name.replaceAll('.', '[. ]');
    return new RegExp(`(?<![\\p{L}\\p{N}])${word}(?![\\p{L}\\p{N}])`, 'u').test(told);
  });
  expect(
    past,
    told
      .split('\n')
      .filter((line) => past.some((name) => line.includes(name)))
      .slice(0, 6)
      .join('\n'),
  ).toEqual([]);
}

// Without those that are a word or a mark in Spanish too.
function spokenNames(train: Train): MemberName[] {
  return [train.name, ...namesOf(train)].filter(
    (name) => name.length > 3 && !/^[DLRNP0-9]+$/u.test(name),
  );
}

it.each(OURS)('%s is told in Spanish, to its last part', (name) => {
  const train = ours(name);
  const { es } = train.languages ?? {};
  expect(es?.name).toBeTruthy();
  expect(es?.about?.length).toBeGreaterThan(200);
  const unsaid = namesOf(train).filter((its) => {
    return !es?.names?.has(its) && nameIn('es', its, es) === its && !/^[A-Z0-9]+$/u.test(its);
  });
  expect(unsaid).toEqual([]);
});
