import type { Measuring, Plan, Step } from '../../engine/plan/index.ts';
import type { BandSetting } from '../../engine/train/index.ts';
import { bandTravelBounds, judgeBand } from '../../shop/bands/index.ts';
import { type Bounds, boundsOf } from '../../shop/limits/index.ts';
import { judgePack } from '../../shop/packs/index.ts';
import { judgePreload } from '../../shop/preload/index.ts';
import { backOffText } from './bands.ts';
import { boundsText } from './packs.ts';
import { torqueBoundsText } from './preload.ts';
import { type MessageId, keyOf, type Voice } from '../voice/index.ts';

/** A step of a build at which a gap or a torque is read, and written down. */
export type MeasuringStep = Extract<Step, { readonly does: Exclude<Measuring, Tried> }>;
type Tried = 'air check' | 'pawl check';

/** How it is read (said at the first of its kind), its limits, and what sets it right. */
export function measuringTexts(step: MeasuringStep, plan: Plan, voice: Voice): string[] {
  const how = howOf(step);
  const isFirst = plan.steps.find((other) => sameWay(other, how))?.number === step.number;
  return [...(isFirst ? [voice.say(how)] : []), ...limitTexts(step, voice)];
}

function sameWay(step: Step, how: MessageId): boolean {
  switch (step.does) {
    case 'height':
    case 'clearance':
    case 'band':
    case 'end play':
    case 'preload':
      return howOf(step) === how;
    default:
      return false;
  }
}

function howOf(step: MeasuringStep): MessageId {
  switch (step.does) {
    case 'height':
      return 'plan.height';
    case 'clearance':
      return 'plan.clearance';
    case 'band':
      return 'band.how';
    case 'end play':
      return step.endPlay.measure === 'backlash' ? 'endplay.backlash' : 'endplay.how';
    case 'preload':
      return 'preload.how';
  }
}

function limitTexts(step: MeasuringStep, voice: Voice): string[] {
  switch (step.does) {
    case 'height':
      return limited(boundsOf(step.part.height ?? {}), voice);
    case 'clearance': {
      const { bounds } = judgePack(step.pack, { device: step.pack.device });
      return [...limited(bounds, voice), ...shelfTexts(step.pack.shelf?.part, voice)];
    }
    case 'band':
      return bandTexts(step.band, voice);
    case 'end play': {
      const { limit, shelf } = step.endPlay;
      return [...limited(limit && boundsOf(limit), voice), ...shelfTexts(shelf?.part, voice)];
    }
    case 'preload': {
      const { shelf } = step.preload;
      const both = (['new', 'used'] as const).flatMap((state) => {
        const { limit } = judgePreload(step.preload, { state });
        const known = limit?.least ?? limit?.most;
        const limits = known && torqueBoundsText(limit ?? {}, voice);
        return limits === undefined ? [] : [voice.say('preload.limits', { state, limits })];
      });
      const known =
        both.length > 0 ? [...both, voice.say('sheet.own data')] : limited(undefined, voice);
      return [...known, ...shelfTexts(shelf?.part, voice)];
    }
  }
}

// Where there is a screw, by how many turns it is backed off.
function bandTexts(band: BandSetting, voice: Voice): string[] {
  const bounds = bandTravelBounds(band);
  if (!bounds?.least && !bounds?.most) {
    return [...limited(undefined, voice), ...shelfTexts(band.shelf?.part, voice)];
  }
  const { backOff } = judgeBand(band, {});
  const { clearance, travel } = band.limits ?? {};
  const from = travel || (band.lever ?? 1) === 1 ? 'itself' : 'clearance';
  const atDrum = clearance && boundsText(boundsOf(clearance), voice);
  return [
    ...(atDrum === undefined ? [] : [voice.say('band.clearance', { limits: atDrum })]),
    voice.say('band.limits', { limits: boundsText(bounds, voice), from }),
    ...(backOff ? [backOffText(backOff, voice)] : []),
    voice.say('sheet.own data'),
    ...shelfTexts(band.shelf?.part, voice),
  ];
}

function limited(bounds: Bounds | undefined, voice: Voice): string[] {
  if (!bounds?.least && !bounds?.most) return [voice.say('sheet.measure.no limit')];
  const limits = boundsText(bounds, voice);
  return [voice.say('pack.limits', { limits, each: 'no' }), voice.say('sheet.own data')];
}

function shelfTexts(part: string | undefined, voice: Voice): string[] {
  return part === undefined ? [] : [voice.say('plan.select', { part: keyOf(part) })];
}
