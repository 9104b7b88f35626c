import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Fault } from '../../src/engine/faults/index.ts';
import { type Practice, readPractice } from '../../src/engine/practice/index.ts';
import {
  type Cause,
  inquire,
  readSeen,
  type Test,
  testText,
} from '../../src/engine/suspects/index.ts';
import { diagnose, type Diagnosis } from '../../src/engine/triage/index.ts';
import type { Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';

// Complaints whose cause is known, written by somebody who had not seen Holdturn, with the marks
// of each fact ("computed" by independent sums, or common practice with no source) as they stand
// in the file; its `about` says how they are scored, and this is that scoring.
const here = (name: string) => readFileSync(new URL(name, import.meta.url), 'utf8');
const { trains, cases } = JSON.parse(here('complaints.json')) as {
  trains: Record<string, unknown>;
  cases: Complaint[];
};
const practice = readPractice(here('../../experience.yaml')).practice as Practice;

interface Complaint {
  readonly id: string;
  readonly train: string;
  readonly seen: readonly Seen[];
  readonly also?: Also;
  readonly cause: readonly Named[];
  readonly acceptable: readonly Suspected[];
  readonly mustNotLead: readonly { readonly suspect: Suspected; readonly why: string }[];
  readonly sensibleNext: readonly Next[];
  readonly forbiddenNext: readonly Next[];
}

interface Seen {
  readonly range: string;
  readonly gear: string;
  readonly side: 'drive' | 'coast' | 'shift' | 'engage';
  readonly outcome: string;
  readonly value?: number;
  readonly load?: string;
  readonly heat?: string;
}

interface Also {
  readonly pressure?: readonly {
    readonly at: string;
    readonly range: string;
    readonly gear?: string;
    readonly when: string;
    readonly reads: 'normal' | 'low' | 'high';
  }[];
  readonly fluid?: string;
  readonly hand?: readonly { readonly check: string }[];
}

interface Named {
  readonly on: string;
  readonly kinds: readonly string[];
}

type Suspected = Named | { readonly both: readonly Named[] };

interface Next {
  readonly test: string;
  readonly at: string;
}

describe('complaints with known causes', () => {
  it.each(cases.map((complaint) => [complaint.id, complaint] as const))('%s', (_, complaint) => {
    const { train } = readTrain(JSON.stringify(trains[complaint.train]));
    const inquiry = inquire(train as Train, practice);
    const { observations, problems } = readSeen(linesOf(complaint).join('\n'), inquiry);
    expect(problems).toEqual([]);
    const diagnosis = diagnose(inquiry, observations);
    const groups = diagnosis.ranking.brackets.map(({ suspects }) => {
      return suspects.map(({ cause }) => namedOf(cause, train as Train));
    });
    const [leading = []] = groups;
    const accepted = (its: Named[]) => complaint.acceptable.some((one) => isSame(one, its));

    // 1: the leading group holds the cause, and nothing that is not acceptable.
    expect(leading.filter((its) => !accepted(its))).toEqual([]);
    const wanted = complaint.cause.length === 1 ? complaint.cause[0] : { both: complaint.cause };
    expect(leading.some((its) => isSame(wanted as Suspected, its))).toBe(true);

    // 2: nothing that must not lead is there, or above what is acceptable.
    const all = groups.flat();
    const lastAccepted = complaint.acceptable.map((one) => {
      return all.findIndex((its) => isSame(one, its));
    });
    for (const { suspect, why } of complaint.mustNotLead) {
      const place = all.findIndex((its) => isSame(suspect, its));
      const above = lastAccepted.filter((its) => its >= 0 && place >= 0 && place < its);
      expect(above, `${JSON.stringify(suspect)}: ${why}`).toEqual([]);
    }

    // 3 and 4: of the tests offered first one is sensible, and none is forbidden.
    const offered = offeredBy(diagnosis);
    expect(offered.some((test) => complaint.sensibleNext.some((its) => isOf(its, test)))).toBe(
      true,
    );
    const made = new Set(observations.map(({ test }) => testText(test)));
    for (const test of offered) {
      const again = made.has(testText(test)) && test.test !== 'selector';
      expect(again, testText(test)).toBe(false);
      const forbidden = complaint.forbiddenNext.filter((its) => isForbidden(its, test));
      expect(forbidden, testText(test)).toEqual([]);
    }
  });
});

function offeredBy({ advice: { best, others } }: Diagnosis): Test[] {
  return [best, ...others].flatMap((proposal) => (proposal ? [proposal.test] : []));
}

/** What was seen, as a file of what was seen says it. */
function linesOf({ id, seen, also = {} }: Complaint): string[] {
  const road = seen.map(({ range, gear, side, outcome, value, load, heat }) => {
    const name = range === gear ? range : `${range} ${gear}`;
    const conditions = [load, heat].flatMap((word) => (word === undefined ? [] : [` ${word}`]));
    const saw = outcome === 'another ratio' ? value : outcome;
    const test = {
      drive: name,
      coast: `${name} coast`,
      engage: `N to ${range}`,
      shift: `shift ${range} ${Number(gear) - 1}-${gear}`,
    }[side];
    return `- ${test}${conditions.join('')}: ${saw}`;
  });
  const pressures = (also.pressure ?? []).flatMap(({ at, range, gear = '', when, reads }) => {
    const word = reads === 'normal' ? 'good' : reads;
    if (at !== 'line') return [`- pressure at ${at}: ${word}`];
    const heat = / (hot|cold)|^(hot|cold)/.exec(when)?.[0].trim() ?? '';
    const speeds = when
      .split(/,| and /)
      .flatMap((part) => /fast idle|idle|full throttle/.exec(part)?.[0] ?? []);
    return range.split(', ').flatMap((lever) =>
      gear.split(' and ').flatMap((number) =>
        (speeds.length > 0 ? speeds : ['']).map((speed) => {
          const test = ['pressure', lever, number, speed, heat].filter((its) => its !== '');
          return `- ${test.join(' ')}: ${word}`;
        }),
      ),
    );
  });
  const hands = (also.hand ?? []).map(({ check }) => {
    return check.includes('end play') ? '- end play: too big' : '- selector: out of place';
  });
  const { fluid } = also;
  const oil = fluid === undefined ? [] : [`- fluid: ${oilOf(fluid)}`];
  return [...road, ...pressures, ...hands, ...oil, ...(SAID[id] ?? [])];
}

function oilOf(text: string): string {
  if (/metal|magnet/.test(text)) return 'metal';
  return /brown|burnt/.test(text) ? 'burnt' : 'clean';
}

// What stands only in the driver's words.
const SAID: Readonly<Record<string, readonly string[]>> = {
  'c26-rebuilt-growls-end-play': [
    ...['D 1', 'D 2', 'R'].map((gear) => `- noise ${gear}: growls`),
    ...['D 3', 'D 4'].map((gear) => `- noise ${gear}: quiet`),
  ],
};

/** A cause in the words of the complaints: one, or two at once. */
function namedOf(cause: Cause, train: Train): Named[] {
  if (cause.both) return cause.both.flatMap((one) => namedOf(one, train));
  const [fault] = cause.faults;
  if (cause.at !== undefined) return [{ on: cause.at, kinds: ['washer left out'] }];
  if (cause.cause === 'device fed by mistake' && fault && 'device' in fault)
    return [{ on: fault.device, kinds: ['upstream'] }];
  if (fault) return [{ on: placeOf(fault, train), kinds: kindsOf(cause) }];
  return [BESIDE[cause.cause] as Named];
}

const BESIDE: Readonly<Partial<Record<Cause['cause'], Named>>> = {
  'low line pressure': { on: 'pump', kinds: ['low pressure'] },
  'high line pressure': { on: 'pump', kinds: ['high pressure'] },
  'stator slips': { on: 'converter', kinds: ['stator slips'] },
  'engine weak': { on: 'engine', kinds: ['weak'] },
  'selector linkage': { on: 'selector linkage', kinds: ['upstream'] },
  control: { on: 'control', kinds: ['upstream'] },
  'nothing wrong': { on: 'none', kinds: ['nothing wrong in the train'] },
};

// A wheel without teeth is as good as parted where it is joined, a planet where its carrier is.
function placeOf(fault: Fault, train: Train): string {
  switch (fault.what) {
    case 'device':
    case 'one-way':
      return fault.device;
    case 'join':
      return `${fault.join}>${fault.of}`;
    case 'member':
      return fault.member;
    case 'wheel':
    case 'planet': {
      const member = fault.member.replace(/\.(planet|inner|outer)$/, '.carrier');
      const join = train.joins.find(({ members }) => members.includes(member));
      return join ? `${join.name}>${member}` : member;
    }
    case 'pair':
      return fault.pair;
    case 'set':
      return fault.set;
    case 'part':
      return fault.part;
  }
}

function kindsOf({ cause }: Cause): string[] {
  switch (cause) {
    case 'device will not apply':
      return ['dead', 'spline stripped'];
    case 'device slips':
      return ['slips'];
    case 'device leaks':
      return ['circuit leak'];
    case 'device will not release':
      return ['stuck on'];
    case 'one-way clutch left out':
      return ['left out'];
    default:
      return cause.startsWith('one-way clutch')
        ? [cause.replace(' clutch', '')]
        : ['spline stripped'];
  }
}

function isSame(suspected: Suspected, its: readonly Named[]): boolean {
  const parts = 'both' in suspected ? suspected.both : [suspected];
  if (parts.length !== its.length) return false;
  return parts.every((part) =>
    its.some(({ on, kinds }) => on === part.on && kinds.some((kind) => part.kinds.includes(kind))),
  );
}

// The tests of the complaints, each with ours that are of its kind.
const SORTS: Readonly<Record<string, readonly Test['test'][]>> = {
  'engine-braking check': ['coast'],
  'pressure at the device': ['device pressure', 'stray pressure'],
  'band adjustment and servo travel': ['band check'],
  'band adjustment': ['band check'],
  'air test': ['air check'],
  'hand check': ['hand check'],
  'selector adjustment': ['selector'],
  'codes and commanded gear': ['codes'],
  'pan and magnet': ['pan'],
  'fluid level and look': ['fluid'],
  'line pressure': ['pressure'],
  'filter and pickup': ['filter'],
  'end play': ['end play'],
  'stall test': ['stall'],
  'logger: slip by gear and load': ['slip log'],
  'seal rings and bores': ['seal rings'],
  'valve body inspect': ['valve body'],
  'build record': ['build record'],
  'manual shift': ['manual shift'],
  'engine check': ['engine'],
  'converter check': ['converter'],
  'teardown and inspect': ['inspection'],
  teardown: ['inspection'],
};

function isOf({ test, at }: Next, offered: Test): boolean {
  if (!SORTS[test]?.includes(offered.test)) return false;
  return !('device' in offered) || at.includes(offered.device);
}

// Where a test is forbidden in any case, or of the device or range that is offered.
function isForbidden({ test, at }: Next, offered: Test): boolean {
  if (!SORTS[test]?.includes(offered.test)) return false;
  if (offered.test === 'inspection') return at === 'unit';
  if (offered.test === 'stall') return at === 'any' || at.split(' or ').includes(offered.range);
  if ('device' in offered) return at === 'any' || at === offered.device;
  return false;
}
