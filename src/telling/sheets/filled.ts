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

/** Fields with long labels, two a line. */
export function linesFor(fields: readonly Field[]): Fields[] {
  return Array.from({ length: Math.ceil(fields.length / 2) }, (_, i) => {
    return { block: 'fields', fields: fields.slice(2 * i, 2 * i + 2) };
  });
}
