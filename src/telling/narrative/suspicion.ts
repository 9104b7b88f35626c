import type { OutcomeWord } from '../../engine/experience/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import { roadReadingText } from '../../engine/road/index.ts';
import { type Cause } from '../../engine/cause/index.ts';
import {
  type Evidence,
  type Observation,
  type Proposal,
  type Suspect,
} from '../../engine/suspects/index.ts';
import { type TestOutcome, type Sight, type Test } from '../../engine/sight/index.ts';
import { faultName, gearCalled } from './signs.ts';
import { keyOf, type Voice } from '../voice/index.ts';

/** "low sprag: backwards", two faults with an "and" between, or what is wrong beside the train. */
export function causeText({ cause, faults, at }: Cause, voice: Voice): string {
  if (at !== undefined) return voice.say('cause.at', { cause: keyOf(cause), name: voice.name(at) });
  const [fed] = faults;
  if (cause === 'device fed by mistake' && fed && 'device' in fed) {
    return voice.say('cause.at', { cause: keyOf(cause), name: voice.name(fed.device) });
  }
  if (faults.length === 0) return voice.say('cause', { cause: keyOf(cause) });
  const [first = '', second] = faults.map((fault) => faultName(fault, voice));
  return second === undefined ? first : voice.say('pair', { a: first, b: second });
}

/** The same of one who is suspected, and how it can be where it carries nothing. */
export function suspectText({ cause, starves }: Suspect, voice: Voice): string {
  const suspect = causeText(cause, voice);
  return starves ? voice.say('suspects.starves', { suspect }) : suspect;
}

/** The first of some names or texts, and how many more there are. */
export function fewText(
  texts: readonly string[],
  most: number,
  voice: Voice,
  between = ', ',
): string {
  const more = texts.length - most;
  const told = texts.slice(0, most).join(between);
  return more > 0 ? told + voice.say('few.more', { count: more }) : told;
}

/** The proposed test: how long it takes, with what, at what risk. */
export function proposalText(proposal: Proposal, voice: Voice): string {
  const { test, minutes, opening, practised } = proposal;
  return voice.say('next.best', {
    test: testName(test, voice),
    minutes,
    opening,
    tool: voice.say('next.with', { tool: keyOf(practised.with) }),
    risk: voice.say('risk', { risk: practised.risk }),
  });
}

/** "D 1 under power, at full load", "air check of the low brake", "rear carrier turned clockwise". */
export function testName(test: Test, voice: Voice): string {
  return voice.say('test.under', {
    test: bareName(test, voice),
    load: ('load' in test && test.load) || 'any',
    heat: ('heat' in test && test.heat) || 'any',
    speed: keyOf(('speed' in test && test.speed) || 'any'),
  });
}

// Where the lever stands so, no power is asked of a gear: it is looked whether the car moves.
const STANDING = /^[NP]$/u;

function bareName(test: Test, voice: Voice): string {
  if (test.test === 'hand check') {
    const { hold, turn, way, on } = test.check;
    return voice.say('test.hand', {
      name: voice.name(turn),
      way: voice.say('way', { way }),
      count: hold.length,
      held: voice.names(hold),
      devices: on.length,
      on: voice.names(on),
    });
  }
  const name = subjectOf(test, voice);
  const isStill = test.test === 'under power' && STANDING.test(test.gear);
  if (isStill) return voice.say('test.standing', { name });
  const has = name === '' ? 'no' : 'yes';
  return voice.say('test', { test: keyOf(test.test), has, name });
}

export function outcomeText({ word, ratio }: TestOutcome, voice: Voice): string {
  return wordText(word, ratio && toNumber(ratio), voice);
}

/** What somebody saw. */
export function sightText(sight: Sight, voice: Voice): string {
  if (sight.saw !== 'ratio') return wordText(sight.saw, undefined, voice);
  const { ratio, range, read } = sight;
  if (!range || !read) return wordText('drives', ratio, voice);
  const rounded = (its: number) =>
    `${Number(its.toPrecision(3))}`.replace('.', voice.say('decimal'));
  return voice.say('seen.speed', {
    reading: roadReadingText(read).replace('.', voice.say('decimal')),
    from: rounded(range.from),
    to: rounded(range.to),
  });
}

/** "D 2 under power: slips". */
export function observationText({ test, sight }: Observation, voice: Voice): string {
  const values = { test: testName(test, voice), outcome: sightText(sight, voice) };
  return voice.say('seen.said', values);
}

/**
 * As it speaks for suspects; or with what they would have shown, against them. Where it is not
 * said of all that stand together, it names those of whom it is.
 */
export function evidenceText(evidence: Evidence, voice: Voice): string {
  const { observation, of, factor, would } = evidence;
  const told =
    factor >= 1 || !would
      ? observationText(observation, voice)
      : voice.say('seen.against', {
          test: testName(observation.test, voice),
          outcome: sightText(observation.sight, voice),
          would: outcomeText(would, voice),
        });
  if (!of) return told;
  const named = of.slice(0, MOST_NAMED).map((cause) => causeText(cause, voice));
  const suspects = named.join(', ');
  return voice.say('seen.of', { evidence: told, suspects, more: of.length - named.length });
}

const MOST_NAMED = 3;

function wordText(
  word: OutcomeWord | 'as it should' | 'not as it should',
  ratio: number | undefined,
  voice: Voice,
): string {
  const told = ratio === undefined ? '' : `${Number(ratio.toPrecision(4))}`;
  return voice.say('outcome', {
    word: keyOf(word),
    has: ratio === undefined ? 'no' : 'yes',
    ratio: voice.written(told),
  });
}

function subjectOf(test: Exclude<Test, { readonly test: 'hand check' }>, voice: Voice): string {
  switch (test.test) {
    case 'under power':
    case 'coast':
    case 'noise':
    case 'slip log':
      return gearCalled(test.gear, voice);
    case 'shift':
      return `${gearCalled(test.from, voice)}-${voice.called(test.gear.split(' ').at(-1) ?? '')}`;
    case 'stall':
    case 'engagement':
      return voice.called(test.range);
    case 'stray pressure':
      return `${voice.called(test.device)}, ${gearCalled(test.gear, voice)}`;
    case 'device pressure': {
      const device = voice.called(test.device);
      return test.gear === undefined ? device : `${device}, ${gearCalled(test.gear, voice)}`;
    }
    case 'air check':
    case 'band check':
    case 'seal rings':
    case 'seals':
    case 'one-way check':
    case 'inspection':
      return voice.called(test.device);
    case 'pressure':
      return gearCalled(test.gear ?? '', voice);
    case 'end play':
      return voice.called(test.set ?? '');
    default:
      return '';
  }
}
