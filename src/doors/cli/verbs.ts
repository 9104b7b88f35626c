/** The verbs that ask about a train file, and the options of each, in the order of help. */
export const VERBS = {
  check: ['json', 'lang'],
  flow: [
    'range',
    'gear',
    'on',
    'at',
    'without',
    'fault',
    'mesh-efficiency',
    'seen-from',
    'all',
    'json',
    'lang',
  ],
  chart: ['without', 'fault', 'all', 'json', 'lang'],
  hand: [
    'hold',
    'turn',
    'way',
    'one-way',
    'on',
    'range',
    'gear',
    'without',
    'fault',
    'seen-from',
    'json',
    'lang',
  ],
  draw: ['output', 'range', 'gear', 'on', 'side', 'without', 'fault', 'lang'],
  faults: ['pairs', 'only', 'seen-from', 'hold', 'json', 'csv', 'lang'],
  margin: ['pressure', 'torque', 'stall-ratio', 'range', 'gear', 'json', 'lang'],
  plan: ['seen-from', 'json', 'lang'],
  suspects: ['practice', 'all', 'json', 'lang'],
  pack: ['inch', 'json', 'lang'],
  endplay: ['inch', 'json', 'lang'],
  sheet: [
    'output',
    'paper',
    'date',
    'seen',
    'practice',
    'readings',
    'plays',
    'pressure',
    'torque',
    'stall-ratio',
    'seen-from',
    'fault',
    'json',
    'lang',
  ],
} as const satisfies Record<string, readonly OptionName[]>;

export type Verb = keyof typeof VERBS;

/** What an option's value is called; none where it takes no value, in brackets where it may. */
export const OPTIONS = {
  range: 'RANGE',
  gear: 'GEAR',
  on: 'DEVICES',
  at: 'SPEEDS',
  hold: 'MEMBERS',
  turn: 'MEMBER',
  way: 'WAY',
  'one-way': '[NAME]',
  side: 'SIDE',
  'seen-from': 'END',
  without: 'PARTS',
  fault: 'FAULT',
  'mesh-efficiency': 'NUMBERS',
  pairs: '',
  only: 'FAULTS',
  practice: 'FILE',
  output: 'FILE',
  paper: 'PAPER',
  date: 'DATE',
  seen: 'FILE',
  readings: 'FILE',
  plays: 'FILE',
  pressure: 'PRESSURE',
  torque: 'TORQUE',
  'stall-ratio': 'RATIO',
  all: '',
  inch: '',
  json: '',
  csv: '',
  lang: 'LANGUAGE',
} as const;

export type OptionName = keyof typeof OPTIONS;

/** Values that the shell can complete. */
export const CHOICES: Partial<Record<OptionName, readonly string[]>> = {
  way: ['clockwise', 'anticlockwise'],
  side: ['drive', 'coast'],
  'seen-from': ['input', 'output'],
  paper: ['a4', 'letter'],
  lang: ['en', 'es'],
};

export const SHELLS = ['bash', 'zsh', 'fish'] as const;

/** What `sheet` prints, in the order in which a job needs it; `set` is all that there is for. */
export const SHEETS = [
  'chart',
  'drawing',
  'diagnosis',
  'strip',
  'measure',
  'build',
  'one-way',
  'margins',
  'set',
] as const;
