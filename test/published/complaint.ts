import { readFileSync } from 'node:fs';
import type { Fault } from '../../src/engine/faults/index.ts';
import type { Cause } from '../../src/engine/cause/index.ts';
import type { Test } from '../../src/engine/sight/index.ts';
import type { Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';

// Complaints whose cause is known, written by somebody who had not seen Holdturn, with the marks
// of each fact (`computed` by independent sums, or common practice with no source) as they stand
// in the file; its `about` says how they are scored. Here their words are turned into ours.
const { trains, cases } = JSON.parse(
  readFileSync(new URL('complaints.json', import.meta.url), 'utf8'),
) as { readonly trains: Readonly<Record<string, object>>; readonly cases: readonly Complaint[] };

export const COMPLAINTS = cases;

/** The train of a complaint. */
export function trainOf(complaint: Complaint): Train {
  return readTrain(JSON.stringify(trains[complaint.train])).train as Train;
}

export interface Complaint {
  readonly id: string;
  readonly train: string;
  /** The driver's own words. */
  readonly says: string;
  readonly seen: readonly Seen[];
  readonly also?: Also;
  readonly cause: readonly Named[];
  readonly acceptable: readonly Suspected[];
  readonly mustNotLead: readonly {
    readonly suspect: Suspected;
    readonly why: string;
    readonly mark: string;
  }[];
  readonly sensibleNext: readonly Next[];
  readonly forbiddenNext: readonly (Next & { readonly mark: string })[];
}

interface Seen {
  readonly test: string;
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

export interface Named {
  readonly on: string;
  readonly kinds: readonly string[];
}

export type Suspected = Named | { readonly both: readonly Named[] };

export interface Next {
  readonly test: string;
  readonly at: string;
}

/** What was seen, as a file of what was seen says it. */
export function linesOf({ id, seen, also = {} }: Complaint): string[] {
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
export function namedOf(cause: Cause, train: Train): Named[] {
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
    case 'oil':
      return fault.name;
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

/** Whether a cause is the one that is suspected. */
export function isSame(suspected: Suspected, its: readonly Named[]): boolean {
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

/** Whether a test of ours is of the kind that a complaint names, of its device where it names one. */
export function isOf({ test, at }: Next, offered: Test): boolean {
  if (!SORTS[test]?.includes(offered.test)) return false;
  return !('device' in offered) || at.includes(offered.device);
}

/**
 * Whether a test is what a complaint forbids. "Tighter, by feel", "stop at the first fault" and
 * "replace" are no tests; they are never said.
 */
export function forbids({ test, at }: Next, its: Test): boolean {
  switch (test) {
    case 'stall test':
      return its.test === 'stall';
    case 'road test':
      return its.test === 'under power' || its.test === 'shift' || its.test === 'manual shift';
    case 'engine-braking check':
      return its.test === 'coast' && its.gear.startsWith(at.charAt(0));
    case 'band adjustment':
      return its.test === 'band check' && !at.includes('by feel');
    case 'teardown':
      return its.test === 'inspection' && !at.includes('first fault');
    case 'air test':
      return its.test === 'air check';
    case 'replace':
      return false;
    default:
      throw new Error(`no such test: ${test}`);
  }
}

/** What was driven alone; pressure, fluid and hands are found on the way. */
export function drivenIn({ seen }: Complaint): string[] {
  return seen.flatMap(({ test, range, gear, outcome, value, load }) => {
    const name = range === gear ? range : `${range} ${gear}`;
    const under = load ? ` ${load}` : '';
    if (test === 'road test') return [`- ${name}${under}: ${value ?? outcome}`];
    return test === 'engine-braking check' ? [`- ${name} coast: ${value ?? outcome}`] : [];
  });
}
