/** The verbs that ask about a train file, and the options of each, in the order of help. */
export const VERBS = {
  check: ['json', 'lang'],
  flow: ['range', 'gear', 'on', 'at', 'without', 'fault', 'mesh-efficiency', 'all', 'json', 'lang'],
  chart: ['without', 'fault', 'all', 'json', 'lang'],
  hand: ['hold', 'turn', 'way', 'on', 'range', 'gear', 'without', 'fault', 'json', 'lang'],
} as const satisfies Record<string, readonly OptionName[]>;

export type Verb = keyof typeof VERBS;

/** What an option's value is called; none where it takes no value. */
export const OPTIONS = {
  range: 'RANGE',
  gear: 'GEAR',
  on: 'DEVICES',
  at: 'SPEEDS',
  hold: 'MEMBERS',
  turn: 'MEMBER',
  way: 'WAY',
  without: 'PARTS',
  fault: 'FAULT',
  'mesh-efficiency': 'NUMBERS',
  all: '',
  json: '',
  lang: 'LANGUAGE',
} as const;

export type OptionName = keyof typeof OPTIONS;

/** Values that the shell can complete. */
export const CHOICES: Partial<Record<OptionName, readonly string[]>> = {
  way: ['clockwise', 'anticlockwise'],
  lang: ['en', 'es'],
};

export const SHELLS = ['bash', 'zsh', 'fish'] as const;
