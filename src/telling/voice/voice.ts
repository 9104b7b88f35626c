import { formatToParts } from 'intl-messageformat';
import { isSpan, type Quantity } from '../../engine/flow/index.ts';
import { type Rational, toNumber, toText } from '../../engine/linear/index.ts';
import { CASE, type NamesIn, type Train } from '../../engine/train/index.ts';
import { type Language, nameIn } from '../../engine/words/index.ts';
import { type Message, messageOf } from './message.ts';
import type { MessageId } from './messages.ts';

export type Arguments = Readonly<Record<string, string | number>>;

/** One language's way to say things, and to call the things of one train. */
export class Voice {
  readonly language: Language;
  private readonly own: NamesIn;
  private readonly spoken: Spoken;

  constructor(language: Language, names: NamesIn = {}) {
    this.language = language;
    this.own = names;
    this.spoken = spokenIn(language);
  }

  /** The message with its arguments filled in; throws where one of them is missing. */
  say(id: MessageId, values: Arguments = {}): string {
    let message = this.spoken.messages.get(id);
    if (message === undefined) {
      message = messageOf(this.language, id);
      this.spoken.messages.set(id, message);
    }
    if (typeof message === 'string') return message;
    const formatters = { getNumberFormat, getDateTimeFormat, getPluralRules: () => this.plurals() };
    const none = { number: {}, date: {}, time: {} };
    const parts = formatToParts(message, this.language, formatters, none, { ...values });
    return parts.map((part) => part.value).join('');
  }

  /**
   * What the reader calls a thing of the train: as its file says in this language, else as it stands
   * there. "front.ring" is said "front ring", and the case by our word.
   */
  called(name: string): string {
    return visible(name === CASE ? this.say('case') : nameIn(this.language, name, this.own));
  }

  /** The same as it stands in a sentence: in quotes where the language has them. */
  name(name: string): string {
    return this.say('name', { name: this.called(name) });
  }

  /** What the reader calls a train. */
  train({ name, languages }: Pick<Train, 'name' | 'languages'>): string {
    return visible(languages?.[this.language]?.name ?? name);
  }

  /** What a train is about, in the reader's language where its file says it there. */
  about({ about, languages }: Pick<Train, 'about' | 'languages'>): string {
    return languages?.[this.language]?.about ?? about;
  }

  /** "a, b and c". */
  list(items: readonly string[]): string {
    const last = items.at(-1) ?? '';
    if (items.length < 2) return last;
    const before = items.slice(0, -1).reduce((a, b) => this.say('list.more', { a, b }));
    return this.say('list.two', { a: before, b: last });
  }

  names(names: readonly string[]): string {
    return this.list(names.map((name) => this.name(name)));
  }

  /** "17/7 = 2.429", "2", or "≈ 3.276" where a reader has more than three digits to take in. */
  number(value: Rational): string {
    const [num = '', den = '1'] = toText(value).replace('-', '').split('/');
    const most = den === '1' ? LONGEST : DIGITS;
    if (Math.max(num.length, den.length) > most) return `≈ ${this.decimal(value)}`;
    return this.exactly(value);
  }

  /** "23808/7267 = 3.276", however long. */
  exactly(value: Rational): string {
    const exact = this.written(toText(value));
    return value.den === 1 ? exact : `${exact} = ${this.decimal(value)}`;
  }

  /** Three decimals, or four figures below 1: "2.455", "0.4074". */
  decimal(value: Rational): string {
    // Not Intl.NumberFormat: its first call costs a third of the time in which the command
    // is to answer, and what differs between languages here is the decimal sign.
    return this.written(decimalOf(toNumber(value)));
  }

  /** "97.5", of 0.97541: hundredths, with one decimal. */
  percent(value: Rational): string {
    return this.written(String(Math.round(toNumber(value) * 1000) / 10));
  }

  /** A figure with the decimal sign of the language and a true minus: "−0.5", "−0,5". */
  written(figure: string): string {
    return figure.replaceAll('-', MINUS).replace('.', this.say('decimal'));
  }

  quantity(quantity: Quantity): string {
    return isSpan(quantity) ? this.span(quantity) : this.number(quantity);
  }

  private span({
    from,
    to,
  }: {
    readonly from: Rational | null;
    readonly to: Rational | null;
  }): string {
    if (from && to) {
      return this.say('span.between', { from: this.decimal(from), to: this.decimal(to) });
    }
    if (from) return this.say('span.least', { from: this.decimal(from) });
    if (to) return this.say('span.most', { to: this.decimal(to) });
    return this.say('span.any');
  }

  private plurals(): Intl.PluralRules {
    this.spoken.rules ??= new Intl.PluralRules(this.language);
    return this.spoken.rules;
  }
}

/** The voice of a language, for a reader who is told of a train; without one, names stay as they are. */
export function voiceOf(language: Language, train?: Pick<Train, 'languages'>): Voice {
  const names = train?.languages?.[language] ?? NO_NAMES;
  const voices = (VOICES[language] ??= new WeakMap());
  let voice = voices.get(names);
  if (!voice) voices.set(names, (voice = new Voice(language, names)));
  return voice;
}

/** A word of the engine as the key of an ICU select, which takes letters only. */
export function keyOf(word: string): string {
  return word.replaceAll(/[^a-z]+/giu, '_');
}

/** A text from outside: what would move a cursor or turn letters round is made visible. */
export function visible(text: string): string {
  return text.replace(
    /[\p{Cc}\u061C\u200E\u200F\u2028\u2029\u202A-\u202E\u2066-\u2069]/gu,
    '\uFFFD',
  );
}

// Of a whole number, and of what stands above or below a fraction's bar.
const LONGEST = 15;
const DIGITS = 3;
const MINUS = '\u2212';
const NO_NAMES: NamesIn = {};
const VOICES: Partial<Record<Language, WeakMap<NamesIn, Voice>>> = {};
const SPOKEN: Partial<Record<Language, Spoken>> = {};

// What all voices of a language share: its messages as far as they were said, its plurals.
interface Spoken {
  readonly messages: Map<MessageId, string | Message>;
  rules?: Intl.PluralRules;
}

function spokenIn(language: Language): Spoken {
  return (SPOKEN[language] ??= { messages: new Map() });
}
const getNumberFormat = (...args: ConstructorParameters<typeof Intl.NumberFormat>) =>
  new Intl.NumberFormat(...args);
const getDateTimeFormat = (...args: ConstructorParameters<typeof Intl.DateTimeFormat>) =>
  new Intl.DateTimeFormat(...args);

function decimalOf(value: number): string {
  const size = Math.abs(value);
  if (size !== 0 && (size >= 1e9 || size < 1e-4)) return value.toExponential(3);
  const text = size < 0.1 ? value.toPrecision(4) : value.toFixed(3);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}
