import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Dice, seedOfRun } from '../../../test/dice.ts';
import { trainOf } from '../../../test/line.ts';
import { ours } from '../../../test/trains.ts';
import { faultText } from '../faults/index.ts';
import { type Experience, readExperience } from '../experience/index.ts';
import { accountsOf, type Observation } from './observation.ts';
import { type Cause, inquire, type Inquiry } from '../cause/index.ts';
import { doubtsOf } from './doubt.ts';
import { expectedBits, nextTest } from './next.ts';
import { pairsOf } from './pair.ts';
import { posterior } from './posterior.ts';
import { rank } from './ranking.ts';
import { readSeen, seenText } from './seenfile.ts';
import { type Test, testText } from '../sight/index.ts';
import { Tally } from '../../../test/tally.ts';

const here = (file: string) =>
  fs.readFileSync(new URL(`../../../${file}`, import.meta.url), 'utf8');
const experience = readExperience(here('experience.yaml')).experience as Experience;
const kestrel = inquire(ours('kestrel-three-speed'), experience);

// One set, one clutch: the smallest train with something to suspect.
const CLUTCHED = inquire(
  trainOf('in crank; out flange; grip joins crank + flange; D 1 applies grip; N N applies nothing'),
  experience,
);

function name({ cause, faults }: Cause): string {
  return faults.length === 0 ? cause : faults.map(faultText).join(' + ');
}

function seen(text: string, inquiry: Inquiry): Observation[] {
  const { observations, problems } = readSeen(text, inquiry);
  expect(problems).toEqual([]);
  return [...observations];
}

function ranked(text: string, inquiry = kestrel) {
  return rank(inquiry, accountsOf(inquiry, seen(text, inquiry)));
}

function first(text: string, inquiry = kestrel): string[] {
  return ranked(text, inquiry).brackets[0]?.suspects.map(({ cause }) => name(cause)) ?? [];
}

