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
  draw: ['output', 'end', 'seen-from', 'range', 'gear', 'on', 'side', 'without', 'fault', 'lang'],
  faults: ['pairs', 'only', 'seen-from', 'hold', 'json', 'csv', 'lang'],
  margin: ['pressure', 'torque', 'stall-ratio', 'range', 'gear', 'json', 'lang'],
  plan: ['seen-from', 'json', 'lang'],
  suspects: ['job', 'practice', 'all', 'json', 'lang'],
  pack: ['job', 'draws', 'seed', 'inch', 'json', 'lang'],
  endplay: ['job', 'draws', 'seed', 'inch', 'json', 'lang'],
  band: ['inch', 'json', 'lang'],
  wear: ['inch', 'json', 'lang'],
  sheet: [
    'output',
    'paper',
    'date',
    'job',
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
  job: ['unit', 'train', 'complaint', 'by', 'time', 'predicted', 'because', 'json', 'lang'],
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
  end: 'SET',
  'seen-from': 'END',
  without: 'PARTS',
  fault: 'FAULT',
  'mesh-efficiency': 'NUMBERS',
  pairs: '',
  only: 'FAULTS',
  practice: 'FILE',
  unit: 'TEXT',
  train: 'FILE',
  complaint: 'TEXT',
  by: 'INITIALS',
  time: 'TIME',
  predicted: 'TEXT',
  because: 'TEXT',
  output: 'FILE',
  paper: 'PAPER',
  date: 'DATE',
  job: 'FILE',
  seen: 'FILE',
  readings: 'FILE',
  plays: 'FILE',
  draws: 'NUMBER',
  seed: 'NUMBER',
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

/** What can be done with a job. */
export const JOB_ACTIONS = ['new', 'add', 'strike', 'show'] as const;

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
  'job',
  'set',
] as const;
