import { opposite, ZERO } from '../../engine/linear/index.ts';
import type { BandJudgement } from '../../shop/bands/index.ts';
import type { EndPlayJudgement } from '../../shop/endplay/index.ts';
import { type Length, lengthFrom, type LengthUnit } from '../../shop/length/index.ts';
import { type Bounds, speakAgainst, toldApart } from '../../shop/limits/index.ts';
import type { PackJudgement } from '../../shop/packs/index.ts';
import type { PreloadJudgement } from '../../shop/preload/index.ts';
import type { WearJudgement } from '../../shop/wear/index.ts';
import { backOffText, turnsText } from './bands.ts';
import { closedText, fineTool, gapTexts, HUNDREDTHS, thickerTexts, verdictText } from './gaps.ts';
import { asFineAs, boundsText, lengthText } from './packs.ts';
import { torqueBoundsText, torqueText } from './preload.ts';
import { keyOf, type Voice } from '../voice/index.ts';

// What a judgement says, sentence by sentence, in the order in which it is read: the command, the
// sheets and the page say the same. `first` is the unit that stands first.

/** The verdict of a pack's clearance, its limits, what its own sizes would leave, the step gauge. */
export function packTexts(judgement: PackJudgement, voice: Voice, first?: LengthUnit): string[] {
  const { judged, eachFriction, verdict, bounds, drawn, gauge, thicker, again } = judgement;
  const told = (length: Length) => lengthText(length, voice, first);
  const lines: string[] = [];
  if (again) lines.push(closedText(again, bounds, voice, first));
  if (judged && again) {
    lines.push(voice.say('pack.before', { clearance: told(judged.clearance) }));
  } else if (judged) {
    const values = {
      clearance: told(toldApart(judged.clearance, bounds ?? {})),
      each: eachFriction ? told(eachFriction) : '',
      has: eachFriction ? 'yes' : 'no',
      verdict: verdictText(verdict, voice),
    };
    lines.push(voice.say('pack.clearance', values));
  }
  if (gauge) {
    const values = {
      does: gauge.fits ? 'yes' : 'no',
      fits: gauge.fits ? told(gauge.fits) : '',
      stops: gauge.doesNotFit ? 'yes' : 'no',
      not: gauge.doesNotFit ? told(gauge.doesNotFit) : '',
      verdict: verdictText(gauge.verdict, voice),
    };
    lines.push(voice.say('pack.gauge', values));
  }
  lines.push(...limitTexts(bounds, judgement.pack.limits?.clearance ? 'no' : 'yes', voice, first));
  if (judged && thicker) {
    const values = thickerTexts(thicker, judged.clearance, voice, first);
    lines.push(voice.say('pack.thicker', values));
  }
  if (drawn) {
    const values = gapTexts(drawn, fineTool(judged?.clearance), voice, first);
    lines.push(voice.say('pack.drawn', values));
  }
  return lines;
}

/** The verdict of an end play or a backlash, its limits, what its own sizes would leave. */
export function playTexts(judgement: EndPlayJudgement, voice: Voice, first?: LengthUnit): string[] {
  const { measured, bounds, verdict, thicker, drawn, again } = judgement;
  const told = (length: Length) => lengthText(length, voice, first);
  const tool = measured?.clearance ?? HUNDREDTHS;
  const lines: string[] = [];
  if (again) lines.push(closedText(again, bounds, voice, first));
  if (measured) {
    const clearance = told(toldApart(measured.clearance, bounds ?? {}));
    const reading = {
      clearance,
      verdict: verdictText(verdict, voice),
      places: measured.places.length,
      spread: told(asFineAs(measured.spreadUm, tool)),
      worst: told(measured.places[measured.worst] as Length),
    };
    lines.push(
      again ? voice.say('pack.before', { clearance }) : voice.say('endplay.measured', reading),
    );
  }
  lines.push(...limitTexts(bounds, 'no', voice, first));
  if (thicker) lines.push(voice.say('endplay.add', thickerTexts(thicker, tool, voice, first)));
  if (drawn) {
    lines.push(voice.say('endplay.stack', gapTexts(drawn, fineTool(tool), voice, first)));
  }
  return lines;
}

