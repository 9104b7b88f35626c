import { computed, type ReadonlySignal, signal } from '@preact/signals';
import {
  answer,
  type Asked,
  askNext,
  changeOf,
  inquire,
  type Inquiry,
  lacksOf,
  nextPrompt,
  NOTHING,
  promptsOf,
  type Reply,
  type Topic,
  type Wrong,
} from '../../asking/describe/index.ts';
import type { Train } from '../../engine/train/index.ts';
import {
  discard,
  readTrain,
  type Reading,
  rename,
  type Thing,
} from '../../engine/trainfile/index.ts';
import type { Edited } from '../../engine/yaml/index.ts';
import { halfwayOf } from './halfway.ts';

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
  /** What is wrong with the last answer. */
  readonly wrong = signal<Wrong | undefined>(undefined);
  /** The round that was written last, and the text before and after: it can be taken back. */
  readonly last = signal<Written | undefined>(undefined);

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
  private doubted = '';

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
    const { inquiry } = asked;
    const text = this.file.text.value;
    const isSure = this.wrong.value?.wrong === 'doubt' && `${said}` === this.doubted;
    const answered = answer(text, train, inquiry, said, isSure);
    this.wrong.value = 'wrong' in answered ? answered.wrong : undefined;
    this.doubted = `${said}`;
    if ('wrong' in answered) return;
    if ('further' in answered) {
      this.begun.value = answered.further;
      return;
    }
    this.file.write(answered.text);
    this.last.value = { inquiry, before: text, after: answered.text };
    this.begun.value = undefined;
    if (inquiry.topic === 'join' && inquiry.member !== undefined) this.settle(inquiry.member);
  }

  /** A prompt back; from the first prompt of a round out of it, or into the one before it. */
  back(): void {
    const asked = this.asked.value;
    this.wrong.value = undefined;
    if (!this.begun.value) {
      this.takeBack();
      return;
    }
    if (asked.ask !== 'about') return;
    const { inquiry } = asked;
    const before = [...inquiry.answers].slice(0, -1);
    this.begun.value =
      inquiry.answers.size === 0 ? undefined : { ...inquiry, answers: new Map(before) };
  }

  /** Puts a round away unanswered. */
  leave(): void {
    this.wrong.value = undefined;
    this.begun.value = undefined;
  }

  /** Whether `back` leads away from the prompt at hand. */
  get canGoBack(): boolean {
    return this.begun.value !== undefined || this.canTakeBack;
  }

  // Only while nobody else has written since.
  private get canTakeBack(): boolean {
    return this.last.value?.after === this.file.text.value;
  }

  // The last answer is asked anew, and what its round wrote is taken out of the file.
  private takeBack(): void {
    const last = this.last.value;
    if (!last || !this.canTakeBack) return;
    this.file.write(last.before);
    this.last.value = undefined;
    const { topic, member } = last.inquiry;
    if (topic === 'join' && member !== undefined) {
      this.settled.value = new Set([...this.settled.value].filter((one) => one !== member));
    }
    this.begun.value = last.inquiry;
  }

  /** There is no more of it, or it stays as it is: asks of it no further. */
  settle(what: string): void {
    this.settled.value = new Set([...this.settled.value, what]);
    this.begun.value = undefined;
    this.wrong.value = undefined;
  }

  begin(inquiry: Inquiry): void {
    this.wrong.value = undefined;
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

  /** False where the name will not do; `wrong` tells why. */
  rename(thing: Thing, to: string): boolean {
    const { name: from } = thing;
    const text = this.file.text.value;
    if (from === to) return true;
    switch (thing.thing) {
      case 'entry':
        return true;
      case 'gear':
        return this.write(rename(text, { what: 'gear', within: thing.within, from, to }));
      case 'join':
        return this.write(rename(text, { what: 'member', from, to }));
      default:
        return this.write(rename(text, { what: thing.thing, from, to }));
    }
  }

  private write(edited: Edited): boolean {
    this.wrong.value = 'refused' in edited ? { wrong: edited.refused } : undefined;
    if ('text' in edited) this.file.write(edited.text);
    return 'text' in edited;
  }
}

interface Written {
  readonly inquiry: Inquiry;
  readonly before: string;
  readonly after: string;
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
