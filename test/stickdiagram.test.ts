import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { applyFault, type Fault } from '../src/engine/faults/index.ts';
import { flow, ledgerOf, pushesOf } from '../src/engine/flow/index.ts';
import { assemble, companyOf, type Train, gearsOf } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import {
  type StickDiagram,
  stickDiagram,
  paintStickDiagram,
} from '../src/telling/stickdiagram/index.ts';
import { endsOf, type Scene, SIZE, standingsOf, toSvg } from '../src/telling/scene/index.ts';
import { tries } from './dice.ts';
import { boxesOf, cross, hangTogether, meet, runTogether, strokesOf } from './drawn.ts';
import { expectPicture } from './kept.ts';
import { randomTrain } from './random-train.ts';
import { ROOT } from './sources.ts';
import { OURS, ours } from './trains.ts';

// The laws of a stick diagram's layout, and the picture of each train of ours, kept beside it.
describe.each(OURS)('%s', (name) => {
  const train = ours(name);
  const drawn = stickDiagram(train);

  it('keeps the laws of the sheet', () => {
    expect(faultsOf(train, drawn)).toEqual([]);
  });

  it('keeps them in each of its gears, and names stay clear of lines', () => {
    for (const { on } of gearsOf(train)) {
      const scene = inGear(train, drawn, on);
      expect(faultsOfSheet(scene)).toEqual([]);
      expect(wordsOnLines(scene, drawn)).toEqual([]);
    }
  });

  it('has the lettering that is read from the back of a class', () => {
    // Common practice, no source: letters 1/45 of the picture are read eight metres away.
    expect(drawn.height / 45).toBeLessThanOrEqual(SIZE);
  });

  it('is drawn as it was', () => {
    expectPicture(path.join(ROOT, `trains/${name}.svg`), toSvg(paintStickDiagram(drawn)));
  });
});

it('marks a gear whose teeth are gone, where they were', () => {
  const marksOf = (train: Train) => toSvg(paintStickDiagram(stickDiagram(train))).split('"bare"');
  const kestrel = ours('kestrel-three-speed');
  expect(marksOf(kestrel)).toHaveLength(1);
  const bare = (train: Train, fault: Fault) => marksOf(applyFault(train, fault)).length - 1;
  // Of its one mesh; of a planet's two; of a gear pair, once.
  expect(bare(kestrel, { what: 'wheel', member: 'front.sun', is: 'stripped' })).toBe(1);
  expect(bare(kestrel, { what: 'wheel', member: 'rear.planet', is: 'stripped' })).toBe(2);
  const dunlin = ours('dunlin-final-drive');
  expect(bare(dunlin, { what: 'pair', pair: 'final drive', is: 'stripped' })).toBe(1);
  expect(bare(dunlin, { what: 'wheel', member: 'differential.left', is: 'stripped' })).toBe(1);
});

it('has at most so many crossings', () => {
  const counts = Object.fromEntries(OURS.map((name) => [name, stickDiagram(ours(name)).crossings]));
  const crossed = Object.entries(counts).filter(([, count]) => count > 0);
  expect(Object.fromEntries(crossed)).toEqual({
    'albatross-ten-speed': 2,
    'avocet-four-speed': 1,
    'curlew-four-speed-overdrive': 2,
    'heron-eight-speed': 2,
    'lapwing-six-speed': 1,
    'wren-plain-set': 3,
  });
});

it('lays out the same train alike', () => {
  const train = ours('albatross-ten-speed');
  expect(stickDiagram(train)).toEqual(stickDiagram(structuredClone(train)));
});

it('finds room for names of thirty letters, and for those that cannot break', () => {
  const { train } = readTrain(LONG) as { train: Train };
  const drawn = stickDiagram(train);
  expect(faultsOf(train, drawn)).toEqual([]);
  const scene = inGear(train, drawn, ['forward clutch of thirty letters']);
  expect([...faultsOfSheet(scene), ...wordsOnLines(scene, drawn)]).toEqual([]);
});

