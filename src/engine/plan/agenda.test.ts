import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Dice, seedOfRun } from '../../../test/dice.ts';
import { randomTrain } from '../../../test/random-train.ts';
import { withRandomTeardown } from '../../../test/random-teardown.ts';
import { hand } from '../hand/index.ts';
import { coversOf, halfBuilt, type Train } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import { agendaOf, subjectOf } from './agenda.ts';
import { mistaken } from './mistakes.ts';
import { type Felt, MOST_PARTS, plan, type Plan, type Step } from './index.ts';
import { Tally } from '../../../test/tally.ts';

const FOLDER = new URL('../../../trains/', import.meta.url);

function read(text: string): Train {
  const { train, problems } = readTrain(text);
  if (!train) throw new Error(JSON.stringify(problems));
  return train;
}

const described = fs
  .readdirSync(FOLDER)
  .filter((file) => file.endsWith('.train.yaml'))
  .map((file) => [file, read(fs.readFileSync(new URL(file, FOLDER), 'utf8'))] as const)
  .filter(([, train]) => train.teardown);

const HEAD = `
holdturn: 1
input: turbine shaft
output: main shaft
sets: { set: { sun: 30, ring: 66 } }
joined: { main shaft: [set.carrier], drum: [set.sun] }
devices:
  ring brake: { brake: set.ring }
  sun clutch: { clutch: [turbine shaft, drum] }
  sun band: { band: drum }
`;
const WHOLE = read(`${HEAD}
teardown:
  cover: { up: input, bolts: { torque: 24 Nm, once: yes }, feeds: [sun clutch] }
  gasket: { align: its holes, feeds: [sun clutch] }
  washer: { selective: yes, sets: turbine shaft }
  shaft: { carries: [turbine shaft, sun clutch], frictions: 4, height: { most: 3 mm } }
  strap: { carries: [sun band] }
  drum: { carries: [drum] }
  ring: { carries: [set.ring] }
  snap ring: { closes: [ring brake] }
  pack: { carries: [ring brake], frictions: 3, under: [ring] }
  carrier: { carries: [main shaft] }
  end cover: { up: output }
packs:
  ring brake: { plates: [{ kind: steel, thickness: 2 mm }] }
  sun clutch: { plates: [{ kind: steel, thickness: 2 mm }] }
bands: { sun band: { pitch: 1.5 mm } }
endplay: { turbine shaft: { limit: { most: 0.6 mm } }, main shaft: { limit: { most: 0.5 mm } } }
fluid: { fill: 5.4 L }
`);

function told(step: Step): string {
  switch (step.does) {
    case 'fit':
      return step.part.name;
    case 'turn over':
      return `turn over: ${step.up} up`;
    case 'tighten':
      return `tighten: ${step.part.name}`;
    case 'fill':
      return 'fill';
    default:
      return `${step.does}: ${subjectOf(step)}`;
  }
}

describe('what is done in a build', () => {
  it('stands at its place', () => {
    expect((plan(WHOLE) as Plan).steps.map(told)).toEqual([
      'end cover',
      'turn over: input up',
      'carrier',
      'pack',
      // Not before its snap ring is in.
      'snap ring',
      'clearance: ring brake',
      'ring',
      // Air shows nothing before there is a ring to hold.
      'air check: ring brake',
      'drum',
      'strap',
      'band: sun band',
      'air check: sun band',
      'shaft',
      'height: shaft',
      'clearance: sun clutch',
      'washer',
      'gasket',
      // Its oil comes through the cover.
      'cover',
      'tighten: cover',
      'end play: turbine shaft',
      'end play: main shaft',
      'air check: sun clutch',
      'fill',
    ]);
  });

  it('is told with the end that is up', () => {
    const ups = (plan(WHOLE) as Plan).steps.map(({ up }) => up);
    expect(ups).toEqual(['output', ...ups.slice(1).map(() => 'input')]);
  });

  it('is nothing that the file does not have', () => {
    const { packs: _, bands: __, endPlays: ___, fluid: ____, ...bare } = WHOLE;
    const teardown = (bare.teardown ?? []).map(({ name, carries }) => ({ name, carries }));
    const does = (plan({ ...bare, teardown }) as Plan).steps.map((step) => step.does);
    expect(new Set(does)).toEqual(new Set(['fit', 'air check']));
  });

  it('lets the input turn by hand after its cover is tightened', () => {
    const { steps } = plan(WHOLE) as Plan;
    const tighten = steps.find(({ does }) => does === 'tighten');
    expect(tighten).toMatchObject({
      bolts: { torque: '24 Nm', once: true },
      still: { turn: { member: 'turbine shaft' }, felt: 'both ways' },
    });
  });
});