/** What a band's screw or rod is at the drum, its verdict and limits, by how much to back off. */
export function bandTexts(judgement: BandJudgement, voice: Voice, first?: LengthUnit): string[] {
  const { band, travel, clearance, allRound, bounds, backOff } = judgement;
  const told = (length: Length) => lengthText(length, voice, first);
  const { limits, lever = 1 } = band;
  // Limits of the clearance are shown as what they are for the travel.
  const from = limits?.travel || lever === 1 ? 'itself' : 'clearance';
  return [
    ...(travel && clearance
      ? [bandMeasured(judgement, toldApart(travel.clearance, bounds ?? {}), clearance, told, voice)]
      : []),
    ...(allRound ? [voice.say('band.all round', { clearance: told(allRound) })] : []),
    ...(bounds && (bounds.least || bounds.most)
      ? [voice.say('band.limits', { limits: boundsText(bounds, voice, first), from })]
      : []),
    ...(backOff ? [backOffText(backOff, voice)] : []),
  ];
}

// What was read, what it is at the drum, and the verdict of it.
function bandMeasured(
  { band, turns, by, travel, verdict }: BandJudgement,
  mean: Length,
  clearance: Length,
  told: (length: Length) => string,
  voice: Voice,
): string {
  const { places = [], spreadUm, worst = 0 } = travel ?? {};
  return voice.say('band.measured', {
    by: by ?? '',
    ...turnsText(turns ?? ZERO, voice),
    pitch: band.pitch === undefined ? '' : told(lengthFrom(band.pitch) as Length),
    travel: told(mean),
    lever: voice.written(`${band.lever ?? 1}`),
    clearance: told(clearance),
    verdict: verdictText(verdict, voice),
    places: places.length,
    spread: spreadUm ? told(asFineAs(spreadUm, mean)) : '',
    worst: told(places[worst] ?? mean),
  });
}

/** The torque that proves a preload, its limits, and what to do; what is in doubt is read again first. */
export function preloadTexts(
  judgement: PreloadJudgement,
  voice: Voice,
  first?: LengthUnit,
): string[] {
  const { state, by, torque, limit, verdict, squeeze, remarks } = judgement;
  const key = keyOf(verdict ?? 'none');
  const limits = limit && torqueBoundsText(limit, voice);
  return [
    ...(torque
      ? [
          voice.say('preload.turning', {
            by: by ?? '',
            torque: torqueText(torque, voice),
            verdict: key,
          }),
        ]
      : []),
    ...(limits === undefined ? [] : [voice.say('preload.limits', { state, limits })]),
    ...(verdict && !speakAgainst(remarks) ? [voice.say('preload.do', { verdict: key })] : []),
    ...(squeeze && (squeeze.least || squeeze.most)
      ? [voice.say('preload.squeeze', { limits: boundsText(squeeze, voice, first) })]
      : []),
  ];
}

/** What the play with the fitted part in asks of the part, and the best of the shelf. */
export function shimTexts(
  { preload, gap, tighter, selection }: PreloadJudgement,
  voice: Voice,
  first?: LengthUnit,
): string[] {
  if (!gap) return [];
  const told = (length: Length) => lengthText(length, voice, first);
  const tool = gap.clearance;
  const fitted = preload.shelf && (lengthFrom(preload.shelf.fitted) as Length);
  const part = keyOf(preload.shelf?.part ?? '');
  const best = selection?.best;
  const thicker = tighter && thickerTexts(tighter, tool, voice, first);
  return [
    voice.say('preload.gap', {
      has: fitted ? 'yes' : 'no',
      fitted: fitted ? told(fitted) : '',
      gap: told(tool),
    }),
    ...(thicker ? [voice.say('preload.tighter', { part, ...thicker })] : []),
    ...(best && best.verdict === 'inside'
      ? [
          voice.say('preload.choice', {
            part,
            size: told(best.size),
            squeeze: told(asFineAs(opposite(best.predicted.um), tool)),
            worst: gapTexts(best.predicted, tool, voice, first).worst,
            safe: best.safe ? 'yes' : 'no',
          }),
        ]
      : []),
  ];
}

/** What to do about a worn part; nothing where no verdict may be given. */
export function wearTexts({ check, verdict }: WearJudgement, voice: Voice): string[] {
  if (verdict === undefined) return [];
  return [voice.say('wear.do of', { kind: keyOf(check.measure), verdict: keyOf(verdict) })];
}

function limitTexts(
  bounds: Bounds | undefined,
  each: 'yes' | 'no',
  voice: Voice,
  first?: LengthUnit,
): string[] {
  if (!bounds?.least && !bounds?.most) return [];
  return [voice.say('pack.limits', { limits: boundsText(bounds, voice, first), each })];
}
