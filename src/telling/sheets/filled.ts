import type { Voice } from '../narrative/index.ts';
import type { Field, Fields } from './document.ts';

/** What is filled in at the top of a sheet: which job, whose hands, which day. */
export function jobFields(voice: Voice): Fields {
  return { block: 'fields', fields: ['job', 'by', 'day'].map((name) => fieldOf(name, voice)) };
}

export function fieldOf(field: string, voice: Voice, value?: string): Field {
  const label = voice.say('sheet.field', { field });
  return value === undefined ? { label } : { label, value };
}

/** The head of a column that only sheets have. */
export function headOf(head: string, voice: Voice): string {
  return voice.say('sheet.head', { head });
}

/** Fields with names in their labels: two a line where there is room, else a line each. */
export function linesFor(fields: readonly Field[]): Fields[] {
  const each = fields.some(({ label }) => label.length > SHORT) ? 1 : 2;
  return Array.from({ length: Math.ceil(fields.length / each) }, (_, i) => {
    return { block: 'fields', fields: fields.slice(each * i, each * (i + 1)) };
  });
}

const SHORT = 32;