it('puts air on everything before the valve body covers the ports in the case', () => {
  const { steps, mistakes } = plan(
    read(`${HEAD}
teardown:
  valve body: { align: its pin, feeds: [ring brake, sun clutch, sun band] }
  pump: { feeds: [sun clutch] }
  shaft: { carries: [turbine shaft, sun clutch] }
  strap: { carries: [sun band] }
  drum: { carries: [drum] }
  ring: { carries: [set.ring] }
  pack: { carries: [ring brake] }
  carrier: { carries: [main shaft] }
`),
  ) as Plan;
  const order = steps.map(told);
  expect(order.filter((its) => its.startsWith('air'))).toHaveLength(3);
  expect(order.indexOf('air check: ring brake')).toBe(order.indexOf('ring') + 1);
  expect(order.indexOf('air check: sun clutch')).toBe(order.indexOf('pump') + 1);
  expect(order.at(-1)).toBe('valve body');
  const its = mistakes.filter(({ part }) => part === 'valve body');
  expect(new Set(its.map(({ caught }) => caught.by))).toEqual(new Set(['look']));
});

// A final drive, a servo, a pawl, bearings that are squeezed: all that is measured goes late.
const TRANSAXLE_TEXT = `
holdturn: 1
input: turbine shaft
output: [left shaft, right shaft]
final drive: final drive
sets: { set: { sun: 30, ring: 66 }, axle: { sides: [14, 14] } }
gear pairs: { final drive: { driver: [output gear, 20], driven: [axle case, 61] } }
joined:
  turbine shaft: [set.sun]
  output gear: [set.carrier]
  axle case: [axle.carrier]
  left shaft: [axle.left]
  right shaft: [axle.right]
devices:
  ring band: { band: set.ring }
  ring sprag: { one-way: [set.ring, case], lets: clockwise }
  park pawl: { pawl: output gear }
ranges: { P: { P: [park pawl] }, D: { "1": [ring band] } }
teardown:
  pump: { carries: [turbine shaft, set.sun] }
  servo: { feeds: [ring band] }
  strap: { carries: [ring band] }
  sprag: { carries: [ring sprag] }
  ring: { carries: [set.ring] }
  washer: { selective: yes, sets: output shaft }
  output gear part: { carries: [output gear, set.carrier] }
  pawl part: { carries: [park pawl] }
  cover: { closes: [ring wheel, output shaft, side bearings], bolts: { torque: 24 Nm } }
  shim: { selective: yes, sets: side bearings }
  differential: { carries: [axle case, axle.left, axle.right] }
endplay:
  output shaft: { limit: { most: 0.5 mm } }
  ring wheel: { measure: backlash, limit: { most: 0.2 mm } }
preload: { side bearings: { turning: { least: 1 Nm, most: 2 Nm } } }
bands: { ring band: { pitch: 1.25 mm, lever: 0.7, limits: { clearance: { least: 1.2 mm, most: 1.7 mm } } } }
`;
const TRANSAXLE = read(TRANSAXLE_TEXT);

