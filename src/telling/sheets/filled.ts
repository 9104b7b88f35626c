import type { FoldedJob } from '../../shop/records/index.ts';
import { visible, type Voice } from '../narrative/index.ts';
import type { SheetField, SheetFields } from './document.ts';

/** What stands at the top of a sheet: which job, whose hands, which day; empty without a job. */
export function jobFields(voice: Voice, job?: FoldedJob): SheetFields {
  const known = job && { job: job.unit, by: job.by, day: job.at.slice(0, DAY) };
  const fields = (['job', 'by', 'day'] as const).map((name) => {
    return fieldOf(name, voice, known && visible(known[name]));
  });
  return { block: 'fields', fields };
}

// "2026-11-25" of a time.
const DAY = 10;

export function fieldOf(field: string, voice: Voice, value?: string): SheetField {
  const label = voice.say('sheet.field', { field });
  return value === undefined ? { label } : { label, value };
}

/** The head of a column that only sheets have. */
export function headOf(head: string, voice: Voice): string {
  return voice.say('sheet.head', { head });
}

/** Fields with names in their labels: two a line where there is room, else a line each. */
export function linesFor(fields: readonly SheetField[]): SheetFields[] {
  const each = fields.some(({ label }) => label.length > SHORT) ? 1 : 2;
  return Array.from({ length: Math.ceil(fields.length / each) }, (_, i) => {
    return { block: 'fields', fields: fields.slice(each * i, each * (i + 1)) };
  });
}

const SHORT = 32;