const LONG = `
holdturn: 1
input: Antriebswellenkupplungsgehäuse
output: main output shaft with the park gear
sets:
  very long name of a planetary set: { sun: 30, ring: 66 }
  Planetenradsatzhinterachsgetriebe: { sun: 30, ring: 66 }
joined:
  sun shell that drives both rows:
    [very long name of a planetary set.sun, Planetenradsatzhinterachsgetriebe.sun]
  main output shaft with the park gear:
    [very long name of a planetary set.carrier, Planetenradsatzhinterachsgetriebe.ring]
devices:
  forward clutch of thirty letters:
    { clutch: [Antriebswellenkupplungsgehäuse, very long name of a planetary set.ring] }
  Rückwärtsgangkupplungslamellen:
    { clutch: [Antriebswellenkupplungsgehäuse, sun shell that drives both rows] }
  intermediate band with a servo: { band: sun shell that drives both rows }
  Niedriggangbremsscheibenpaket: { brake: Planetenradsatzhinterachsgetriebe.carrier }
  low and reverse one-way clutch:
    { one-way: [Planetenradsatzhinterachsgetriebe.carrier, case], lets: clockwise }
`;

describe('trains by chance', () => {
  // The laws hold however few arrangements are tried, so most are tried in a few.
  it.each([
    [1, tries(180), 60],
    [1001, tries(20), 500],
  ])('from %i on, %i keep the laws of the sheet', (first, count, arrangements) => {
    for (let seed = first; seed < first + count; seed++) {
      const train = randomTrain(seed);
      expect([seed, ...faultsOf(train, stickDiagram(train, undefined, arrangements))]).toEqual([
        seed,
      ]);
    }
  });
});

function inGear(train: Train, drawn: StickDiagram, on: readonly string[]): Scene {
  const { drive } = flow(train, on);
  const ledger = ledgerOf(train, pushesOf(train, drive));
  const ends = endsOf(train);
  const { speeds, devices, branches, circling } = drive;
  const shown = { ends, speeds, ledger, devices, branches, circling };
  const torque = (parts: number) => `${Math.round(parts * 100)} N·m`;
  const words = { torque };
  return paintStickDiagram(drawn, drawn.name, standingsOf(assemble(train), shown, words));
}

function faultsOf(train: Train, drawn: StickDiagram): string[] {
  const scene = paintStickDiagram(drawn);
  return [
    ...faultsOfSheet(scene),
    ...faultsOfLines(drawn),
    ...setsOutOfOrder(train, drawn),
    ...leadersTogether(drawn),
    ...missingFrom(train, drawn, scene),
  ];
}

function faultsOfSheet(scene: Scene): string[] {
  const { words, marks } = boxesOf(scene);
  const { width, height } = scene;
  const outside = [...words, ...marks].filter(({ left, right, top, foot }) => {
    return !(left >= 0 && right <= width && top >= 0 && foot <= height);
  });
  const upon = words.flatMap((word, k) => words.slice(k + 1).filter((other) => meet(word, other)));
  return [
    ...outside.map(({ says }) => `outside the sheet: ${says}`),
    ...upon.map(({ says }) => `upon other words: ${says}`),
  ];
}

// Sets of one axis stand in the order of the file, whatever lines it makes cross.
function setsOutOfOrder(train: Train, drawn: StickDiagram): string[] {
  const file = [...new Set(train.sets.map(({ name }) => companyOf(train, name)))];
  const sets = drawn.figures.flatMap(({ about, nameX, nameY }) => {
    const axis = drawn.axes.findIndex((y) => y > nameY);
    return about?.kind === 'set' ? [{ name: about.name, x: nameX, axis }] : [];
  });
  return sets.flatMap((a, k) =>
    sets.slice(k + 1).flatMap((b) => {
      if (a.axis !== b.axis) return [];
      const ahead = file.indexOf(a.name) < file.indexOf(b.name);
      return ahead === a.x < b.x ? [] : [`${a.name} and ${b.name} have changed places`];
    }),
  );
}

