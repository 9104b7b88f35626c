/**
 * Holdturn as a library: read a train, ask it things, tell the answers.
 *
 * Speeds are in turns and torques in multiples of one end's torque; both are plus clockwise,
 * seen from the input end. Numbers are exact fractions (`Rational`); `toNumber` and `toText`
 * turn them into floats and into "p/q". Answers are plain read-only data, each checked against
 * its certificate before it is returned.
 */

// A train file becomes a train and its problems; reading never throws. An edit of a file keeps
// every other byte of it; a train can also be written as a file.
export { readTrain, rename, trainText } from './engine/trainfile/index.ts';
export { put, remove } from './engine/yaml/index.ts';
export type { Reading, Renaming } from './engine/trainfile/index.ts';
export type { Edited, OilMistake, Place, Problem, Refusal, Value } from './engine/yaml/index.ts';
export type {
  Device,
  EndPlay,
  FrictionDevice,
  Gear,
  GearPair,
  GearSet,
  Join,
  MemberName,
  OneWayClutch,
  Pack,
  PackLimits,
  Part,
  Plate,
  Range,
  Shelf,
  Train,
  Way,
  Wheel,
} from './engine/train/index.ts';
export type { BallEntry, ByName, Controls, OilFault } from './engine/hydraulics/index.ts';
export type { ServoEntry, SolenoidEntry, ValveEntry } from './engine/hydraulics/index.ts';

// What a train that can be read may have against it.
export { check } from './engine/check/index.ts';
export type { Mend, Misgiving, Warning } from './engine/check/index.ts';

// What a train does with some devices on, or at given speeds.
export { flow, flowAt, isSpan, USUAL_EFFICIENCY } from './engine/flow/index.ts';
export type {
  Branch,
  DeviceState,
  DeviceWork,
  Efficiency,
  Fact,
  Flow,
  MeshEfficiency,
  MeshWork,
  Quantity,
  Rollback,
  RollbackCase,
  Span,
  State,
  Working,
} from './engine/flow/index.ts';

// What the hands find, a member that is pulled, and every combination of devices.
export { hand, pull, pulledTo } from './engine/hand/index.ts';
export type { HandAnswer, HandCheck, Pull, Pulling, PullWay, Stop } from './engine/hand/index.ts';

// The proof of an answer written out, and sets as levers.
export { ledgerOf, pushesOf } from './engine/flow/index.ts';
export type { BodyAccount, LedgerEntry, Ledger, MeshAccount, Pushes } from './engine/flow/index.ts';
export { compoundLevers, leversOf } from './engine/lever/index.ts';
export type { Lever, LeverNode } from './engine/lever/index.ts';
export { chart, MOST_DEVICES } from './engine/chart/index.ts';
export type { Chart, ChartGear, GearName, Shift } from './engine/chart/index.ts';

// A fault is an edit of the train: "low sprag: backwards" makes another train, to ask the same.
export {
  applyFault,
  CheckFinder,
  everyFault,
  faultMatrix,
  faultNamed,
  faultText,
  roadSign,
} from './engine/faults/index.ts';
export type {
  BenchSign,
  Change,
  Changed,
  Fault,
  FaultCell,
  FaultClass,
  FaultMatrix,
  FaultRow,
  FrictionFault,
  MatrixGear,
  MatrixOptions,
  NamedFault,
  OneWayFault,
  Outcome,
  RoadSign,
  Sign,
  Spins,
} from './engine/faults/index.ts';

// The build of a train whose file tells its parts: the teardown replayed backwards.
export { MOST_PARTS, plan } from './engine/plan/index.ts';
export type {
  Catcher,
  Felt,
  Glance,
  Grip,
  Measuring,
  Mistake,
  Plan,
  PlannedCheck,
  Slip,
  Step,
  Still,
  Watched,
} from './engine/plan/index.ts';

// Which fault a symptom means: what was seen, ranked, what may not be done, and the next best test.
export { readExperience } from './engine/experience/index.ts';
export type { Experience, ExperienceReading } from './engine/experience/index.ts';
export { type ComplaintSeen, complaintSeen } from './engine/complaint/index.ts';
export { type Growler, growlers, type Heard } from './engine/noise/index.ts';
export { diagnose } from './engine/triage/index.ts';
export type { Bar, Counsel, Diagnosis, StoppedTest } from './engine/triage/index.ts';
export { inquire } from './engine/cause/index.ts';
export type { Cause, Inquiry } from './engine/cause/index.ts';
export type { Test } from './engine/sight/index.ts';
export { accountsOf, rank, readSeen, seenText } from './engine/suspects/index.ts';
export type {
  Account,
  Advice,
  Bracket,
  Doubt,
  Evidence,
  Observation,
  Proposal,
  Ranking,
  SeenReading,
  Suspect,
} from './engine/suspects/index.ts';

