/**
 * The types that the public names of `index.ts` are made of, so that a program can call each.
 */
export type { Coast, Travel, LoadedPort, Course } from './engine/flow/index.ts';
export type { Base, Reduced, LinearForm, Row, Vector } from './engine/linear/index.ts';
export type {
  DeviceRow,
  DeviceRows,
  GivenRow,
  MeshRow,
  Motion,
  GivenSpeed,
  SizeRow,
} from './engine/motion/index.ts';
export type { PartAtWork } from './engine/noise/index.ts';
export type { Doing } from './engine/plan/index.ts';
export type {
  CauseWord,
  ReasonWord,
  OutcomeWord,
  Practised,
  Risk,
  ExperienceRow,
  Shows,
  Stage,
  Sureness,
  TestWord,
  Tool,
  UnitStage,
} from './engine/experience/index.ts';
export type { RatioRange, RoadReading } from './engine/road/index.ts';
export type { HeldBack, ProposalPart, Said, Belief } from './engine/suspects/index.ts';
export type {
  TestOutcome,
  Sight,
  EngineSpeed,
  TestGear,
  Heat,
  TestLoad,
  On,
  UnitTest,
} from './engine/sight/index.ts';
export type { Prediction, Reason, DeviceGrip, Manner, Weakness } from './engine/cause/index.ts';
export type {
  BandSetting,
  PartKind,
  RodPart,
  RodShelf,
  Assembly,
  Body,
  BandSizes,
  PlateSizes,
  Rating,
  SignedRating,
  Sourced,
  Car,
  PlayKind,
  StackPart,
  WasherPart,
  WasherShelf,
  BevelSet,
  NamedSet,
  PairSet,
  PlainSet,
  SharingSet,
  SteppedSet,
  WheelSet,
  Gearing,
  Mesh,
  Planet,
  LengthText,
  FileLimit,
  PlateKind,
  ShelfPart,
  Bolts,
  End,
  Facing,
  Fluid,
  TorqueText,
  Preload,
  PreloadPart,
  PreloadShelf,
  TorqueLimit,
  Connection,
  Departure,
  DeviceKind,
  MeasuredKind,
  Pawl,
  WearCheck,
  WearKind,
} from './engine/train/index.ts';
export type { GeometryFinding, SpacingRule } from './engine/teeth/index.ts';
export type { Stopped, TestPlace } from './engine/triage/index.ts';
export type {
  Expected,
  Oddity,
  Located,
  FileMistake,
  NamedProblem,
  Syntax,
} from './engine/yaml/index.ts';
export type { ShelfSaid } from './engine/trainfile/index.ts';
export type { Judgements } from './asking/build/index.ts';
export type { BandRemark } from './shop/bands/index.ts';
export type { Failure, Finding, Root, FoundSign } from './shop/causes/index.ts';
export type { CountedIn, FigureOddity } from './shop/figures/index.ts';
export type { Quantile, Share, WrittenUnit } from './shop/length/index.ts';
export type { TallyRow } from './shop/lessons/index.ts';
export type { AgainReadings, MeanGap, GapRemark } from './shop/limits/index.ts';
export type { PreloadRemark, Torque, TorqueBounds } from './shop/preload/index.ts';
export type { Replaced, WithLimits, EntryDraft } from './shop/records/index.ts';
export type { NamesIn } from './engine/train/index.ts';
export type { Arguments, MessageId, Objection } from './telling/narrative/index.ts';
export type {
  Diagnosed,
  Caution,
  SheetCell,
  SheetColumn,
  SheetField,
  SheetFields,
  SheetFigure,
  SheetLines,
  SheetLook,
  SheetTable,
  Ticks,
  Together,
  SheetWords,
} from './telling/sheets/index.ts';
export type { SceneSubject } from './telling/scene/index.ts';
export type { DiagramNode } from './telling/levers/index.ts';
export type { LineBranch } from './telling/stickdiagram/index.ts';
export type { Explained, Proof } from './asking/faults/index.ts';
