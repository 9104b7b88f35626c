import type { Measurements } from '../../asking/build/index.ts';
import type { MarginReport } from '../../asking/gears/index.ts';
import type { Stand } from '../../asking/request/index.ts';
import type { Plan } from '../../engine/plan/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { FoldedJob } from '../../shop/records/index.ts';
import { keyOf, visible, type Voice } from '../narrative/index.ts';
import { buildSheet } from './build.ts';
import { capacitySheet } from './capacity.ts';
import { chartSheet } from './chart.ts';
import { type Diagnosed, diagnosisSheet } from './diagnosis.ts';
import type { Paper, Printing, Sheet } from './document.ts';
import { drawingSheet } from './drawing.ts';
import { jobCard } from './job.ts';
import { measureSheet } from './measure.ts';
import { oneWayCard } from './oneway.ts';
import { stripSheet } from './strip.ts';

/** Every kind of sheet, in the order of a set. */
export const SHEET_KINDS = [
  'chart',
  'drawing',
  'diagnosis',
  'strip',
  'measure',
  'build',
  'one-way',
  'capacity',
  'job',
] as const;
export type SheetKind = (typeof SHEET_KINDS)[number];

/** What a sheet is made of, as it is asked for: each answer only by the sheet that it stands on. */
export interface Answered {
  readonly diagnosed: () => Diagnosed;
  readonly measured: () => Measurements;
  readonly planned: () => Plan;
  readonly margins: () => MarginReport;
}

/** Of which train, for whom, and filled in from which job. */
export interface SheetAsked {
  readonly train: Train;
  readonly voice: Voice;
  readonly stand: Stand;
  readonly job?: FoldedJob | undefined;
}

/** A sheet of a train; that of a job must be given the job. */
export function sheetOf(kind: SheetKind, asked: SheetAsked, answered: Answered): Sheet {
  const { train, voice, stand, job } = asked;
  switch (kind) {
    case 'chart':
      return chartSheet(train, voice);
    case 'drawing':
      return drawingSheet(train, voice);
    case 'diagnosis':
      return diagnosisSheet(answered.diagnosed(), voice, job);
    case 'strip':
      return stripSheet(train, voice, job);
    case 'measure':
      return measureSheet(train, answered.measured(), voice, job);
    case 'build':
      return buildSheet(train, answered.planned(), voice, stand, job);
    case 'one-way':
      return oneWayCard(train, voice, stand, job);
    case 'capacity':
      return capacitySheet(answered.margins(), voice);
    case 'job':
      if (!job) throw new RangeError('the card of no job');
      return jobCard(job, voice);
  }
}

/** The kinds of a set: one that would have to be refused, or would say that there is nothing, is left out. */
export function kindsInSet(train: Train, job: FoldedJob | undefined): SheetKind[] {
  return SHEET_KINDS.filter((kind) => isFor(kind, train, job));
}

function isFor(kind: SheetKind, train: Train, job: FoldedJob | undefined): boolean {
  switch (kind) {
    case 'job':
      return job !== undefined;
    case 'build':
      return train.teardown !== undefined;
    case 'capacity':
      return train.capacities !== undefined && train.engine?.['torque Nm'] !== undefined;
    case 'one-way':
      return train.devices.some((device) => device.kind === 'one-way');
    default:
      return true;
  }
}

/** What stands on every page, and on which paper. */
export interface Printed {
  readonly kind: SheetKind | 'set';
  readonly train: Train;
  /** What is wrong with the train, as it was asked. */
  readonly faults: readonly string[];
  readonly hash: string;
  readonly date: string;
  readonly voice: Voice;
  readonly paper: Paper;
}

/** Sheets of one train with what stands on every page of them. */
export function printingOf(sheets: readonly Sheet[], its: Printed): Printing {
  const { train, faults, voice, paper, hash, date } = its;
  const name = voice.train(train);
  const wrong = voice.list(faults.map(visible));
  const known =
    faults.length === 0 ? name : voice.say('sheet.with', { train: name, faults: wrong });
  const titled = voice.say('sheet.title', { sheet: keyOf(its.kind) });
  return {
    language: voice.language,
    paper,
    title: `${titled}: ${name}`,
    stamp: { train: known, hash, date },
    sheets,
  };
}