describe('what is measured', () => {
  const { steps, mistakes } = plan(TRANSAXLE) as Plan;
  const order = steps.map(told);
  const isRightAfter = (step: string, before: string) => {
    expect(order[order.indexOf(step) - 1]).toBe(before);
  };

  it('waits for what sets it, for the gear that meshes, for the servo', () => {
    isRightAfter('end play: output shaft', 'washer');
    expect(order.indexOf('end play: ring wheel')).toBeGreaterThan(
      order.indexOf('output gear part'),
    );
    isRightAfter('band: ring band', 'servo');
  });

  it('is the preload of bearings too, as their cover is on, and a wrong shim is caught there', () => {
    isRightAfter('preload: side bearings', 'tighten: cover');
    const shim = mistakes.find(({ mistake, part }) => {
      return part === 'shim' && 'is' in mistake && mistake.is === 'wrong thickness';
    });
    expect(shim?.caught).toEqual({
      by: 'preload',
      step: order.indexOf('preload: side bearings') + 1,
    });
  });

  it('and a pawl is tried by hand, engaged', () => {
    const tried = steps.find(({ does }) => does === 'pawl check');
    expect(tried).toMatchObject({ check: { right: 'neither way' } });
    const fault = { what: 'device', device: 'park pawl', is: 'will not apply' };
    const its = mistakes.find(({ mistake }) => JSON.stringify(mistake) === JSON.stringify(fault));
    expect(its?.caught).toEqual({ by: 'pawl check', step: tried?.number });
  });

  it('and the races of a one-way clutch that no later check feels backwards', () => {
    const hinted = steps.flatMap((step) => (step.does === 'fit' ? (step.oneWays ?? []) : []));
    const unfelt = mistakes.filter(({ mistake, caught }) => {
      return mistake.what === 'one-way' && mistake.is === 'backwards' && caught.by === 'look';
    });
    expect(unfelt).toHaveLength(1);
    expect(hinted.map(({ name }) => name)).toEqual(['ring sprag']);
    expect((plan(TRANSAXLE) as Plan).assumed).toBe(10);
  });

  it('is doubted where a part is said to close it too early', () => {
    const early = (text: string) => {
      return readTrain(text).problems.flatMap((its) => {
        return its.problem === 'closes too early' ? [`${its.name}: ${its.later}`] : [];
      });
    };
    expect(early(TRANSAXLE_TEXT)).toEqual(['ring wheel: output gear part', 'output shaft: washer']);
    const late = TRANSAXLE_TEXT.replace('ring wheel, output shaft, ', '');
    expect(early(late.replace('pump: {', 'pump: { closes: [ring wheel, output shaft],'))).toEqual(
      [],
    );
  });
});

describe('what no hand feels is caught where it is measured', () => {
  const { mistakes, steps } = plan(WHOLE) as Plan;
  const caught = (part: string, is: string) => {
    const its = mistakes.find(
      ({ mistake }) => 'part' in mistake && mistake.part === part && mistake.is === is,
    );
    const step = steps[(its?.caught.step ?? 0) - 1];
    return [its?.caught.by, step && told(step), its && its.open < its.caught.step];
  };

  it.each<[string, string, unknown[]]>([
    ['pack', 'miscounted', ['clearance', 'clearance: ring brake', false]],
    ['shaft', 'miscounted', ['clearance', 'clearance: sun clutch', false]],
    // By then it is covered: strip back.
    ['washer', 'left out', ['end play', 'end play: turbine shaft', true]],
    ['washer', 'wrong thickness', ['end play', 'end play: turbine shaft', true]],
    ['gasket', 'left out', ['air check', 'air check: sun clutch', true]],
    ['gasket', 'out of line', ['air check', 'air check: sun clutch', true]],
    ['pack', 'left out', ['clearance', 'clearance: ring brake', false]],
    ['cover', 'left out', ['air check', 'air check: sun clutch', false]],
    ['end cover', 'left out', ['look', 'end cover', false]],
  ])('%s: %s', (part, is, expected) => {
    expect(caught(part, is)).toEqual(expected);
  });

  it('a washer is missed by the shaft in whose stack it stands', () => {
    const stack = [{ part: 'washer', size: '1.6 mm', gap: 'fills' }] as const;
    const teardown = (WHOLE.teardown ?? []).map(({ name, carries }) => ({ name, carries }));
    const endPlays = [{ shaft: 'main shaft', stack }];
    const its = plan({ ...WHOLE, teardown, endPlays }) as Plan;
    const washer = its.mistakes.find(({ part }) => part === 'washer');
    expect(washer?.caught.by).toBe('end play');
    expect(told(its.steps[(washer?.caught.step ?? 0) - 1] as Step)).toBe('end play: main shaft');
  });
});

