import { signal } from '@preact/signals';

/** What a person is at: turning the train, asking a class about it, describing it, or a job. */
export const ROOMS = ['turn', 'ask', 'describe', 'job'] as const;
export type Room = (typeof ROOMS)[number];

export const room = signal<Room>('turn');
