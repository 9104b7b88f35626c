import { motionOf } from '../motion/index.ts';
import type { MemberName, Way } from '../train/index.ts';
import {
  Findings,
  Lines,
  nearest,
  type Node,
  parseTree,
  type Problem,
  type Passage,
} from '../yaml/index.ts';
import { type RoadReading, roadReadingFrom, roadReadingText } from '../road/index.ts';
import { inFileNames, newWord } from '../words/index.ts';
import {
  splitConditions,
  under,
  type Sight,
  hasRatio,
  SAID,
  sayingOf,
  sightMeant,
  split,
  wordsOf,
  type Test,
  testText,
} from '../sight/index.ts';
import type { Inquiry } from '../cause/index.ts';
import { moreTests, namesOf, plain } from './naming.ts';
import type { Observation } from './observation.ts';
import { speedSight } from './speed.ts';

/** What a file of what was seen says; what it has mistakes in is left out. */
export interface SeenReading {
  readonly observations: readonly Observation[];
  /** What the driver says, in their own words. */
  readonly says: readonly string[];
  /** Of which tests the driver says nothing after all, however the words were read. */
  readonly unsaid: readonly Test[];
  readonly problems: readonly Problem[];
}

/**
 * Reads what was seen: entries TEST: OUTCOME in any order, or a list of them (which may name a
 * test twice); `driver says: TEXT` is a complaint, and
 * `TEST: not said` takes out what was read of a test in one. A gear may have an engine speed at a road speed
 * in place of an outcome. An empty file has seen nothing. Never throws.
 */
export function readSeen(text: string, inquiry: Inquiry): SeenReading {
  const findings = new Findings(new Lines(text));
  const root = parseTree(text, findings);
  const observations: Observation[] = [];
  const heard = { says: [], unsaid: [] };
  if (root) new Reader(text, inquiry, findings, heard).read(root, observations);
  return { observations, ...heard, problems: findings.list() };
}

/** The observations as a file that reads back to them, in their order. */
export function seenText(observations: readonly Observation[]): string {
  return observations
    .map((observation) => {
      const key = testText(observation.test);
      const bare = /^\p{L}[\p{L}\p{N} .-]*$/u.test(key);
      return `- ${bare ? key : JSON.stringify(key)}: ${saidText(observation)}\n`;
    })
    .join('');
}

/** What is said of its test: "slips, not sure". */
export function saidText({ sight, sure }: Pick<Observation, 'sight' | 'sure'>): string {
  return `${sawText(sight)}${sure === 'sure' ? '' : ', not sure'}`;
}

function sawText(sight: Sight): string {
  if (sight.saw !== 'ratio') return sight.saw;
  return sight.read ? roadReadingText(sight.read) : `${Number(sight.ratio.toPrecision(5))}`;
}

class Reader {
  private readonly text: string;
  private readonly inquiry: Inquiry;
  private readonly findings: Findings;
  private readonly heard: Heard;
  private readonly speeds: Speed[] = [];
  private readonly tests = new Map<string, Test>();
  private readonly members: ReadonlyMap<string, MemberName>;
  private readonly bodyOf: (member: MemberName) => number | undefined;

  constructor(text: string, inquiry: Inquiry, findings: Findings, heard: Heard) {
    this.heard = heard;
    this.text = text;
    this.inquiry = inquiry;
    this.findings = findings;
    const { assembly } = motionOf(inquiry.train);
    this.bodyOf = assembly.bodyOf;
    this.members = new Map(assembly.members.map((name) => [plain(name), name]));
    for (const test of [...inquiry.tests, ...moreTests(inquiry)]) {
      for (const name of namesOf(test)) {
        if (!this.tests.has(plain(name))) this.tests.set(plain(name), test);
      }
    }
  }

  read(node: Node, observations: Observation[]): void {
    this.list(node, observations);
    // A gear that drives well may stand behind the one that is read against it.
    for (const speed of this.speeds) this.speed(speed, observations);
  }

  private speed({ test, sure, reading, at }: Speed, observations: Observation[]): void {
    const known = this.speeds.map((its): Observation => {
      return {
        test: its.test,
        sight: { saw: 'ratio', ratio: 1, read: its.reading },
        sure: its.sure,
      };
    });
    const sight = speedSight(reading, this.inquiry, [...observations, ...known]);
    if (sight) observations.push({ test, sight, sure });
    else this.findings.error(at, { problem: 'no scale of speeds' });
  }

  private list(node: Node, observations: Observation[]): void {
    if (node.kind === 'list') {
      for (const item of node.items) {
        if (item.kind === 'section') this.list(item, observations);
        else this.expected(item, 'tests seen');
      }
    } else if (node.kind === 'section') {
      for (const { key, keyAt, value } of node.entries) {
        if (SAYS.has(plain(key))) {
          this.complaint(value, keyAt);
          continue;
        }
        const test = this.testNamed(key) ?? this.testCalled(key) ?? this.testRenamed(key, keyAt);
        if (test) this.outcome(test, key, value, keyAt, observations);
        else {
          this.findings.error(keyAt, () => {
            const near = key.length > LONGEST ? undefined : nearest(key, this.names());
            const shown = key.length > LONGEST ? `${key.slice(0, LONGEST)}…` : key;
            return { problem: 'unknown test', test: shown, ...(near !== undefined && { near }) };
          });
        }
      }
    } else if (node.value !== null) this.expected(node, 'tests seen');
  }

