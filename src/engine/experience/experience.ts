/**
 * A shop's experience: which tests it makes and at what cost, how often each thing is wrong, and
 * what a test tends to show where mechanics cannot say. The shape is the file's.
 */
export interface Experience {
  /** Mistaken answers in a hundred, above 0 and below 50. */
  readonly 'wrong in a hundred': Readonly<Record<Sureness, number>>;
  /** A leading bracket with so many chances in a hundred is enough to stop. */
  readonly 'enough in a hundred': number;
  /** From the stage before; shutting the unit again takes as long. */
  readonly 'minutes to open': Readonly<Record<Exclude<Stage, 'in the car'>, number>>;
  /** A minute at this risk counts as so many. */
  readonly risks: Readonly<Record<Risk, number>>;
  /** Only the proportions count; a weight of 0 is never suspected. */
  readonly causes: Readonly<Record<CauseWord, number>>;
  /** Of a cause: in what proportion each kind of it is the case; the others have one kind. */
  readonly kinds: Readonly<
    Partial<Record<CauseWord, Readonly<Partial<Record<ReasonWord, number>>>>>
  >;
  readonly tests: Readonly<Record<TestWord, Practised>>;
}

/** What a test takes, what must be known before it, and what it shows. */
export interface Practised {
  readonly minutes: number;
  readonly risk: Risk;
  readonly at: Stage;
  /** What it finds wrong is put right at once, from outside; then it is tried again. */
  readonly mends?: boolean;
  readonly with: Tool;
  /** Not to be done until each of these tests has surely shown its outcome. */
  readonly first?: Readonly<Partial<Record<'pressure' | 'fluid', OutcomeWord>>>;
  /** Which outcomes, in what proportion, where one of the rows is the case. */
  readonly shows?: Shows;
}

export type Shows = Readonly<
  Partial<Record<ExperienceRow, Readonly<Partial<Record<OutcomeWord, number>>>>>
>;

/** A kind of thing that is wrong, how the tested gear behaves, or whatever else is the case. */
export type ExperienceRow = CauseWord | ReasonWord | (typeof GEAR_ROWS)[number] | 'otherwise';

/** How far the unit is open. */
export const STAGES = ['in the car', 'pan off', 'on the bench'] as const;
export type Stage = (typeof STAGES)[number];

/** Where a unit is by what was written down of it. In pieces nothing is asked of the car. */
export const UNIT_STAGES = ['on the road', 'on the hoist', 'open', 'in pieces'] as const;
export type UnitStage = (typeof UNIT_STAGES)[number];

/** What a test is made with. */
export const TOOLS = [
  'nothing',
  'road',
  'rag and light',
  'scan tool',
  'stopwatch',
  'gauge',
  'tachometer',
  'logger',
  'rule',
  'air nozzle',
  'bench',
  'dial indicator',
] as const;
export type Tool = (typeof TOOLS)[number];

export const RISKS = ['none', 'low', 'high'] as const;
export type Risk = (typeof RISKS)[number];

export const SURENESSES = ['sure', 'not sure'] as const;
export type Sureness = (typeof SURENESSES)[number];

/** What can be wrong beside the train; nothing wrong is one of them. */
export const BESIDE = [
  'low line pressure',
  'high line pressure',
  'stator slips',
  'engine weak',
  'selector linkage',
  'control',
  'nothing wrong',
] as const;

/** The kinds of things that can be wrong: with the train, beside it, or nothing. */
export const CAUSES = [
  'device will not apply',
  'device slips',
  'device leaks',
  'device will not release',
  'device fed by mistake',
  'one-way clutch slips',
  'one-way clutch seized',
  'one-way clutch backwards',
  'one-way clutch left out',
  'splines stripped',
  'teeth stripped',
  'planet seized',
  'part left out',
  'thrust washer left out',
  ...BESIDE,
] as const;
export type CauseWord = (typeof CAUSES)[number];

/** Why it is wrong: of a device that nothing tells apart on the road, and of low pressure. */
export const KINDS = [
  'not fed',
  'seal leaks',
  'rings leak',
  'valve leaks',
  'lining worn',
  'band loose',
  'stuck',
  'pump worn',
  'filter blocked',
  'regulator low',
] as const;
export type ReasonWord = (typeof KINDS)[number];

/** How the tested gear behaves, which part of a shift a device has, and when low pressure eases. */
export const GEAR_ROWS = [
  'gear slips',
  'gear ties up',
  'off-going will not release',
  'set at work',
  'pressure eased',
] as const;

/**
 * The tests, and the words for what each can show. Where mechanics do not answer, the first is
 * what a train in order shows.
 */
export const OUTCOMES = {
  'under power': ['drives', 'slips', 'no drive', 'ties up', 'another ratio'],
  coast: ['brakes', 'slips', 'runs free', 'ties up', 'another ratio'],
  engagement: ['normal', 'late', 'harsh', 'none'],
  shift: ['good', 'flares', 'late', 'harsh', 'none'],
  noise: ['quiet', 'growls'],
  fluid: ['clean', 'burnt', 'metal', 'milky'],
  codes: ['clear', 'set'],
  filter: ['clear', 'blocked'],
  selector: ['in place', 'out of place'],
  'end play': ['right', 'too big', 'too small'],
  pressure: ['good', 'low', 'high'],
  'device pressure': ['good', 'low', 'high'],
  'stray pressure': ['none', 'pressure'],
  stall: ['normal', 'high', 'low'],
  'band check': ['right', 'loose', 'tight'],
  'air check': ['thud', 'hiss', 'nothing'],
  'hand check': ['turns', 'locks'],
  'slip log': ['holds', 'slips'],
  'manual shift': ['gears come', 'gears missing'],
  pan: ['clean', 'friction', 'metal'],
  'valve body': ['free', 'sticks'],
  'seal rings': ['good', 'worn'],
  'build record': ['complete', 'part missing', 'wrong way round'],
  engine: ['right', 'weak'],
  converter: ['good', 'worn'],
  pump: ['good', 'worn'],
  seals: ['good', 'cut'],
  'one-way check': ['one way', 'turns both ways', 'locks both ways', 'wrong way'],
  inspection: ['sound', 'worn', 'broken'],
} as const;
/** A test, as files say it. */
export type TestWord = keyof typeof OUTCOMES;
/** What a test can show, as files say it. */
export type OutcomeWord = (typeof OUTCOMES)[TestWord][number];
