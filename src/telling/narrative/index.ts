export { backOffText, turnsText } from './bands.ts';
export { boltTexts } from './fastening.ts';
export { feltFor, feltText, mistakeText, partTexts } from './building.ts';
export { brakingText, coastText, throughText } from './coast.ts';
export { gapTexts, HUNDREDTHS, nextText, verdictText } from './gaps.ts';
export { jobNoteText } from './jobnote.ts';
export { bandTexts, packTexts, playTexts, preloadTexts, shimTexts, wearTexts } from './judged.ts';
export { choiceText, misconceptionText, questionText } from './lessons.ts';
export { type DeviceDoing, doingOf, MARKS } from './marks.ts';
export { endOf, fittings, freeWay, oneWayWords, plusFor, seenFrom } from './oneway.ts';
export {
  asFineAs,
  drawnLength,
  boundsText,
  clearanceWayText,
  lengthText,
  limitDoubtedText,
  type Remark,
  remarkText,
} from './packs.ts';
export { torqueBoundsText, torqueText } from './preload.ts';
export { type Objection, problemText } from './problems.ts';
export { startTold } from './firststart.ts';
export { failureTexts, foundText } from './failure.ts';
export { sentences } from './reasons.ts';
export { howFarTexts, timeText, toldText } from './records.ts';
export { refusedText, unknownWords } from './refused.ts';
export { unsignedTexts } from './signing.ts';
export { benchText, faultName, gearCalled, gearName, roadSignText, roadText } from './signs.ts';
export { type CheckTold, isSprung, lastLook, type StepContext, stepTold } from './step.ts';
export { countedText, findingText, strippingRefusal } from './stripping.ts';
export {
  causeText,
  evidenceText,
  fewText,
  observationText,
  outcomeText,
  proposalText,
  sightText,
  suspectText,
  testName,
} from './suspicion.ts';
export { barText, growlerText, heldText, leftText, stopText } from './triage.ts';
export {
  type Arguments,
  keyOf,
  type Language,
  LANGUAGES,
  learn,
  type MessageId,
  visible,
  type Voice,
  voiceOf,
} from '../voice/index.ts';
