import { MEASURED_KINDS } from '../../engine/train/index.ts';
import type { Verb } from './verbs.ts';

/** The verbs by what a person is at, in the order of help; a group's example is of its first verb. */
export const GROUPS = {
  explain: ['flow', 'describe', 'check', 'chart', 'capacity'],
  fault: ['suspects', 'faults'],
  measure: MEASURED_KINDS,
  build: ['plan', 'hand'],
  teach: ['draw', 'screen'],
  keep: ['job', 'sheet'],
} as const satisfies Record<string, readonly (Verb | 'screen')[]>;

export type Group = keyof typeof GROUPS;

const KESTREL = 'trains/kestrel-three-speed.train.yaml';

/** What is typed after `holdturn`, in a checkout; the files of readings stand in `docs/`. */
export const EXAMPLES: Readonly<Record<Verb | 'screen', string>> = {
  check: `check ${KESTREL}`,
  describe: 'describe mine.train.yaml',
  flow: `flow ${KESTREL} --range D --gear 1`,
  chart: `chart ${KESTREL}`,
  hand: `hand ${KESTREL} --turn rear.carrier`,
  draw: `draw ${KESTREL} --gear R -o reverse.svg`,
  faults: `faults ${KESTREL} --seen-from output`,
  capacity: `capacity ${KESTREL} --pressure 900`,
  plan: `plan ${KESTREL}`,
  suspects: `suspects ${KESTREL} seen.yaml`,
  pack: `pack ${KESTREL} packs.yaml`,
  endplay: `endplay ${KESTREL} plays.yaml`,
  preload: 'preload trains/dunlin-final-drive.train.yaml preloads.yaml',
  band: `band ${KESTREL} bands.yaml`,
  wear: `wear ${KESTREL} worn.yaml`,
  sheet: `sheet set ${KESTREL} -o job.pdf`,
  job: 'job add unit-7.job.yaml seen "D 2: slips" --by TW',
  screen: `screen ${KESTREL}`,
};
