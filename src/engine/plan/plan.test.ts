import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { applyFault, faultText } from '../faults/index.ts';
import { handChecks, turns } from '../hand/index.ts';
import { motionOf } from '../motion/index.ts';
import {
  carriersOf,
  coversOf,
  halfBuilt,
  hidersOf,
  type MemberName,
  type Part,
  type Train,
} from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import type { Felt, Mistake, Plan, Step, Watched } from './answer.ts';
import { mistaken } from './mistakes.ts';
import { plan } from './index.ts';

const FOLDER = new URL('../../../trains/', import.meta.url);

function read(text: string): Train {
  const { train, problems } = readTrain(text);
  if (!train || problems.length > 0) throw new Error(JSON.stringify(problems));
  return train;
}

function ours(name: string): Train {
  return read(fs.readFileSync(new URL(`${name}.train.yaml`, FOLDER), 'utf8'));
}

const described = fs
  .readdirSync(FOLDER)
  .filter((file) => file.endsWith('.train.yaml'))
  .map((file) => file.slice(0, -'.train.yaml'.length))
  .filter((name) => ours(name).teardown);

// Two trains of ours that tell nothing of their parts get a bench of their own.
const cuckoo = read(`${fs.readFileSync(new URL('cuckoo-puzzle.train.yaml', FOLDER), 'utf8')}
teardown:
  drums: { carries: [turbine shaft, forward clutch, direct clutch], frictions: 7 }
  strap: { carries: [coast band] }
  front ring: { carries: [front.ring] }
  front carrier: { carries: [front.carrier] }
  second pack: { carries: [second brake] }
  race: { carries: [second race], face: either }
  rollers: { carries: [second roller] }
  shell: { carries: [sun shell, front.sun, rear.sun] }
  rear carrier: { carries: [rear.carrier, low roller.inner] }
  low rollers: { carries: [low roller.outer] }
  low pack: { carries: [low brake] }
  rear ring: { carries: [rear.ring] }
  output shaft: { carries: [output shaft] }
`);
const wren = read(`${fs.readFileSync(new URL('wren-plain-set.train.yaml', FOLDER), 'utf8')}
teardown:
  clutches: { carries: [crank shaft, drive sun, drive ring, drive carrier] }
  brakes: { carries: [hold sun, hold ring, hold carrier] }
  sun: { carries: [wren.sun] }
  carrier: { carries: [wren.carrier] }
  ring: { carries: [wren.ring] }
  flange: { carries: [output shaft, take sun, take ring, take carrier] }
`);

function nameOf(mistake: Mistake): string {
  return mistake.what === 'slip' ? `${mistake.part}: ${mistake.is}` : faultText(mistake);
}

/** The parts that go on, with their hand checks, and how many are on then. */
function fitsOf({ steps }: Plan) {
  const fits = steps.flatMap((step) => (step.does === 'fit' ? [step] : []));
  return fits.map((step, i) => ({ ...step, on: i + 1 }));
}

/** How many parts are on at the hand check that catches it. */
function feltAt({ caught }: Watched, built: Plan): number | undefined {
  if (caught.by !== 'hand check') return undefined;
  return fitsOf(built).find(({ number }) => number === caught.step)?.on;
}

function after(train: Train, step: number): Train {
  const on = new Set((train.teardown ?? []).slice(-step).map(({ name }) => name));
  return halfBuilt(train, ({ name }) => on.has(name));
}

/** What ARCHITECTURE says of reach, told again: which parts hands get hold of after a step. */
function inReach(train: Train, step: number): Part[] {
  const teardown = train.teardown ?? [];
  const on = teardown.slice(-step);
  const upAt = (part: Part) => {
    const said = teardown.slice(0, teardown.indexOf(part) + 1).filter(({ up }) => up);
    return said.at(-1)?.up;
  };
  return on.filter((part, i) => {
    if (part.carries.includes(train.input) || part.carries.includes(train.output)) return true;
    if (upAt(part) && upAt(on[0] as Part) && upAt(part) !== upAt(on[0] as Part)) return false;
    const before = on[i - 1];
    const alone = teardown.filter(({ covers }) => covers?.includes(part.name));
    const said =
      part['hidden by'] ?? (part.under || alone.length > 0 ? coversOf(teardown, part) : undefined);
    if (said) return !on.some(({ name }) => said.includes(name));
    return before === undefined || upAt(before) !== upAt(part);
  });
}

