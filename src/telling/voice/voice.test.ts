import { type MessageFormatElement, parse, TYPE } from '@formatjs/icu-messageformat-parser';
import { describe, expect, it } from 'vitest';
import { fraction } from '../../engine/linear/index.ts';
import { DEVICE_KINDS } from '../../engine/train/index.ts';
import { en } from './en.ts';
import { es } from './es.ts';
import type { MessageId, Messages } from './messages.ts';
import { LANGUAGES } from './index.ts';
import { keyOf, visible, voiceOf } from './voice.ts';

const OTHERS: readonly [string, Messages][] = [['es', es]];

/** The arguments of a message: "name", "name, plural", "kind, select brake/clutch/other". */
function argumentsOf(message: string): string[] {
  const found = new Set<string>();
  const walk = (elements: readonly MessageFormatElement[]) => {
    for (const element of elements) {
      if (element.type === TYPE.argument) found.add(element.value);
      if (element.type === TYPE.plural) found.add(`${element.value}, plural`);
      if (element.type === TYPE.select) found.add(`${element.value}, select`);
      if (element.type === TYPE.plural || element.type === TYPE.select) {
        for (const option of Object.values(element.options)) walk(option.value);
      }
    }
  };
  walk(parse(message, { ignoreTag: true }));
  return [...found].toSorted();
}

describe('every language', () => {
  it('is listed', () => {
    expect(LANGUAGES.toSorted()).toEqual(['en', ...OTHERS.map(([code]) => code)].toSorted());
  });

  describe.each(OTHERS)('%s', (_, messages) => {
    it('has the messages of English, in its order', () => {
      expect(Object.keys(messages)).toEqual(Object.keys(en));
    });

    // A language may need to know more (a device's kind, for its noun), but never less.
    it.each(Object.keys(en) as MessageId[])('says all that English says in "%s"', (id) => {
      const names = (message: string) => {
        return new Set(argumentsOf(message).map((argument) => argument.split(',')[0]));
      };
      expect(names(messages[id])).toEqual(names(en[id]));
    });

    it.each(Object.keys(en) as MessageId[])(
      'has no empty or untranslated sentence in "%s"',
      (id) => {
        expect(messages[id].trim()).not.toBe('');
        if (id.startsWith('fact.')) expect(messages[id]).not.toBe(en[id]);
      },
    );
  });
});

/** Each choice of a message by words of the engine: the argument, and the words in order. */
function choicesOf(message: string): [argument: string, words: string[]][] {
  const found: [string, string[]][] = [];
  const walk = (elements: readonly MessageFormatElement[]) => {
    for (const element of elements) {
      if (element.type === TYPE.select)
        found.push([element.value, Object.keys(element.options).toSorted()]);
      if (element.type === TYPE.plural || element.type === TYPE.select) {
        for (const option of Object.values(element.options)) walk(option.value);
      }
    }
  };
  walk(parse(message, { ignoreTag: true }));
  return found;
}

const EVERY: readonly [string, Messages][] = [['en', en], ...OTHERS];

// A language may put a choice in another place, and need it more often, but never leaves a word out.
it.each(Object.keys(en) as MessageId[])('"%s" chooses between the same words in all', (id) => {
  const sets = EVERY.map(
    ([, messages]) => new Set(choicesOf(messages[id]).map((its) => its.join())),
  );
  for (const set of sets) expect(set).toEqual(sets[0]);
});

// So a kind of device that is new is found here, and none is called by the noun of another.
describe.each(EVERY)('%s', (_, messages) => {
  const kinds = DEVICE_KINDS.map(keyOf);
  const told = Object.entries(messages).flatMap(([id, message]) => {
    return choicesOf(message).flatMap(([argument, words]) => {
      return argument === 'kind' && words.some((word) => kinds.includes(word))
        ? [{ id, words }]
        : [];
    });
  });

  it.each(told)('knows every kind of device in "$id"', ({ words }) => {
    expect(words).toEqual([...kinds, 'other'].toSorted());
  });

  it('tells of kinds at all', () => expect(told.length).toBeGreaterThan(3));
});

describe('a voice', () => {
  const [english, spanish] = [voiceOf('en'), voiceOf('es')];

  it('says a number as a fraction and a decimal with the sign of the language', () => {
    expect(english.number(fraction(27, 11))).toBe('27/11 = 2.455');
    expect(spanish.number(fraction(27, 11))).toBe('27/11 = 2,455');
    expect(english.number(fraction(-11, 5))).toBe('−11/5 = −2.2');
    expect(english.number(fraction(3))).toBe('3');
    expect(english.number(fraction(0))).toBe('0');
  });

  it('says only the decimal of a fraction that nobody would read', () => {
    expect(english.number(fraction(123456789012, 98765432101))).toBe('≈ 1.25');
  });

  it('says a decimal first of a fraction with more than three digits, and all of it in a proof', () => {
    expect(english.number(fraction(999, 998))).toBe('999/998 = 1.001');
    expect(english.number(fraction(23808, 7267))).toBe('≈ 3.276');
    expect(english.number(fraction(-1, 1000))).toBe('≈ −0.001');
    expect(english.number(fraction(12345))).toBe('12345');
    expect(spanish.exactly(fraction(-23808, 7267))).toBe('−23808/7267 = −3,276');
  });

  it('keeps four figures of a small number', () => {
    expect(english.decimal(fraction(1, 300))).toBe('0.003333');
    expect(english.decimal(fraction(-1, 300))).toBe('−0.003333');
    expect(english.decimal(fraction(1, 3_000_000))).toBe('3.333e−7');
  });

  it('says how far a number is free', () => {
    const [zero, one] = [fraction(0), fraction(1)];
    expect(english.quantity({ from: zero, to: one })).toBe('0 to 1');
    expect(english.quantity({ from: zero, to: null })).toBe('0 or more');
    expect(english.quantity({ from: null, to: one })).toBe('1 or less');
    expect(english.quantity({ from: null, to: null })).toBe('free');
    expect(spanish.quantity({ from: zero, to: null })).toBe('0 o más');
  });

  it('lists names, of which a set’s part is our word', () => {
    expect(english.names(['a'])).toBe('a');
    expect(english.names(['front.sun', 'b', 'case'])).toBe('front sun, b and case');
    expect(spanish.names(['front.sun', 'b', 'case'])).toBe('«planetario front», «b» y «carcasa»');
    expect(english.names([])).toBe('');
  });

  it('throws where an argument is missing', () => {
    expect(() => english.say('fact.shares')).toThrow(/devices/);
  });

  it('takes braces and quotes in a name for what they are', () => {
    expect(english.say('fact.shares', { devices: "{x} 'y' <b>" })).toContain("{x} 'y' <b>");
  });
});

it('makes what would move the cursor visible', () => {
  expect(visible('a\u001B[31mb\nc\u202Ed')).toBe('a\uFFFD[31mb\uFFFDc\uFFFDd');
  expect(visible('Überholkupplung 滚柱')).toBe('Überholkupplung 滚柱');
});

it('turns words of the engine into keys', () => {
  expect(keyOf('over-running')).toBe('over_running');
  expect(keyOf('sun + ring')).toBe('sun_ring');
});
