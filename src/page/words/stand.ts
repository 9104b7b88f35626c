import { computed, signal } from '@preact/signals';
import { spokenOf } from './spoken.ts';
import { AT_THE_INPUT, type Stand } from '../../asking/request/index.ts';

/** The end from which the reader looks. */
export const seenFrom = signal<Stand['seenFrom']>('input');

/** Where the reader of a sentence stands. */
export const stand = computed<Stand>(() => {
  const { ends } = spokenOf.value ?? {};
  return { ...AT_THE_INPUT, seenFrom: seenFrom.value, ...(ends && { ends }) };
});