describe('common practice, no source: the hand checks of a common-sun three-speed', () => {
  const kestrel = ours('kestrel-three-speed');
  const built = plan(kestrel) as Plan;
  const backwards = { what: 'one-way', device: 'low sprag', is: 'backwards' } as const;
  const checkOf = (hold: string | undefined, turn: MemberName) => {
    return fitsOf(built).flatMap(({ on, checks }) =>
      checks
        .filter((check) => check.hold?.member === hold && check.turn.member === turn)
        .map((check) => ({ ...check, on })),
    );
  };

  it.each<[string | undefined, MemberName, Felt]>([
    [undefined, 'rear.carrier', 'clockwise only'],
    ['main shaft', 'sun shell', 'clockwise only'],
    ['main shaft', 'front.ring', 'anticlockwise only'],
  ])(
    'with %s held, the %s turns %s, and the other way with the sprag backwards',
    (hold, turn, felt) => {
      const [check] = checkOf(hold, turn);
      expect(check?.right).toBe(felt);
      const wrong = motionOf(after(applyFault(kestrel, backwards), check?.on ?? 0));
      const ways = (['clockwise', 'anticlockwise'] as const).filter((way) => {
        return turns(wrong, { hold: hold === undefined ? [] : [hold], turn, way, on: [] });
      });
      expect(ways).toEqual([felt === 'clockwise only' ? 'anticlockwise' : 'clockwise']);
    },
  );

  it('feel a backwards low sprag as the carrier goes on, before the sun shell covers it', () => {
    const watched = built.mistakes.find(
      ({ mistake }) => nameOf(mistake) === 'low sprag: backwards',
    );
    const step = (name: string) => {
      return fitsOf(built).find(({ part }) => part.name === name)?.number ?? 0;
    };
    expect(watched?.caught).toEqual({ step: step('rear carrier'), by: 'hand check' });
    expect(watched?.open).toBe(step('sun shell') - 1);
  });
});

// Everything that hands could do, worked through without the bench: every member that is there,
// held or not, every other turned, either way.
describe.each([
  ['kestrel', ours('kestrel-three-speed')],
  ['cuckoo', cuckoo],
  ['wren', wren],
])('brute force on %s', (_, train) => {
  const built = plan(train) as Plan;
  const { mistakes } = built;
  const steps = train.teardown?.length ?? 0;
  const carriers = carriersOf(train);
  const motions = new Map<string, ReturnType<typeof motionOf>>();
  const motionAfter = (spoilt: Train, step: number, key: string) => {
    const known = motions.get(`${key} ${step}`) ?? motionOf(after(spoilt, step));
    motions.set(`${key} ${step}`, known);
    return known;
  };
  const there = (step: number, gone: string | undefined): MemberName[] => {
    const on = inReach(train, step).filter(({ name }) => name !== gone);
    const names = on.flatMap(({ carries }) => carries);
    const right = motionAfter(train, step, '');
    return names.filter((name) => carriers.has(name) && right.assembly.bodyOf(name) !== undefined);
  };
  const firstFelt = (mistake: Mistake): number | undefined => {
    if (mistake.what === 'slip') return undefined;
    const spoilt = mistaken(train, mistake);
    const gone = mistake.what === 'part' ? mistake.part : undefined;
    for (let step = 1; step <= steps; step++) {
      const [right, wrong] = [
        motionAfter(train, step, ''),
        motionAfter(spoilt, step, nameOf(mistake)),
      ];
      const names = there(step, gone).filter((name) => wrong.assembly.bodyOf(name) !== undefined);
      const tells = names.some((turn) =>
        [[], ...names.map((name) => [name])].some((hold) =>
          (['clockwise', 'anticlockwise'] as const).some((way) => {
            const check = { hold, turn, way, on: [] };
            return hold[0] !== turn && turns(right, check) !== turns(wrong, check);
          }),
        ),
      );
      if (tells) return step;
    }
    return undefined;
  };

  it('agrees with the plan on what hands can feel, and when first', () => {
    const told = mistakes.map((its) => [nameOf(its.mistake), feltAt(its, built)]);
    const found = mistakes.map(({ mistake }) => [nameOf(mistake), firstFelt(mistake)]);
    expect(told).toEqual(found);
  });
});

it('would catch nothing more on kestrel if hands could hold a second member too', () => {
  const train = ours('kestrel-three-speed');
  const more: string[] = [];
  const built = plan(train) as Plan;
  for (const its of built.mistakes) {
    if (feltAt(its, built) !== undefined || its.mistake.what === 'slip') continue;
    const spoilt = mistaken(train, its.mistake);
    const gone = its.mistake.what === 'part' ? its.mistake.part : undefined;
    const missing = train.teardown?.find(({ name }) => name === gone)?.carries ?? [];
    for (let step = 1; step <= (train.teardown?.length ?? 0); step++) {
      const right = after(train, step);
      const [sound, wrong] = [motionOf(right), motionOf(after(spoilt, step))];
      for (const check of handChecks(right, 2)) {
        const both = [check.turn, ...check.hold];
        const absent = (name: MemberName) => wrong.assembly.bodyOf(name) === undefined;
        // A hand cannot grip what is not there, or out of reach.
        const reached = inReach(train, step).flatMap(({ carries }) => carries);
        const { bodyOf } = sound.assembly;
        const far = (name: MemberName) => !reached.some((near) => bodyOf(near) === bodyOf(name));
        if (both.some((name) => absent(name) || missing.includes(name) || far(name))) continue;
        if (turns(wrong, check) === turns(sound, check)) continue;
        more.push(`${nameOf(its.mistake)}, step ${step}: ${JSON.stringify(check)}`);
      }
    }
  }
  expect(more).toEqual([]);
});

