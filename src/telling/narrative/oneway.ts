import type { OneWayClutch, Way } from '../../engine/train/index.ts';
import { keyOf, type Voice, voiceOf } from '../voice/index.ts';
import { AT_THE_INPUT, opposite, type Stand, wayFor } from '../../asking/request/index.ts';

/**
 * What the hands find at a one-way clutch, with the four things without which it says nothing:
 * which race is held, which turns, seen from which end, which face is up.
 */
export function oneWayWords(
  device: OneWayClutch,
  stand: Stand = AT_THE_INPUT,
  voice: Voice = voiceOf('en'),
): string {
  const race = (member: string) => voice.name(member);
  const inner = stand.hold === 'inner';
  const free = freeWay(device, stand);
  return voice.say('one-way', {
    device: voice.name(device.name),
    hold: stand.hold,
    held: race(inner ? device.first : device.second),
    turned: race(inner ? device.second : device.first),
    state: device.stuck ?? 'sound',
    free: voice.say('way', { way: free }),
    locked: voice.say('way', { way: opposite(free) }),
    seen: seenFrom(stand, voice),
    fitted: keyOf(stand.fitted ?? 'as described'),
  });
}

/** How the race that is turned is let turn, as the reader sees it. */
export function freeWay({ lets }: OneWayClutch, stand: Stand): Way {
  const turned = stand.hold === 'inner' ? opposite(lets) : lets;
  return wayFor(stand.fitted === 'other way up' ? opposite(turned) : turned, stand);
}

/** "seen from the input end". */
export function seenFrom(stand: Stand, voice: Voice): string {
  return voice.say('seen from', endOf(stand, voice));
}

/** The end from which the reader looks, as messages want it: its own name, or which it is. */
export function endOf({ seenFrom: end, ends }: Stand, voice: Voice) {
  const name = ends?.[end === 'input' ? 0 : 1];
  return { end: name === undefined ? end : 'named', name: voice.called(name ?? '') };
}

/** What legends say of a number with a plus: which way it turns, and seen from where. */
export function plusFor(stand: Stand | undefined, voice: Voice) {
  return {
    plus: voice.say('way', { way: wayFor('clockwise', stand ?? AT_THE_INPUT) }),
    seen: seenFrom(stand ?? AT_THE_INPUT, voice),
  };
}

/** The ways up to be told of; one that holds neither way, or both, does so whichever face is up. */
export function fittings({ stuck }: OneWayClutch) {
  return stuck ? FITTINGS.slice(0, 1) : FITTINGS;
}

const FITTINGS = ['as described', 'other way up'] as const;