// No leader runs beside another, or beside a line, so that one is taken for the other.
function leadersTogether(drawn: StickDiagram): string[] {
  const leaders = drawn.handles.map(({ member, leader }) => {
    const [, , y = 0, x = 0, end = 0] = (/^M(\S+) (\S+)H(\S+)V([^L]+)L/.exec(leader) ?? []).map(
      Number,
    );
    return { member, x1: x, x2: x, y1: Math.min(y, end), y2: Math.max(y, end) };
  });
  return leaders.flatMap((a, k) => {
    const others = [...leaders.slice(k + 1), ...strokesOf(drawn).filter(({ x1, x2 }) => x1 === x2)];
    return others.flatMap((b) => {
      const beside = a.member !== b.member && Math.abs(a.x1 - b.x1) < 6;
      const shared = Math.min(a.y2, b.y2) - Math.max(a.y1, b.y1);
      return beside && shared > 30 ? [`the leaders of ${a.member} and ${b.member} coincide`] : [];
    });
  });
}

function faultsOfLines(drawn: StickDiagram): string[] {
  const strokes = strokesOf(drawn);
  const faults: string[] = [];
  let crossings = 0;
  strokes.forEach((a, k) => {
    for (const b of strokes.slice(k + 1)) {
      if (a.member === b.member) continue;
      if (runTogether(a, b)) faults.push(`${a.member} lies upon ${b.member}`);
      if (cross(a, b)) crossings += 1;
    }
  });
  if (crossings !== drawn.crossings) faults.push(`${crossings} lines cross`);
  const bridges = drawn.lines.flatMap(({ branches, disc }) =>
    [...branches, ...(disc ? [disc] : [])].flatMap(({ d }) => d.match(/a6 6/g) ?? []),
  );
  if (bridges.length !== drawn.crossings) faults.push(`${bridges.length} bridges`);
  for (const { body, member } of drawn.lines) {
    const own = strokes.filter((stroke) => stroke.member === member);
    if (body !== 0 && !hangTogether(own)) faults.push(`${member} is in pieces`);
  }
  return faults;
}

function missingFrom(train: Train, drawn: StickDiagram, scene: Scene): string[] {
  const { bodies, bodyOf, onPins } = assemble(train);
  const label = (name: string) => bodies[bodyOf(name) ?? 0]?.label ?? name;
  const met = new Map(
    drawn.lines.map(({ member, branches }) => [
      member,
      new Set(branches.map(({ meets }) => meets)),
    ]),
  );
  const missing: string[] = [];
  const wants = (name: string, station: string) => {
    const body = bodyOf(name) ?? 0;
    if (body === 0 || onPins.has(body)) return;
    if (!met.get(label(name))?.has(station)) missing.push(`${name} does not reach ${station}`);
  };
  for (const { name, first, second } of train.devices) {
    wants(first, name);
    wants(second, name);
  }
  for (const { name, driver, driven } of train.pairs) {
    wants(driver.member, name);
    wants(driven.member, name);
  }
  const companies = scene.marks.flatMap((mark) => {
    return mark.mark === 'group' && mark.about ? [`${mark.about.kind} ${mark.about.name}`] : [];
  });
  const [things, members] = [new Set(companies), new Set(met.keys())];
  for (const { name } of train.devices) {
    if (!things.has(`device ${name}`)) missing.push(`no symbol for ${name}`);
  }
  for (const { name } of train.sets) {
    const parts = [...things].some((thing) =>
      thing.replace('set ', '').split(' + ').includes(name),
    );
    if (!parts) missing.push(`no symbol for ${name}`);
    for (const part of ['sun', 'ring', 'carrier', 'left', 'right']) {
      const member = `${name}.${part}`;
      const body = bodyOf(member) ?? 0;
      if (body !== 0 && !onPins.has(body) && !members.has(label(member))) missing.push(member);
    }
  }
  const dials = new Set(drawn.handles.map(({ member }) => member));
  for (const member of members) {
    if (member !== 'case' && !dials.has(member)) missing.push(`no dial for ${member}`);
  }
  return missing;
}

function wordsOnLines(scene: Scene, drawn: StickDiagram): string[] {
  const { words } = boxesOf(scene);
  return strokesOf(drawn).flatMap(({ member, x1, x2, y1, y2 }) => {
    const line = { left: x1 - 1, right: x2 + 1, top: y1 - 1, foot: y2 + 1, says: member };
    return words.filter((word) => meet(word, line)).map(({ says }) => `${says} on ${member}`);
  });
}
