import type { Felt, Grip, Mistake } from '../../engine/plan/index.ts';
import { type End, facingOf, type Part, type Train } from '../../engine/train/index.ts';
import { AT_THE_INPUT, type Stand } from '../../asking/request/index.ts';
import { keyOf, visible, type Voice, voiceOf } from '../voice/index.ts';

/** "low sprag: backwards", of one train, in the words of a builder. */
export function mistakeText(mistake: Mistake, train: Train, voice: Voice = voiceOf('en')): string {
  const [name, what, place] = wording(mistake, train);
  const values = { name: voice.called(name), what, place: voice.called(place) };
  return voice.say('mistake', values);
}

/** What the reader calls what is felt. */
export function feltFor(felt: Felt, { seenFrom }: Stand): Felt {
  if (seenFrom === 'input') return felt;
  if (felt === 'clockwise only') return 'anticlockwise only';
  return felt === 'anticlockwise only' ? 'clockwise only' : felt;
}

/** "turns clockwise only", as the reader sees it. */
export function feltText(felt: Felt, voice: Voice = voiceOf('en'), stand = AT_THE_INPUT): string {
  return voice.say('felt', { felt: keyOf(feltFor(felt, stand)) });
}

/** What a hand takes hold of: a part, or one of the pieces of a part. */
export function gripText({ part, member, whole }: Grip, voice: Voice): string {
  return voice.name(whole ? part : member);
}

/** What the builder looks at as a part goes on with an end of the unit up, a line each. */
export function partTexts(part: Part, voice: Voice = voiceOf('en'), up?: End): string[] {
  const { inner, outer, align, frictions, steels, selective, refit, photo } = part;
  const said = (what: string, note: string | undefined) => {
    return note === undefined ? [] : [voice.say('part.note', { what, note: visible(note) })];
  };
  const counted = frictions !== undefined || steels !== undefined;
  const plates = { frictions: frictions ?? 0, steels: steels ?? 0 };
  return [
    ...facesTexts(part, up, voice),
    ...said('inner', inner),
    ...said('outer', outer),
    ...said('align', align),
    ...(counted ? [voice.say('part.plates', plates)] : []),
    ...(selective ? [voice.say('part.selective')] : []),
    ...(refit ? [voice.say('part.refit', { refit })] : []),
    ...said('photo', photo),
  ];
}

function facesTexts(part: Part, up: End | undefined, voice: Voice): string[] {
  const facing = facingOf(part, up);
  if (!facing) return [];
  const { end = 'none', way = 'none' } = facing;
  const named = part.face === undefined ? 'no' : 'yes';
  return [voice.say('part.faces', { end, way, named, note: visible(part.face ?? '') })];
}

// The name, the key of what is wrong with it, and where.
function wording(mistake: Mistake, train: Train): [name: string, what: string, place: string] {
  switch (mistake.what) {
    case 'slip':
      return [mistake.part, keyOf(mistake.is), ''];
    case 'device': {
      const kind = train.devices.find(({ name }) => name === mistake.device)?.kind;
      if (kind === 'pawl' && mistake.is !== 'left out') {
        return [mistake.device, mistake.is === 'will not apply' ? 'no_hold' : 'stays_in', ''];
      }
      if (mistake.is === 'will not apply') return [mistake.device, 'weak', ''];
      if (mistake.is === 'left out') return [mistake.device, 'left_out', ''];
      return [mistake.device, kind === 'band' ? 'tight' : 'jammed', ''];
    }
    case 'one-way': {
      // A cage that slips feels as one that is not there.
      const is = mistake.is === 'left out' ? 'out_or_slips' : keyOf(mistake.is);
      return [mistake.device, is, ''];
    }
    case 'join':
      return [mistake.join, mistake.of === undefined ? 'stripped' : 'unseated', mistake.of ?? ''];
    case 'part':
      return [mistake.part, keyOf(mistake.is), ''];
    case 'member':
    case 'wheel':
    case 'planet':
      return [mistake.member, keyOf(mistake.is), ''];
    case 'pair':
      return [mistake.pair, keyOf(mistake.is), ''];
    case 'set':
      return [mistake.set, keyOf(mistake.is), ''];
    case 'oil':
      return [mistake.name, keyOf(mistake.is), ''];
  }
}