describe('a posterior worked by hand', () => {
  // One clutch that joins the crank to the flange, dead: the gear is lost, and called "no drive"
  // 92 times in a hundred, "slips" 8 times. A wrong answer is one of the five others (no drive,
  // slips, drives, ties up, another ratio, of which the train in order drives).
  const WRONG = 0.01 / 4;
  const weight = (text: string) => {
    const causes = CLUTCHED.causes.map((cause, c) => [name(cause), c] as const);
    const c = causes.find(([its]) => its === text)?.[1] as number;
    return { c, prior: CLUTCHED.causes[c]?.prior as number };
  };
  const ratio = (text: string, a: string, b: string) => {
    const { causes } = posterior(CLUTCHED, accountsOf(CLUTCHED, seen(text, CLUTCHED)));
    return (causes[weight(a).c] as number) / (causes[weight(b).c] as number);
  };
  const dead = weight('grip: will not apply');
  const sound = weight('nothing wrong');

  it('of one answer', () => {
    const byDead = 0.92 * 0.99 + 0.08 * WRONG;
    const expected = (dead.prior * byDead) / (sound.prior * WRONG);
    expect(ratio('D 1: no drive', 'grip: will not apply', 'nothing wrong')).toBeCloseTo(
      expected,
      9,
    );
  });

  // Asked twice, an outcome is still one: it was called no drive or slips, and so said twice.
  it('of one test answered twice', () => {
    const byDead = 0.92 * 0.99 ** 2 + 0.08 * WRONG ** 2;
    const expected = (dead.prior * byDead) / (sound.prior * WRONG ** 2);
    const twice = '- D 1: no drive\n- D 1: no drive\n';
    expect(ratio(twice, 'grip: will not apply', 'nothing wrong')).toBeCloseTo(expected, 6);
  });

  it('of nothing is the prior', () => {
    const { causes } = posterior(CLUTCHED, []);
    CLUTCHED.causes.forEach(({ prior }, c) => expect(causes[c]).toBeCloseTo(prior, 12));
    expect(causes.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  });

  it('moves less where nobody was sure', () => {
    const [sure, unsure] = ['D 1: no drive', 'D 1: no drive, not sure'].map((text) => {
      const { causes } = posterior(CLUTCHED, accountsOf(CLUTCHED, seen(text, CLUTCHED)));
      return causes[dead.c] as number;
    });
    expect(unsure).toBeLessThan(sure as number);
    expect(unsure).toBeGreaterThan(dead.prior);
  });

  // How weak a clutch is in one gear it is in all: what it held heavily it holds lightly.
  it('of how weak it is, the same all along', () => {
    const text = 'D 1 heavy: drives\nD 1 light: slips';
    const { manners, causes } = posterior(CLUTCHED, accountsOf(CLUTCHED, seen(text, CLUTCHED)));
    const both = causes[weight('grip: slips').c] as number;
    const other = posterior(CLUTCHED, accountsOf(CLUTCHED, seen('D 1 heavy: slips', CLUTCHED)));
    expect(other.causes[weight('grip: slips').c]).toBeGreaterThan(2 * both);
    expect(manners.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
  });
});

// Rules of the trade: common practice, no source. Each comes out of the described train.
describe('what a symptom means (common practice, no source)', () => {
  it.each([
    ['D 1: no drive\nL 1: drives\nL 2: drives\nR: drives\nD 2: drives', 'low sprag: slips'],
    [
      'D 1: no drive\nD 2: no drive\nL 1: no drive\nR: drives\npressure: good',
      'forward clutch: will not apply',
    ],
    ['R: no drive\nD 3: 1.429\nD 1: drives\nD 2: drives', 'direct clutch: will not apply'],
    ['R: no drive\nL 1 coast: runs free\nD 1: drives\nD 3: drives', 'low brake: will not apply'],
    ['D 2: drives\nL 2 coast: runs free\nL 2: drives', 'intermediate band: will not apply'],
    ['N: drives\nR: ties up\nD 1: drives', 'forward clutch: will not release'],
    ['D 1: 1.429\nD 2: drives\nL 1: ties up', 'second brake: will not release'],
    ['D 1: no drive\nL 1: drives\nD 2: ties up\nD 1 coast: brakes', 'low sprag: backwards'],
    [
      'stall D: low\npressure: good\nD 1: drives\nD 2: drives\nR: drives\nD 3: drives',
      'stator slips',
    ],
    ['pressure: low\nD 1: slips\nR: slips\nD 2: slips', 'low line pressure'],
  ])('%j: %s', (text, expected) => {
    expect(first(text)).toContain(expected);
  });

  it('needs an air check where no road parts a brake from the roller in series with it', () => {
    const road = 'D 1: drives\nD 2: 2.429\nD 3: drives\nD 3 coast: runs free\nL 2: drives';
    expect(first(road)).toEqual(
      expect.arrayContaining(['second brake: will not apply', 'second roller: slips']),
    );
    const hiss = ranked(`${road}\nair second brake: hiss`).brackets[0]?.suspects[0]?.cause;
    expect(name(hiss as Cause)).toBe('second brake: will not apply');
    const advice = adviceFor(`${road}\nD 1 coast: runs free\nR: drives\nL 1: drives`);
    expect(advice.best?.practised.at).not.toBe('on the bench');
  });
});

function adviceFor(text: string, inquiry = kestrel) {
  const accounts = accountsOf(inquiry, seen(text, inquiry));
  return nextTest(inquiry, accounts, posterior(inquiry, accounts));
}

describe('brackets', () => {
  // The rows of the worked matrix: what no gear parts stands together, and leads.
  it.each([
    [
      'D 1: drives\nD 1 coast: brakes\nD 2: ties up\nD 3: ties up\nL 2: ties up\nR: drives',
      ['low brake: will not release', 'low sprag: seized'],
    ],
    [
      'D 1: no drive\nD 2: drives\nD 3: drives\nL 1: drives\nL 1 coast: brakes\nR: drives',
      ['low sprag: left out', 'low sprag: slips'],
    ],
  ])('%j leaves %j', (text, expected) => {
    const devices = first(text).filter((its) => {
      return kestrel.train.devices.some(({ name: device }) => its.startsWith(`${device}:`));
    });
    expect([...new Set(devices)].toSorted()).toEqual(expected);
  });

  it('leave a brake and the roller in series with it together, dead or weak', () => {
    const text = 'D 1: drives\nD 2: 2.429\nD 3: drives\nL 1: drives\nL 2: drives\nR: drives';
    const names = first(text);
    for (const its of ['second brake: will not apply', 'second roller: slips'])
      expect(names).toContain(its);
    for (const its of names) expect(its).toMatch(/^second|^roller cage/);
  });

  it('hold every cause once, and their chances add up to 1', () => {
    const { brackets } = ranked('D 1: slips\nfluid: burnt');
    const suspects = brackets.flatMap((bracket) => bracket.suspects);
    expect(suspects.length).toBe(kestrel.causes.length);
    expect(suspects.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 12);
  });

  it('are not parted by a smell', () => {
    expect(ranked('fluid: burnt').brackets.length).toBe(1);
    expect(ranked('fluid: burnt').enough).toBe(false);
  });
});

it('the order of what was seen does not matter', () => {
  const seed = seedOfRun();
  const dice = new Dice(seed);
  const observations = seen(
    `
- D 1: slips
- D 1: drives, not sure
- D 2: drives
- R: 2.2
- L 1 coast: brakes
- fluid: metal
- pressure: good
- stall D: high, not sure
- D 1: slips
`,
    kestrel,
  );
  const before = JSON.stringify(rankOf(observations));
  for (let k = 0; k < 20; k++) {
    const shuffled = dice.several(observations, observations.length);
    expect(JSON.stringify(rankOf(shuffled)), `SEED=${seed}`).toBe(before);
  }

  function rankOf(all: readonly Observation[]) {
    const { chances, belief, brackets } = rank(kestrel, accountsOf(kestrel, all));
    const accounts = accountsOf(kestrel, all);
    const { best } = nextTest(kestrel, accounts, belief);
    const names = brackets.map(({ suspects }) => suspects.map(({ cause }) => name(cause)));
    return { chances, names, next: best && testText(best.test) };
  }
});

describe('the next test', () => {
  it('is never a stall test before the pressure is surely known to be good', () => {
    const seed = seedOfRun();
    const dice = new Dice(seed);
    const stall = ({ test }: Test) => test === 'stall';
    const pressures = [
      '',
      'pressure: low',
      'pressure: good, not sure',
      '- pressure: good\n- pressure: low',
    ];
    const tally = new Tally({ offered: 60, 'held back': 350 });
    for (let k = 0; k < 60; k++) {
      const gears = dice.several(['D 1: slips', 'D 2: drives', 'R: slips', 'L 1: drives'], 2);
      for (const pressure of [...pressures, 'pressure: good']) {
        const lines = [...gears, ...pressure.split('\n')].filter((line) => line !== '');
        const text = lines.map((line) => `- ${line.replace(/^- /, '')}`).join('\n');
        const accounts = accountsOf(kestrel, seen(text, kestrel));
        const chances = posterior(kestrel, accounts);
        const { best, heldBack } = nextTest(kestrel, accounts, chances, stall);
        if (pressure === 'pressure: good') tally.met('offered', best ? 1 : 0);
        else {
          expect(best, `${text} SEED=${seed}`).toBeUndefined();
          tally.met('held back', heldBack.length);
          for (const held of heldBack)
            expect(held).toMatchObject({ first: 'pressure', must: 'good' });
          const shown = heldBack.some((held) => held.shown);
          expect(shown && !pressure.includes('low')).toBe(false);
        }
      }
    }
    tally.enough();
  });

  it('tells as much as the entropy that it takes away, on the average of its answers', () => {
    // Fluid parts causes with their reasons: answer by answer, its chance and what it leaves.
    const test = kestrel.tests.find((its) => its.test === 'fluid') as Test;
    const { outcomes, rows } = kestrel.predict(test);
    const prior = posterior(kestrel, []);
    const entropy = (all: readonly number[]) =>
      all.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);
    const wrong = 0.01;
    const left = outcomes.map(({ word }, o) => {
      const said = kestrel.reasons.reduce((sum, _, k) => {
        const is = rows[k]?.[o] as number;
        const right = is * (1 - wrong) + ((1 - is) * wrong) / (outcomes.length - 1);
        return sum + (prior.reasons[k] as number) * right;
      }, 0);
      const observation = { test, sight: { saw: word }, sure: 'sure' } as const;
      return said * entropy(posterior(kestrel, accountsOf(kestrel, [observation])).reasons);
    });
    const taken = entropy(prior.reasons) - left.reduce((a, b) => a + b, 0);
    expect(expectedBits(kestrel, test, undefined, prior)).toBeCloseTo(taken, 9);
  });

  it('is none where the train has nothing left to part', () => {
    const zero = (all: readonly { readonly cause: number }[]) => {
      const own = all.findIndex(({ cause }) => cause === 0);
      return all.map((_, k) => (k === own ? 1 : 0));
    };
    const { causes, manners, reasons } = CLUTCHED;
    const certain = {
      causes: causes.map((_, c) => (c === 0 ? 1 : 0)),
      manners: zero(manners),
      reasons: zero(reasons),
      within: { manners: zero(manners), reasons: zero(reasons) },
      fits: causes.map(() => 0),
    };
    expect(nextTest(CLUTCHED, [], certain).best).toBeUndefined();
  });

  it('is never a road test that has been made, and another sort of test stands next to it', () => {
    const made = 'D 1: no drive\nR: drives\nL 1 heavy: no drive\nD 2: no drive';
    const { best, others } = adviceFor(made);
    const offered = [best, ...others].flatMap((its) => (its ? [its.test] : []));
    expect(offered.length).toBe(3);
    expect(new Set(offered.map(({ test }) => test)).size).toBe(3);
    for (const test of offered) expect(['D 1', 'R', 'L 1', 'D 2']).not.toContain(testText(test));
    const only = adviceFor(made).best?.test;
    const accounts = accountsOf(kestrel, seen(made, kestrel));
    const without = nextTest(kestrel, accounts, posterior(kestrel, accounts), (t) => t !== only);
    expect(without.best?.test).not.toBe(only);
  });

  it('counts the minutes to open the unit, and to shut it again', () => {
    const road = ({ test }: Test) => test === 'under power';
    const accounts = accountsOf(kestrel, seen('air low brake: thud', kestrel));
    const chances = posterior(kestrel, accounts);
    expect(nextTest(kestrel, accounts, chances, road).best?.opening).toBe(60);
    expect(nextTest(kestrel, [], posterior(kestrel, []), road).best?.opening).toBe(0);
  });
});

describe('what does not agree', () => {
  const CASES = [
    'D 1: no drive\nD 2: drives\nD 3: ties up\nR: no drive',
    '- D 1: slips\n- D 1: ties up\n- D 1: drives, not sure',
    'D 2: ties up\nD 3: ties up\nL 2: drives\nN: drives',
    '- pressure: good\n- pressure: low, not sure\n- R: drives',
    'D 1: 7.7\nD 2: drives',
  ];

  it.each(CASES)('%j: the smallest set to doubt, by brute force', (text) => {
    const observations = seen(text, kestrel);
    const accounts = accountsOf(kestrel, observations);
    const doubts = doubtsOf(kestrel, accounts, posterior(kestrel, accounts).causes);
    // Every subset, the smallest first: may one cause explain the rest?
    const sizes = Array.from({ length: 2 ** observations.length }, (_, mask) => {
      const kept = observations.filter((_observation, k) => !((mask >> k) & 1));
      const explained = kestrel.causes.some((_cause, c) => explains(c, kept));
      return explained ? observations.length - kept.length : Infinity;
    });
    const smallest = Math.min(...sizes);
    expect(smallest).toBeGreaterThan(0);
    for (const doubt of doubts) expect(doubt.observations.length).toBe(smallest);
    expect(doubts.length).toBeGreaterThan(0);
  });

  // In some one manner, and for some one reason, an outcome of each test agrees with all that was
  // said of it.
  function explains(c: number, kept: readonly Observation[]): boolean {
    const accounts = accountsOf(kestrel, kept);
    return (['manners', 'reasons'] as const).every((by) => {
      const its = accounts.filter(({ prediction }) => prediction.by === by);
      return kestrel[by].some(({ cause }, k) => {
        if (cause !== c) return false;
        return its.every(({ prediction: { rows }, said }) => {
          const row = rows[k] as readonly number[];
          return row.some((chance, o) => {
            return chance >= 0.035 && said.every(({ means }) => means.includes(o));
          });
        });
      });
    });
  }

  it('is nothing where one thing explains it all', () => {
    const accounts = accountsOf(kestrel, seen('D 1: slips\nL 1: drives\nR: drives', kestrel));
    expect(doubtsOf(kestrel, accounts, posterior(kestrel, accounts).causes)).toEqual([]);
  });

  it('doubts of two answers that fight the one that nobody was sure of', () => {
    const observations = seen('- D 1: slips\n- D 1: ties up, not sure', CLUTCHED);
    const accounts = accountsOf(CLUTCHED, observations);
    const [doubt] = doubtsOf(CLUTCHED, accounts, posterior(CLUTCHED, accounts).causes);
    expect(doubt?.observations).toEqual([observations[1]]);
  });

  it('may be two faults at once', () => {
    const accounts = accountsOf(
      kestrel,
      seen('N: drives\nL 2 coast: runs free\nR: ties up\nL 2: drives', kestrel),
    );
    expect(pairsOf(kestrel, accounts).map(name)).toContain(
      'forward clutch: will not release + intermediate band: will not apply',
    );
  });
});

describe('a file of what was seen', () => {
  it('is written so that it reads back', () => {
    const text = `
- D 1: slips, not sure
- D 2: 2.429
- L 1 coast: brakes
- air second brake: hiss
- "turn rear.carrier clockwise, hold front.ring, forward clutch on": turns
- L 1: not as it should
- pressure: good
`;
    const observations = seen(text, kestrel);
    expect(observations.length).toBe(7);
    expect(seen(seenText(observations), kestrel)).toEqual(observations);
  });

  it('takes other words, in any case', () => {
    const other =
      'd 1: Neutral\nR R: tied up\nstall in D: HIGH\nline pressure: OK\nturn Rear Carrier clockwise: locked\nd 2 coast: coasts';
    const own =
      'D 1: no drive\nR: ties up\nstall D: high\npressure: good\nturn rear.carrier clockwise: locks\nD 2 coast: runs free';
    expect(seen(other, kestrel)).toEqual(seen(own, kestrel));
  });

  it('may be empty, and may name no observation', () => {
    for (const text of ['', '\n', '# nothing yet\n', '[]', '{}']) {
      expect(readSeen(text, kestrel)).toEqual({
        observations: [],
        says: [],
        unsaid: [],
        problems: [],
      });
    }
  });

  it('of three thousand observations is answered; of ten thousand its size is told', () => {
    const line = '- D 1: slips\n';
    expect(first(line.repeat(3000))).toContain('low sprag: slips');
    expect(readSeen(line.repeat(10_000), kestrel).problems[0]).toMatchObject({
      problem: 'too large',
    });
  });
});