// What people measure. A length keeps the last digit that its tool told.
export { digitsIn, lengthFrom } from './shop/length/index.ts';
export type { Draws, DrawsAsked, Gap, Length, LengthUnit } from './shop/length/index.ts';

// The end play of a shaft, and the washer or race that sets it.
export { judgeEndPlay, readPlays } from './shop/endplay/index.ts';
export type { EndPlayJudgement, PlayReadings, PlaysReading } from './shop/endplay/index.ts';

// The preload of bearings: the torque that proves it, and the shim that sets it.
export { judgePreload, readPreloads } from './shop/preload/index.ts';
export type { PreloadJudgement, PreloadReading, PreloadReadings } from './shop/preload/index.ts';

// A band at its drum, and what wears.
export { judgeBand, readBands } from './shop/bands/index.ts';
export type { BackOff, BandJudgement, BandReadings, BandsReading } from './shop/bands/index.ts';
export { judgeWear, readWear } from './shop/wear/index.ts';
export type { WearJudgement, WearReading, WearReadings } from './shop/wear/index.ts';

// The plates of a clutch or a brake: the clearance, the limits, and the part from the shelf.
export { judgePack, readReadings } from './shop/packs/index.ts';
export type {
  ClearanceWay,
  Gauge,
  Measured,
  PackJudgement,
  PackReadings,
  ReadingsReading,
  PackRemark,
  Wear,
} from './shop/packs/index.ts';
export type { Again, Bounds, Chosen, Selection, Verdict } from './shop/limits/index.ts';

// A job: what was done and found, by whom; only added to, struck through, never erased.
export {
  entryText,
  foldJob,
  newJobText,
  readingsIn,
  readJob,
  seenIn,
  standing,
  withLimitsOf,
} from './shop/records/index.ts';
export type {
  FoldedEntry,
  FoldedJob,
  Job,
  JobEntry,
  JobReading,
  JobReadings,
  Told,
} from './shop/records/index.ts';

// What each gear can pass before something slips, from what the file tells of its devices.
export { firstToSlip, marginsOf } from './engine/margin/index.ts';
export type {
  AskedGear,
  DeviceMargin,
  FirstToSlip,
  GearMargin,
  Limit,
  Load,
  Margins,
  SideMargin,
  Strength,
} from './engine/margin/index.ts';
export { lookAtFigures } from './shop/figures/index.ts';
export type { FigureWarning } from './shop/figures/index.ts';
export { limitsOf } from './shop/capacity/index.ts';
export type { Capacity, Engine } from './engine/train/index.ts';

// Sheets of paper as plain data, and as source text for the typesetter Typst.
export {
  buildSheet,
  chartSheet,
  diagnosisSheet,
  drawingSheet,
  jobCard,
  capacitySheet,
  measureSheet,
  oneWayCard,
  stripSheet,
  typstOf,
} from './telling/sheets/index.ts';
export type { SheetBlock, Paper, Printing, Sheet, Stamp } from './telling/sheets/index.ts';
export type { MarginReport } from './asking/gears/index.ts';
export type { Measurements } from './asking/build/index.ts';
export type { Suspicion } from './asking/faults/index.ts';

// What a class can predict of a train, and its votes as plain data.
export {
  again,
  KINDS,
  MISCONCEPTIONS,
  questionsOf,
  reveal,
  roundOf,
  tally,
  unvote,
  vote,
} from './shop/lessons/index.ts';
export type {
  Answer,
  Choice,
  FirstSign,
  Kind,
  Misconception,
  Question,
  QuestionOptions,
  Round,
  Setting,
  Subject,
  Tally,
} from './shop/lessons/index.ts';

// Exact numbers.
export { fromText, toNumber, toText } from './engine/linear/index.ts';
export type { Int, Rational } from './engine/linear/index.ts';

// Reasons and problems as sentences.
export {
  benchText,
  choiceText,
  faultName,
  feltText,
  LANGUAGES,
  misconceptionText,
  mistakeText,
  oneWayWords,
  partTexts,
  problemText,
  questionText,
  roadText,
  sentences,
} from './telling/narrative/index.ts';
export { type Language, type Voice, voiceOf } from './telling/narrative/index.ts';
export { AT_THE_INPUT } from './asking/request/index.ts';
export type { Stand } from './asking/request/index.ts';

// Drawings as plain data, and as SVG.
export { endScene, endView, placeWheels } from './telling/endview/index.ts';
export { stickDiagram, paintStickDiagram } from './telling/stickdiagram/index.ts';
export { LOOKS, standingsOf, toSvg } from './telling/scene/index.ts';
export { leverDiagram, leverScene } from './telling/levers/index.ts';
export type * from './telling/scene/index.ts';
export type * from './telling/stickdiagram/index.ts';
export type * from './telling/endview/index.ts';
export type * from './telling/levers/index.ts';

// What a train's levers and standings are made of.
export { motionOf } from './engine/motion/index.ts';
export { assemble } from './engine/train/index.ts';

// The types that those above are made of.
export type * from './needed.ts';