describe.each(described)('%s', (_, train) => {
  const { steps } = plan(train) as Plan;
  const onAt = new Map(agendaOf(train).map(({ number, on }) => [number, on]));

  it('measures a pack before what covers it goes on', () => {
    const at = (name: string) => {
      return steps.find((step) => step.does === 'fit' && step.part.name === name)?.number ?? 0;
    };
    for (const step of steps) {
      if (step.does !== 'clearance') continue;
      const { device } = step.pack;
      const part = train.teardown?.find(({ carries }) => carries.includes(device));
      if (!part) continue;
      expect(step.number, device).toBeGreaterThan(at(part.name));
      for (const cover of coversOf(train.teardown ?? [], part)) {
        expect(step.number, `${device} under ${cover}`).toBeLessThan(at(cover));
      }
    }
  });

  it('predicts of air what the hand check of the half-built train says with the device on', () => {
    const parts = (train.teardown ?? []).toReversed();
    for (const step of steps) {
      if (step.does !== 'air check' || !step.check) continue;
      const there = new Set(parts.slice(0, onAt.get(step.number)).map(({ name }) => name));
      const half = halfBuilt(train, (part) => there.has(part.name));
      const { hold, turn, right, wrong } = step.check;
      const felt = (devices: readonly string[], of = half): Felt => {
        const [clockwise, anticlockwise] = (['clockwise', 'anticlockwise'] as const).map((way) => {
          const held = hold ? [hold.member] : [];
          return hand(of, { hold: held, turn: turn.member, way, on: devices }).turns;
        });
        if (clockwise) return anticlockwise ? 'both ways' : 'clockwise only';
        return anticlockwise ? 'anticlockwise only' : 'neither way';
      };
      const { name } = step.device;
      expect(felt([name]), name).toBe(right);
      // One that does not grip is one without air.
      expect(felt([]), name).not.toBe(right);
      for (const { felt: other, mistakes } of wrong) {
        expect(other, name).not.toBe(right);
        for (const mistake of mistakes) {
          const spoilt = halfBuilt(mistaken(train, mistake), (part) => there.has(part.name));
          expect(felt([name], spoilt), `${name}: ${JSON.stringify(mistake)}`).toBe(other);
        }
      }
      const weak = { what: 'device', device: name, is: 'will not apply' };
      expect(wrong.flatMap(({ mistakes }) => mistakes)).toContainEqual(weak);
    }
  });

  it('tells at an air check of mistakes alone that are made by then, and that no hand has felt', () => {
    const { mistakes } = plan(train) as Plan;
    for (const step of steps) {
      if (step.does !== 'air check' && step.does !== 'pawl check') continue;
      for (const mistake of step.check?.wrong.flatMap((its) => its.mistakes) ?? []) {
        const named = JSON.stringify(mistake);
        const watched = mistakes.find((its) => JSON.stringify(its.mistake) === named);
        expect(watched?.made, named).toBeLessThanOrEqual(step.number);
        expect(watched?.caught.by, named).not.toBe('hand check');
      }
    }
  });

  it('puts air on every clutch, brake and band, once', () => {
    const aired = steps.flatMap((step) => (step.does === 'air check' ? [step.device.name] : []));
    const friction = train.devices.filter(({ kind }) => kind !== 'one-way');
    expect(aired.toSorted()).toEqual(friction.map(({ name }) => name).toSorted());
  });
});

it('of a clutch between two members in reach, air makes one piece', () => {
  const { check } = (plan(WHOLE) as Plan).steps.find(
    (step) => step.does === 'air check' && step.device.name === 'ring brake',
  ) as Extract<Step, { does: 'air check' }>;
  expect(check).toMatchObject({ turn: { member: 'set.ring' }, right: 'neither way' });
});

describe('law', () => {
  const seed = seedOfRun();

  it(`a mistake is made, then caught, and can be until then (SEED=${seed})`, () => {
    const tally = new Tally({ trains: 12, mistakes: 350, 'caught late': 150 });
    for (let its = seed; its < seed + 16; its++) {
      const train = withRandomTeardown(randomTrain(its), new Dice(its));
      if ((train.teardown?.length ?? 0) > MOST_PARTS) continue;
      tally.met('trains');
      const { steps, mistakes } = plan(train) as Plan;
      expect(steps.map(({ number }) => number)).toEqual(steps.map((_, i) => i + 1));
      for (const { mistake, made, caught, until, open } of mistakes) {
        const name = `train ${its}: ${JSON.stringify(mistake)}`;
        expect(made, name).toBeLessThanOrEqual(Math.min(caught.step, open));
        expect(until, name).toBe(Math.max(caught.step, open));
        tally.met('mistakes');
        if (caught.step > made) tally.met('caught late');
      }
    }
    tally.enough();
  });

  it(`the unit is turned over just where another end is up (SEED=${seed})`, () => {
    const tally = new Tally({ steps: 540, 'turned over': 12 });
    for (let its = seed; its < seed + 48; its++) {
      const train = withRandomTeardown(randomTrain(its), new Dice(its));
      let up: string | undefined;
      for (const step of agendaOf(train)) {
        expect(step.does === 'turn over', `train ${its}, step ${step.number}`).toBe(
          up !== undefined && step.up !== undefined && step.up !== up,
        );
        tally.met(step.does === 'turn over' ? 'turned over' : 'steps');
        ({ up } = step);
      }
    }
    tally.enough();
  });
});
