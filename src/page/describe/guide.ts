import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Train } from '../../engine/train/index.ts';
import { isName } from '../../engine/form/index.ts';
import {
  discard,
  readTrain,
  type Reading,
  rename,
  type Thing,
} from '../../engine/trainfile/index.ts';
import type { Edited, Refusal } from '../../engine/yaml/index.ts';
import {
  type Reply,
  type Asked,
  askNext,
  inquire,
  type Inquiry,
  lacksOf,
  type Topic,
} from './asking.ts';
import { changeOf } from './changing.ts';
import { halfwayOf } from './halfway.ts';
import { NOTHING } from './nothing.ts';
import { nextPrompt, promptsOf } from './prompts.ts';
import { written } from './writing.ts';

/** The file that is described, as the study holds it. */
interface Described {
  readonly text: ReadonlySignal<string>;
  write(text: string): void;
}

/** The guided way: what is asked just now, and what an answer does to the file that is open. */
export class Guide {
  readonly reading = computed<Reading>(() => readTrain(this.file.text.value));
  /** What is described so far; undefined where the text is broken and must be mended first. */
  readonly train = computed<Train | undefined>(() => {
    if (isEmpty(this.file.text.value)) return NOTHING;
    return this.reading.value.soFar;
  });
  /** The mistakes of the text that no answer mends. */
  readonly mistakes = computed(() => {
    if (isEmpty(this.file.text.value)) return [];
    const asks = (keys: readonly string[]) => keys.every((key) => ASKED.has(key));
    return this.reading.value.problems.filter((problem) => {
      if (problem.severity === 'warning') return false;
      return problem.problem !== 'missing key' || !asks(problem.keys);
    });
  });
  /** A round that a person has begun; none: what comes next by itself. */
  readonly begun = signal<Inquiry | undefined>(undefined);
  readonly settled = signal<ReadonlySet<string>>(new Set());
  /** Why the last answer could not be written. */
  readonly refused = signal<Refusal | undefined>(undefined);

  readonly asked = computed<Asked>(() => {
    if (this.begun.value) return { ask: 'about', inquiry: this.begun.value };
    return this.train.value ? askNext(this.train.value, this.settled.value) : { ask: 'nothing' };
  });
  readonly prompt = computed(() => {
    const [asked, train] = [this.asked.value, this.train.value];
    return asked.ask === 'about' && train ? nextPrompt(asked.inquiry, train) : undefined;
  });

  private readonly file: Described;
  private isHere = false;

  constructor(file: Described) {
    this.file = file;
  }

  /**
   * Begins with the file that is open: of one that lacks nothing, nothing is asked. At first it
   * goes on where this tab was with the same text, so that a reload loses no answer.
   */
  arrive(): void {
    const kept = this.isHere ? undefined : halfwayOf(this.file.text.value);
    this.isHere = true;
    const train = this.train.value;
    const isWhole = train !== undefined && lacksOf(train).length === 0;
    this.leave();
    this.settled.value = kept?.settled ?? new Set(isWhole ? ['set', 'device', 'gear'] : []);
    this.begun.value = train && kept?.begun;
  }

  /** Answers the question of the prompt; the last of a round is written into the file. */
  answer(said: Reply): void {
    const [asked, prompt, train] = [this.asked.value, this.prompt.value, this.train.value];
    if (asked.ask !== 'about' || !prompt || !train) return;
    this.refused.value = undefined;
    if (isTaken(train, asked.inquiry, prompt.key, said)) {
      this.refused.value = 'name taken';
      return;
    }
    if (prompt.kind === 'text' && (typeof said !== 'string' || !isNamed(asked.inquiry, said))) {
      this.refused.value = 'not a name';
      return;
    }
    const { inquiry } = asked;
    const answers = new Map(inquiry.answers).set(prompt.key, said);
    const further: Inquiry = { ...inquiry, answers };
    if (nextPrompt(further, train)) {
      this.begun.value = further;
      return;
    }
    if (!this.write(written(this.file.text.value, train, further))) return;
    this.begun.value = undefined;
    if (inquiry.topic === 'join' && inquiry.member !== undefined) this.settle(inquiry.member);
  }

