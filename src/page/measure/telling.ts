import type { MeasuredThing } from '../../asking/build/index.ts';
import type { Length, LengthUnit } from '../../shop/length/index.ts';
import { type Selection, speakAgainst } from '../../shop/limits/index.ts';
import {
  bandTexts,
  keyOf,
  nextText,
  packTexts,
  playTexts,
  preloadTexts,
  type Remark,
  remarkText,
  shimTexts,
  type Voice,
  wearTexts,
} from '../../telling/narrative/index.ts';

/** What is said of a measured thing, in the sentences in which the command says it. */
export interface Telling {
  /** What is looked at before the numbers are believed. */
  readonly against: readonly (readonly [Remark, string])[];
  readonly says: readonly string[];
  readonly besides: readonly string[];
  /** What is to be done with the best part of the shelf. */
  readonly next?: string | undefined;
  readonly selection?: Selection | undefined;
  /** The reading of which the parts' gaps are told as finely. */
  readonly tool?: Length | undefined;
}

export function tellingOf(thing: MeasuredThing, voice: Voice, first: LengthUnit): Telling {
  const { remarks } = thing.judgement;
  const said = remarks
    .filter(({ remark }) => remark !== 'nothing read' || thing.stands !== 'nothing')
    .map((remark) => [remark, remarkText(remark, voice, first, 'asked')] as const);
  return {
    against: said.filter(([remark]) => speakAgainst([remark])),
    besides: said.filter(([remark]) => !speakAgainst([remark])).map(([, text]) => text),
    ...saysOf(thing, voice, first),
  };
}

function saysOf(
  thing: MeasuredThing,
  voice: Voice,
  first: LengthUnit,
): Pick<Telling, 'says' | 'next' | 'selection' | 'tool'> {
  const { kind, judgement } = thing;
  switch (kind) {
    case 'pack': {
      const { selection, judged, pack } = judgement;
      const tool = judged?.clearance;
      const next =
        selection && tool && nextText(selection, pack.shelf?.part ?? '', tool, voice, first);
      return { says: packTexts(judgement, voice, first), next, selection, tool };
    }
    case 'endplay': {
      const { selection, measured, endPlay } = judgement;
      const tool = measured?.clearance;
      const part = endPlay.shelf?.part ?? '';
      const next = selection && tool && nextText(selection, part, tool, voice, first);
      return { says: playTexts(judgement, voice, first), next, selection, tool };
    }
    case 'preload': {
      const { selection, gap } = judgement;
      const says = [
        ...preloadTexts(judgement, voice, first),
        ...shimTexts(judgement, voice, first),
      ];
      return { says, selection, tool: gap?.clearance };
    }
    case 'band': {
      const { selection, travel, band } = judgement;
      const tool = travel?.clearance;
      const part = keyOf(band.shelf?.part ?? '');
      const next = selection && tool && nextText(selection, part, tool, voice, first);
      return { says: bandTexts(judgement, voice, first), next, selection, tool };
    }
    case 'wear':
      return { says: wearTexts(judgement, voice) };
  }
}

/** What hurts here, and how it is read; as the command says it. */
export function cautionsOf(thing: MeasuredThing, way: string, voice: Voice): string[] {
  const what = CAUTIONS[thing.kind].filter((its) => {
    return (
      its !== 'springs' ||
      thing.kind !== 'wear' ||
      thing.judgement.check.measure === 'spring length'
    );
  });
  const all = way === 'on air' ? [...what, 'air'] : what;
  return [...all, 'maker'].map((its) => voice.say('plan.caution.of', { what: its }));
}

const CAUTIONS: Readonly<Record<MeasuredThing['kind'], readonly string[]>> = {
  pack: ['springs'],
  endplay: ['weight'],
  preload: ['hands'],
  band: ['springs'],
  wear: ['springs'],
};

/** How this is read. */
export function howOf(
  { kind, judgement }: MeasuredThing,
  way: string,
  voice: Voice,
): string | undefined {
  switch (kind) {
    case 'pack':
      return way === 'feeler' || way === 'again' ? voice.say('plan.clearance') : undefined;
    case 'endplay':
      return voice.say(
        judgement.endPlay.measure === 'backlash' ? 'endplay.backlash' : 'endplay.how',
      );
    case 'preload':
      return voice.say('preload.how');
    case 'band':
      return voice.say('band.how');
    case 'wear':
      return voice.say('wear.how of', { kind: keyOf(judgement.check.measure) });
  }
}
