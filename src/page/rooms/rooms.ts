import { signal } from '@preact/signals';

/**
 * What a person is at: turning the train, finding a fault, measuring the unit, asking a class,
 * describing it, or a job.
 */
export const ROOMS = ['turn', 'symptoms', 'measure', 'ask', 'describe', 'job'] as const;
export type Room = (typeof ROOMS)[number];

export const room = signal<Room>('turn');