  /** A prompt back; from the first prompt of a round, out of it. */
  back(): void {
    const asked = this.asked.value;
    this.refused.value = undefined;
    if (asked.ask !== 'about') return;
    const { inquiry } = asked;
    const before = [...inquiry.answers].slice(0, -1);
    this.begun.value =
      inquiry.answers.size === 0 ? undefined : { ...inquiry, answers: new Map(before) };
  }

  /** Puts a round away unanswered. */
  leave(): void {
    this.refused.value = undefined;
    this.begun.value = undefined;
  }

  /** Whether the prompt at hand is one that `back` leads away from. */
  get canGoBack(): boolean {
    return this.begun.value !== undefined;
  }

  /** There is no more of it, or it stays as it is: asks of it no further. */
  settle(what: string): void {
    this.settled.value = new Set([...this.settled.value, what]);
    this.begun.value = undefined;
    this.refused.value = undefined;
  }

  begin(inquiry: Inquiry): void {
    this.refused.value = undefined;
    this.begun.value = inquiry;
  }

  add(topic: Topic): void {
    this.begin(inquire(topic));
  }

  /** Begins the round that changes a thing; false where only the text can say it. */
  change(thing: Thing): boolean {
    const inquiry = this.train.value && changeOf(this.train.value, thing);
    if (inquiry) this.begin(inquiry);
    return inquiry !== undefined;
  }

  discard(thing: Thing): void {
    const train = this.train.value;
    this.begun.value = undefined;
    if (train) this.write(discard(this.file.text.value, train, thing));
  }

  /** False where the name will not do; `refused` tells why. */
  rename(thing: Thing, to: string): boolean {
    const { name: from } = thing;
    const text = this.file.text.value;
    if (from === to) return true;
    switch (thing.thing) {
      case 'gear':
        return this.write(rename(text, { what: 'gear', within: thing.within, from, to }));
      case 'join':
        return this.write(rename(text, { what: 'member', from, to }));
      default:
        return this.write(rename(text, { what: thing.thing, from, to }));
    }
  }

  private write(edited: Edited): boolean {
    this.refused.value = 'refused' in edited ? edited.refused : undefined;
    if ('text' in edited) this.file.write(edited.text);
    return 'text' in edited;
  }
}

// A new thing is called like nothing else: sets, gear pairs, devices and members share names.
function isTaken(train: Train, inquiry: Inquiry, key: string, said: Reply): boolean {
  if (key === 'gear') {
    const range = train.ranges.find(({ name }) => name === inquiry.answers.get('range'));
    return range?.gears.some(({ name }) => name === said) ?? false;
  }
  if (key !== 'name' || inquiry.topic === 'name') return false;
  const { sets, pairs, devices, joins, input, output } = train;
  const members = [
    input,
    output,
    'case',
    ...joins.flatMap(({ name, members: its }) => [name, ...its]),
    ...devices.flatMap(({ first, second }) => [first, second]),
    ...pairs.flatMap(({ driver, driven }) => [driver.member, driven.member]),
  ];
  return [...[...sets, ...pairs, ...devices].map(({ name }) => name), ...members].includes(
    said as string,
  );
}

// A train may be called anything; what is named within the file may not.
function isNamed({ topic }: Inquiry, said: string): boolean {
  return topic === 'name' ? said.trim() !== '' : isName(said);
}

function isEmpty(text: string): boolean {
  return text.split('\n').every((line) => /^\s*(?:#|$)/u.test(line));
}

/** Keys that answers put into the file. */
const ASKED: ReadonlySet<string> = new Set(['holdturn', 'input', 'output']);

/** How far a round is: the prompt at hand from 1, and how many are known of. */
export function progressOf(inquiry: Inquiry, train: Train): readonly [at: number, of: number] {
  return [inquiry.answers.size + 1, promptsOf(inquiry, train).length];
}
