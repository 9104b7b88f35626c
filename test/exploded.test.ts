import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { PART_KINDS, type Part, type Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { kindOfPart } from '../src/shop/strip/index.ts';
import { type ExplodedShown, explodedScenes } from '../src/telling/exploded/index.ts';
import { rowsOf } from '../src/telling/exploded/layout.ts';
import type { Group, Mark, Scene } from '../src/telling/scene/index.ts';
import { voiceOf } from '../src/telling/narrative/index.ts';
import { Dice, seedOfRun, tries } from './dice.ts';
import { type Box, boxesOf, meet } from './drawn.ts';
import { withRandomTeardown } from './random-teardown.ts';
import { randomTrain } from './random-train.ts';
import { ROOT } from './sources.ts';

// The laws of an exploded row: nothing overlaps, numbers in order, plates as many as were counted.
const FOLDER = path.join(ROOT, 'trains');
const OURS = fs
  .readdirSync(FOLDER)
  .filter((file) => file.endsWith('.train.yaml'))
  .map((file) => readTrain(fs.readFileSync(path.join(FOLDER, file), 'utf8')).train as Train)
  .filter(({ teardown }) => teardown !== undefined);
const WIDTHS = [390, 700, 945, Infinity];
const WORDS = { nameOf: ({ name }: Part) => name, upOf: (end: string) => `${end} end up` };

describe.each(OURS.map((train) => [train.name, train] as const))('%s', (_, train) => {
  it.each(WIDTHS)('keeps the laws of the row at a width of %s', (width) => {
    for (const language of ['en', 'es'] as const) {
      expect(faultsOf(train, { width, voice: voiceOf(language) })).toEqual([]);
    }
  });

  it('has a kind for each of its parts', () => {
    const unknown = train.teardown?.filter((part) => kindOfPart(train, part) === undefined);
    expect(unknown).toEqual([]);
  });
});

it('keeps the laws on teardowns by chance, as every kind, off and refused', () => {
  const first = seedOfRun();
  for (let seed = first; seed < first + tries(60); seed++) {
    const dice = new Dice(seed);
    const bare = withRandomTeardown(randomTrain(seed), dice);
    const teardown = (bare.teardown ?? []).map((part): Part => {
      const long = dice.chance(0.2) ? ` of the ${'very '.repeat(dice.whole(1, 4))}long name` : '';
      return {
        ...part,
        ...(dice.chance(0.6) && { kind: dice.pick(PART_KINDS) }),
        ...(dice.chance(0.3) && { frictions: dice.whole(1, 20), steels: dice.whole(1, 20) }),
        name: `${part.name}${long}`,
      };
    });
    const train = { ...bare, teardown };
    const states = new Map(
      teardown.map(({ name }) => [name, dice.pick(['off', 'next', 'refused'] as const)]),
    );
    const width = dice.pick(WIDTHS);
    expect(faultsOf(train, { width, voice: voiceOf('en'), states }), `seed ${seed}`).toEqual([]);
  }
});

it('draws as many plates as were counted, and the wheels as large as their teeth say', () => {
  const kestrel = OURS.find(({ name }) => name.startsWith('Kestrel')) as Train;
  const lined = (part: string) => marksOf(kestrel, part).filter(hasLook('solid-lined')).length;
  expect(lined('forward drum')).toBe(4);
  expect(lined('low pack')).toBe(4);
  expect(lined('second pack')).toBe(3);
  const reach = (part: string) => {
    const placed = rowsOf(kestrel, Infinity, WORDS)[0]?.parts.find((its) => its.part.name === part);
    return placed?.outline.high ?? 0;
  };
  // Sun 36, ring 84 and a rim of 8.
  expect((reach('front ring') - 8) / reach('common sun')).toBeCloseTo(84 / 36, 1);
});

// A sprag that may be turned one way by its inner race jams the other way, as it stands up: its
// inner end lies the free way of its outer end. Common practice, no source.
it.each(['clockwise', 'anticlockwise'] as const)('slants a sprag that is free %s', (lets) => {
  for (const up of ['input', 'output'] as const) {
    const { train } = readTrain(`
holdturn: 1
input: shaft
output: hub
sets: { set: { sun: 30, ring: 66 } }
joined: { shaft: [set.sun], hub: [set.carrier] }
devices: { low sprag: { one-way: [set.ring, case], lets: ${lets} } }
teardown: { sprag cage: { up: ${up}, carries: [low sprag] } }
`);
    // The first stands at the right, where clockwise is down.
    const sprag = marksOf(train as Train, 'sprag cage').find(hasLook('solid-mark'));
    const corners = [...(sprag?.d ?? '').matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(
      (at) => +(at[2] ?? 0),
    );
    const [a = 0, b = 0, c = 0, d = 0] = corners;
    const falls = (c + d) / 2 > (a + b) / 2;
    // From the output end one sees it the other way round.
    expect(falls).toBe((lets === 'clockwise') === (up === 'input'));
  }
});

it('breaks into scenes no higher than a page', () => {
  for (const train of OURS) {
    const scenes = explodedScenes(train, { voice: voiceOf('en'), width: 700, most: 900 });
    expect(Math.max(...scenes.map(({ height }) => height))).toBeLessThanOrEqual(900);
    expect(scenes.flatMap(partsOf)).toHaveLength(train.teardown?.length ?? 0);
  }
});

function faultsOf(train: Train, shown: ExplodedShown): string[] {
  const faults: string[] = [];
  const scenes = explodedScenes(train, shown);
  for (const scene of scenes) {
    const { words } = boxesOf(scene);
    const drawn = partsOf(scene).flatMap((part) => picturesOf(part, scene));
    words.forEach((a, i) => {
      if (a.left < 0 || a.right > scene.width || a.top < 0 || a.foot > scene.height) {
        faults.push(`“${a.says}” leaves the sheet`);
      }
      for (const b of words.slice(i + 1)) if (meet(a, b)) faults.push(`“${a.says}” on “${b.says}”`);
      for (const b of drawn) if (meet(a, b)) faults.push(`“${a.says}” on ${b.says}`);
    });
    drawn.forEach((a, i) => {
      if (a.left < -0.5 || a.right > scene.width + 0.5 || a.top < 0)
        faults.push(`${a.says} leaves`);
      for (const b of drawn.slice(i + 1)) if (meet(a, b)) faults.push(`${a.says} on ${b.says}`);
    });
  }
  const numbers = scenes.flatMap(partsOf).map(({ marks }) => {
    const figure = marks.find((mark) => mark.mark === 'words' && mark.look === 'part-figure');
    return figure?.mark === 'words' ? Number(figure.text) : 0;
  });
  const count = train.teardown?.length ?? 0;
  const inOrder = numbers.length === count && numbers.every((number, i) => number === i + 1);
  if (!inOrder) faults.push(`numbers: ${numbers.join(' ')}`);
  return faults;
}

function partsOf(scene: Scene): Group[] {
  const visit = (mark: Mark): Group[] => {
    if (mark.mark !== 'group') return [];
    return mark.about?.kind === 'part' ? [mark] : mark.marks.flatMap(visit);
  };
  return scene.marks.flatMap(visit);
}

function marksOf(train: Train, part: string) {
  const [scene] = explodedScenes(train, { voice: voiceOf('en'), width: Infinity });
  const group = partsOf(scene as Scene).find(({ about }) => about?.name === part);
  const paths = (mark: Mark): (Mark & { mark: 'path' })[] =>
    mark.mark === 'path' ? [mark] : mark.mark === 'group' ? mark.marks.flatMap(paths) : [];
  return group ? paths(group) : [];
}

function hasLook(look: string) {
  return (mark: { readonly look: string }) => mark.look.split(' ').includes(look);
}

// The box of a part's picture, from the points of its paths and the reach of its arcs.
function picturesOf(part: Group, scene: Scene): Box[] {
  const at = placeOf(part, scene);
  return part.marks.slice(0, 1).flatMap((mark): Box[] => {
    if (mark.mark !== 'group') return [];
    const [xs, ys]: [number[], number[]] = [[], []];
    for (const inner of mark.marks) {
      if (inner.mark !== 'path') continue;
      for (const [x, y] of pointsOf(inner.d)) {
        xs.push(x);
        ys.push(y);
      }
    }
    const [dx, dy] = [at.x + (mark.at?.x ?? 0), at.y + (mark.at?.y ?? 0)];
    const [left, right] = [Math.min(...xs) + dx, Math.max(...xs) + dx];
    const [top, foot] = [Math.min(...ys) + dy, Math.max(...ys) + dy];
    return [{ left, right, top, foot, says: part.about?.name ?? '' }];
  });
}

function placeOf(part: Group, scene: Scene): { x: number; y: number } {
  const row = scene.marks.find((mark) => mark.mark === 'group' && mark.marks.includes(part));
  return row?.mark === 'group' && row.at ? row.at : { x: 0, y: 0 };
}

function pointsOf(d: string): (readonly [number, number])[] {
  const points: (readonly [number, number])[] = [];
  let [x, y] = [0, 0];
  const go = (toX: number, toY: number) => points.push([([x, y] = [toX, toY])[0], toY]);
  for (const [, letter = '', rest = ''] of d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const its = [...rest.matchAll(/-?\d*\.?\d+/g)].map(Number);
    const at = (k: number) => its[k] ?? 0;
    if (letter === 'M' || letter === 'L') {
      for (let k = 0; k < its.length; k += 2) go(at(k), at(k + 1));
    } else if (letter === 'H') go(at(0), y);
    else if (letter === 'h') go(x + at(0), y);
    else if (letter === 'V') go(x, at(0));
    else if (letter === 'A') {
      // Up or down: it bulges to the side by its radius across, at most.
      const [toX, toY] = [at(5), at(6)];
      const side = (at(4) === 1) === toY > y ? 1 : -1;
      if (Math.abs(Math.abs(toY - y) / 2 - at(1)) < 0.1)
        points.push([x + side * at(0), (y + toY) / 2]);
      go(toX, toY);
    } else if (letter !== 'Z') throw new Error(`a path with ${letter}: ${d}`);
  }
  return points;
}
