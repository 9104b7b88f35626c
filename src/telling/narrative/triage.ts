import type { Growler, PartAtWork } from '../../engine/noise/index.ts';
import type { HeldBack } from '../../engine/suspects/index.ts';
import type { Bar, TestPlace, StoppedTest } from '../../engine/triage/index.ts';
import { observationText, testName } from './suspicion.ts';
import { keyOf, visible, type Voice } from '../voice/index.ts';

/** "Stop, no road test: a train that ties up can lock the wheels (D 2 under power: ties up)." */
export function stopText({ stops, bars }: StoppedTest, voice: Voice): string {
  const reasons = bars.map((bar) => barText(bar, voice)).join('; ');
  return voice.say('stop', { stops: keyOf(stops), count: bars.length, reasons });
}

/** "What can be done meanwhile, standing still: line pressure, codes." */
export function leftText(place: TestPlace, tests: readonly string[], voice: Voice): string {
  const kinds = tests.map((test) => voice.say('test.kind', { test: keyOf(test) })).join(', ');
  return voice.say('stop.left', { place: keyOf(place), tests: kinds });
}

/** Why a test may not be made now: "it burns whatever slips (line pressure: low)". */
export function barText(bar: Bar, voice: Voice): string {
  const why = voice.say('stop.why', { why: keyOf(bar.why) });
  if (!('because' in bar)) return why;
  const seen = bar.because.map((one) => observationText(one, voice)).join('; ');
  return voice.say('stop.seen', { why, seen });
}

/** What must be known before a test that would be worth more. */
export function heldText({ test, first, must, shown }: HeldBack, voice: Voice): string {
  return voice.say('next.held', {
    test: testName(test, voice),
    first: voice.say('test', { test: first, name: '' }),
    must: voice.say('outcome', { word: keyOf(must), has: 'no', ratio: '' }),
    shown: shown ? 'yes' : 'no',
  });
}

/** "planets of the rear set: at work in every noisy gear and in no quiet one; loaded in D 1, R". */
export function growlerText({ part, because, loadedIn }: Growler, voice: Voice): string {
  return voice.say('noise.part', {
    part: part.part,
    name: nameOf(part, voice),
    because,
    count: loadedIn.length,
    gears: loadedIn.map(visible).join(', '),
  });
}

function nameOf(part: PartAtWork, voice: Voice): string {
  switch (part.part) {
    case 'planets':
      return voice.name(part.set);
    case 'pair':
      return voice.name(part.pair);
    case 'bearing':
      return voice.name(part.member);
    case 'races':
      return voice.name(part.device);
  }
}
