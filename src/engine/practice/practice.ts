/**
 * A shop's practice: which tests it makes and at what cost, how often each thing is wrong, and
 * what a test tends to show where mechanics cannot say. The shape is the file's.
 */
export interface Practice {
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
  readonly tests: Readonly<Record<TestWord, Practised>>;
}

/** What a test takes, what must be known before it, and what it shows. */
export interface Practised {
  readonly minutes: number;
  readonly risk: Risk;
  readonly at: Stage;
  /** Not to be done until each of these tests has surely shown its outcome. */
  readonly first?: Readonly<Partial<Record<'pressure' | 'fluid', OutcomeWord>>>;
  /** Which outcomes, in what proportion, where one of the rows is the case. */
  readonly shows?: Shows;
}

export type Shows = Readonly<Partial<Record<Row, Readonly<Partial<Record<OutcomeWord, number>>>>>>;

/** A kind of thing that is wrong, how the tested gear behaves, or whatever else is the case. */
export type Row = CauseWord | (typeof GEAR_ROWS)[number] | 'otherwise';

/** How far the unit is open. */
export const STAGES = ['in the car', 'pan off', 'on the bench'] as const;
export type Stage = (typeof STAGES)[number];

export const RISKS = ['none', 'low', 'high'] as const;
export type Risk = (typeof RISKS)[number];

export const SURENESSES = ['sure', 'not sure'] as const;
export type Sureness = (typeof SURENESSES)[number];

/** The kinds of things that can be wrong: with the train, beside it, or nothing. */
export const CAUSES = [
  'device will not apply',
  'device will not release',
  'one-way clutch slips',
  'one-way clutch seized',
  'one-way clutch backwards',
  'one-way clutch left out',
  'splines stripped',
  'teeth stripped',
  'planet seized',
  'part left out',
  'low line pressure',
  'stator slips',
  'engine weak',
  'nothing wrong',
] as const;
export type CauseWord = (typeof CAUSES)[number];

export const GEAR_ROWS = ['gear slips', 'gear ties up'] as const;

/** The tests, and the words for what each can show. */
export const OUTCOMES = {
  'under power': ['drives', 'slips', 'ties up', 'another ratio'],
  coast: ['brakes', 'runs free', 'ties up'],
  fluid: ['clean', 'burnt', 'metal', 'milky'],
  pressure: ['good', 'low', 'high'],
  stall: ['normal', 'high', 'low'],
  'air check': ['thud', 'hiss', 'nothing'],
  'hand check': ['turns', 'locks'],
} as const;
export type TestWord = keyof typeof OUTCOMES;
export type OutcomeWord = (typeof OUTCOMES)[TestWord][number];
