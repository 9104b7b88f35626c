import type { Growler, Part } from '../../engine/noise/index.ts';
import type { Bar, Place, Stop } from '../../engine/triage/index.ts';
import { observationText } from './suspicion.ts';
import { keyOf, visible, type Voice } from './voice.ts';

/** "Stop, no road test: a train that ties up can lock the wheels (D 2 under power: ties up)." */
export function stopText({ stops, bars }: Stop, voice: Voice): string {
  const reasons = bars.map((bar) => whyText(bar, voice)).join('; ');
  return voice.say('stop', { stops: keyOf(stops), count: bars.length, reasons });
}

/** "What can be done meanwhile, standing still: line pressure, codes." */
export function leftText(place: Place, tests: readonly string[], voice: Voice): string {
  const kinds = tests.map((test) => voice.say('test.kind', { test: keyOf(test) })).join(', ');
  return voice.say('stop.left', { place: keyOf(place), tests: kinds });
}

function whyText(bar: Bar, voice: Voice): string {
  const why = voice.say('stop.why', { why: keyOf(bar.why) });
  if (!('because' in bar)) return why;
  const seen = bar.because.map((one) => observationText(one, voice)).join('; ');
  return voice.say('stop.seen', { why, seen });
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

function nameOf(part: Part, voice: Voice): string {
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
