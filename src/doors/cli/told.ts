import {
  answer,
  type Asked,
  askNext,
  inquire,
  type Inquiry,
  nextPrompt,
  NOTHING,
  type Prompt,
  type Reply as Said,
  sectionsToTell,
  type Topic,
  type Wrong,
} from '../../asking/describe/index.ts';
import { askCheck } from '../../asking/gears/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { problemText } from '../../telling/narrative/index.ts';

/** What was told by questions so far, and where they stand: typed answers, a file's text. */
export class Told {
  text: string;
  /** Whether the text was changed since it was last put on the disk. */
  isWritten = false;
  private readonly settled = new Set<string>();
  private begun: Inquiry | undefined;
  private doubted: string | undefined;
  private last: { readonly inquiry: Inquiry; readonly before: string } | undefined;
  private seen = new Set<string>();

  constructor(text: string) {
    this.text = text;
    this.fresh();
  }

  get train() {
    return readTrain(this.text).soFar ?? NOTHING;
  }

  get asked(): Asked {
    return this.begun ? { ask: 'about', inquiry: this.begun } : askNext(this.train, this.settled);
  }

  get prompt(): Prompt | undefined {
    const { asked } = this;
    return asked.ask === 'about' ? nextPrompt(asked.inquiry, this.train) : undefined;
  }

  /** What else can be told. */
  get further(): readonly Pick<Inquiry, 'topic' | 'section'>[] {
    const topics: readonly Topic[] = ['set', 'gear pair', 'device', 'gear', 'outputs'];
    const sections = sectionsToTell(this.train);
    return [
      ...topics.map((topic) => ({ topic })),
      ...sections.map((section) => ({ topic: 'entry' as const, section })),
    ];
  }

  /** Takes an answer; what is wrong with it, `unknown` for what is none, `end` where all is told. */
  hear(
    word: string,
    choices: readonly string[],
    wrongly: (its: Wrong) => string,
  ): string | undefined {
    const { asked, prompt } = this;
    const at = numbered(word, choices);
    if (asked.ask === 'nothing') {
      const its = this.further[at];
      if (word === '') return 'end';
      if (!its) return 'unknown';
      this.begun = inquire(its.topic, its.section === undefined ? {} : { section: its.section });
      return undefined;
    }
    if (asked.ask === 'more') {
      if (at !== 0 && at !== 1) return 'unknown';
      if (at === 0) this.begun = inquire(asked.of);
      else this.settled.add(asked.of);
      return undefined;
    }
    const said = prompt && saidIn(word, prompt, choices);
    if (said === undefined) return 'unknown';
    const { inquiry } = asked;
    const answered = answer(this.text, this.train, inquiry, said, this.doubted === `${said}`);
    this.doubted = undefined;
    if ('wrong' in answered) {
      if (answered.wrong.wrong === 'doubt') this.doubted = `${said}`;
      return wrongly(answered.wrong);
    }
    if ('further' in answered) {
      this.begun = answered.further;
      return undefined;
    }
    this.last = { inquiry, before: this.text };
    this.begun = undefined;
    if (inquiry.topic === 'join' && inquiry.member !== undefined) this.settled.add(inquiry.member);
    this.isWritten = answered.text !== this.text;
    this.text = answered.text;
    return undefined;
  }

  /** An answer back, also into the round that was written last. */
  back(): void {
    if (this.begun) {
      const answers = [...this.begun.answers].slice(0, -1);
      const isLeft = this.begun.answers.size === 0;
      this.begun = isLeft ? undefined : { ...this.begun, answers: new Map(answers) };
      return;
    }
    if (!this.last) return;
    const { inquiry, before } = this.last;
    this.isWritten = before !== this.text;
    this.text = before;
    this.begun = inquiry;
    this.last = undefined;
    if (inquiry.member !== undefined) this.settled.delete(inquiry.member);
  }

  /** What looks odd since it was last asked. */
  fresh() {
    const odd = askCheck(this.text).problems.filter(({ severity }) => severity === 'warning');
    const all = odd.map((one) => [problemText(one), one] as const);
    const fresh = all.filter(([text]) => !this.seen.has(text)).map(([, one]) => one);
    this.seen = new Set(all.map(([text]) => text));
    // While it is described, what is not splined yet is asked for by itself.
    return fresh.filter(({ problem }) => !ASKED_FOR.has(problem));
  }
}

const ASKED_FOR: ReadonlySet<string> = new Set([
  'set stands alone',
  'member carries nothing',
  'device never applied',
]);

// What was typed, as an answer; undefined for what is none.
function saidIn(word: string, prompt: Prompt, choices: readonly string[]): Said | undefined {
  const picked = (one: string) => {
    const at = numbered(one, choices);
    return prompt.options[at] ?? (prompt.open && one !== '' ? one : undefined);
  };
  const parts = word.split(',').map((one) => one.trim());
  switch (prompt.kind) {
    case 'pick':
    case 'way':
      return picked(word);
    case 'several': {
      if (word === '') return [];
      const all = parts.map(picked);
      return all.every((one) => one !== undefined) ? all : undefined;
    }
    case 'number':
    case 'decimal': {
      if (word === '') return null;
      const number = Number(word.replace(',', '.'));
      return /^[\d.,]+$/u.test(word) && Number.isFinite(number) ? number : undefined;
    }
    case 'quantities':
      return word === '' ? null : parts;
    case 'quantity':
    case 'text':
    case 'note':
      return word === '' ? null : word;
  }
}

// Which of the choices it is, by its number or its own words.
function numbered(word: string, choices: readonly string[]): number {
  if (/^\d+$/u.test(word)) return Number(word) - 1;
  return choices.findIndex((one) => one.toLocaleLowerCase() === word.toLocaleLowerCase());
}
