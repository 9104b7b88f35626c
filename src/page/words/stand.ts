import { computed, signal } from '@preact/signals';
import { AT_THE_INPUT, type Stand } from '../../asking/request/index.ts';

/** The end from which the reader looks. */
export const seenFrom = signal<Stand['seenFrom']>('input');

/** What the train's file calls the ends of the unit, if it does. */
export const ends = signal<Stand['ends'] | undefined>(undefined);

/** Where the reader of a sentence stands. */
export const stand = computed<Stand>(() => ({
  ...AT_THE_INPUT,
  seenFrom: seenFrom.value,
  ...(ends.value && { ends: ends.value }),
}));