describe.each(described)('the plan of %s', (name) => {
  const train = ours(name);
  const built = plan(train) as Plan;

  it('has every part once, the last to come off first', () => {
    expect(fitsOf(built).map(({ part }) => part)).toEqual(train.teardown?.toReversed());
  });

  it('catches every mistake with a hand check, or names what does', () => {
    const shown = fitsOf(built).flatMap(({ on, checks }) =>
      checks.flatMap(({ wrong }) =>
        wrong.flatMap(({ mistakes }) => mistakes.map((its) => [nameOf(its), on])),
      ),
    );
    const felt = built.mistakes.filter((its) => feltAt(its, built) !== undefined);
    const told = felt.map((its) => [nameOf(its.mistake), feltAt(its, built)]);
    expect(shown.toSorted()).toEqual(told.toSorted());
  });

  it('catches each mistake after it is made, and until then it can be caught', () => {
    for (const { mistake, made, caught, until, open } of built.mistakes) {
      const step = built.steps[caught.step - 1] as Step;
      const told = `${nameOf(mistake)}: ${JSON.stringify({ made, caught, until, open })}`;
      expect(made, told).toBeLessThanOrEqual(Math.min(caught.step, open));
      expect(until, told).toBe(Math.max(caught.step, open));
      // The step that is named is one that does it.
      const own = caught.by === 'look' || caught.by === 'count' || caught.by === 'measure';
      expect(step.does, told).toBe(own || caught.by === 'hand check' ? 'fit' : caught.by);
      if (own) expect(caught.step, told).toBe(made);
    }
  });

  it('feels every one-way clutch that is wrong, and every spline that is not home', () => {
    const unfelt = built.mistakes.filter((its) => feltAt(its, built) === undefined);
    expect(unfelt.filter(({ mistake }) => mistake.what === 'one-way')).toEqual([]);
    // A drum that stands proud is measured where hands do not reach.
    const joins = unfelt.filter(({ mistake }) => mistake.what === 'join');
    for (const { part } of joins) {
      expect(train.teardown?.find((its) => its.name === part)?.height, part).toBeDefined();
    }
  });

  it('is proven to have the fewest checks', () => {
    expect(built.proven).toBe(true);
  });

  it('has only checks that a right build answers otherwise than every wrong build told', () => {
    for (const { right, wrong } of fitsOf(built).flatMap(({ checks }) => checks)) {
      expect(wrong.map(({ felt }) => felt)).not.toContain(right);
      expect(wrong.length).toBeGreaterThan(0);
    }
  });
});

describe('laws', () => {
  const coverage = (built: Plan) => {
    return built.mistakes
      .map((its) => `${nameOf(its.mistake)} ${feltAt(its, built) === undefined ? '' : 'felt'}`)
      .toSorted();
  };

  it.each(described)(
    '%s: the order of unrelated parts does not change what hands can feel',
    (name) => {
      const found = ours(name);
      const laid = found.teardown ?? [];
      // What covers and hides a part stays as it is, whatever stands beside it.
      const teardown = laid.map((part): Part => {
        return { ...part, under: coversOf(laid, part), 'hidden by': hidersOf(laid, part) };
      });
      const train = { ...found, teardown };
      const right = coverage(plan(train) as Plan);
      teardown.slice(1).forEach((part, i) => {
        const before = teardown[i];
        // A part that carries nothing touches nobody.
        if (!before || part.under?.includes(before.name)) return;
        if (part.carries.length > 0 && before.carries.length > 0) return;
        const swapped = teardown.with(i, part).with(i + 1, before);
        expect(coverage(plan({ ...train, teardown: swapped }) as Plan), part.name).toEqual(right);
      });
    },
  );

  it.each(described)('%s: with every one-way clutch the other way, so is every check', (name) => {
    const train = ours(name);
    const devices = train.devices.map((device) => {
      if (device.kind !== 'one-way') return device;
      return {
        ...device,
        lets: device.lets === 'clockwise' ? 'anticlockwise' : 'clockwise',
      } as const;
    });
    const felts = (built: Plan) =>
      fitsOf(built).flatMap(({ checks }) => checks.map(({ right }) => right));
    const turned = (felt: Felt): Felt => {
      if (felt === 'clockwise only') return 'anticlockwise only';
      return felt === 'anticlockwise only' ? 'clockwise only' : felt;
    };
    const mirrored = plan({ ...train, devices }) as Plan;
    expect(felts(mirrored)).toEqual(felts(plan(train) as Plan).map(turned));
  });

  it('a teardown of more parts than a unit has is refused', () => {
    const kestrel = ours('kestrel-three-speed');
    const parts = Array.from({ length: 61 }, (_, i) => ({ name: `washer ${i}`, carries: [] }));
    expect(() => plan({ ...kestrel, teardown: parts })).toThrow(RangeError);
    expect(plan({ ...kestrel, teardown: parts.slice(1) })?.checks).toBe(0);
  });

  it('there is no plan without a teardown', () => {
    const { teardown: _, ...train } = ours('kestrel-three-speed');
    expect(plan(train)).toBeUndefined();
  });
});