  private complaint(value: Node, keyAt: Passage): void {
    if (value.kind === 'scalar' && typeof value.value === 'string') {
      this.heard.says.push(value.value);
    } else this.expected(value, 'text', keyAt);
  }

  private outcome(
    test: Test,
    key: string,
    value: Node,
    keyAt: Passage,
    observations: Observation[],
  ): void {
    const words =
      value.kind === 'list'
        ? value.items.map((item) => (item.kind === 'scalar' ? item.value : null))
        : value.kind === 'scalar' && value.value !== null
          ? split(`${value.value}`)
          : [];
    const reading = hasRatio(test) ? roadReadingFrom(words.filter(isBare).join(', ')) : undefined;
    if (reading) {
      const sure = words.some((word) => word === 'not sure') ? 'not sure' : 'sure';
      this.speeds.push({ test, sure, reading, at: value.at });
      return;
    }
    const { said, sure, named, known } = sayingOf(words);
    if (said === null || said === undefined || !known) {
      this.expected(value, 'outcome', keyAt);
      return;
    }
    const so = under(test, named);
    if (so && plain(`${said}`) === UNSAID) {
      this.heard.unsaid.push(so);
      return;
    }
    const sight = so && sightMeant(`${said}`, so);
    if (sight) {
      observations.push({ test: so, sight, sure });
      return;
    }
    const outcome = `${said}`.slice(0, LONGEST);
    const can: string[] = [...wordsOf(test), ...(hasRatio(test) ? ['2.429'] : [])];
    const others = [...SAID].flatMap(([other, its]) => {
      return its.some((word) => can.includes(word)) ? [other] : [];
    });
    const near = nearest(outcome, [...can, ...others]);
    const problem = { problem: 'unknown outcome', outcome, test: key, can } as const;
    this.findings.error(value.at, { ...problem, ...(near !== undefined && { near }) });
  }

  private testNamed(key: string): Test | undefined {
    const name = plain(key);
    const whole = this.tests.get(name) ?? this.handCheck(name);
    if (whole) return whole;
    const { rest, said } = splitConditions(name);
    const test = said.length > 0 ? this.tests.get(rest) : undefined;
    return test && under(test, said);
  }

  // By names in another language than the file's.
  private testCalled(key: string): Test | undefined {
    const own = inFileNames(key, this.inquiry.train);
    return own === key ? undefined : this.testNamed(own);
  }

  // "D 1 over-run", which is called "D 1 coast" now.
  private testRenamed(key: string, at: Passage): Test | undefined {
    const { rest, said } = splitConditions(key);
    const [, gear, old = ''] = /^(.+) (\S+)$/u.exec(rest) ?? [];
    const now = newWord(old.toLowerCase());
    const test = now === undefined ? undefined : this.testNamed([gear, now, ...said].join(' '));
    if (test && now !== undefined) this.findings.renamed(at, old, now);
    return test;
  }

  // Checks with several members held, or with a device on, are not among those that are offered.
  private handCheck(name: string): Test | undefined {
    const [first = '', ...rest] = name.split(/ *, */);
    const [, member = '', way] = /^turn (.+) (clockwise|anticlockwise)$/.exec(first) ?? [];
    const turn = this.members.get(member);
    if (turn === undefined || way === undefined) return undefined;
    const hold: MemberName[] = [];
    const on: string[] = [];
    for (const part of rest) {
      const held = this.members.get(/^hold (.+)$/.exec(part)?.[1] ?? '');
      const device = /^(.+) on$/.exec(part)?.[1];
      const friction = this.inquiry.train.devices.find(
        (other) => other.kind !== 'one-way' && plain(other.name) === device,
      );
      if (held !== undefined && this.bodyOf(held) !== this.bodyOf(turn)) hold.push(held);
      else if (friction) on.push(friction.name);
      else return undefined;
    }
    if (this.bodyOf(turn) === 0) return undefined;
    return { test: 'hand check', check: { hold, turn, way: way as Way, on } };
  }

  private names(): string[] {
    return this.inquiry.tests.map(testText);
  }

  // `owner` is pointed at where nothing stands.
  private expected(node: Node, what: 'tests seen' | 'outcome' | 'text', owner = node.at): void {
    const found = this.text.slice(node.at.from, node.at.to).replace(/\s+/gu, ' ');
    const cut = found.length > 40 ? `${found.slice(0, 39).replace(/\p{Cs}$/u, '')}…` : found;
    const at = node.at.from < node.at.to ? node.at : owner;
    this.findings.error(at, { problem: 'expected', what, found: cut });
  }
}

interface Heard {
  readonly says: string[];
  readonly unsaid: Test[];
}

interface Speed extends Pick<Observation, 'test' | 'sure'> {
  readonly reading: RoadReading;
  readonly at: Passage;
}

const UNSAID = 'not said';
const SAYS: ReadonlySet<string> = new Set(['driver says', 'complaint', 'driver']);

function isBare(word: unknown): boolean {
  return word !== 'sure' && word !== 'not sure';
}

const LONGEST = 60;
