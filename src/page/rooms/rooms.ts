import { signal } from '@preact/signals';

/** What a person is at: turning the train, asking a class about it, or describing it. */
export const ROOMS = ['turn', 'ask', 'describe'] as const;
export type Room = (typeof ROOMS)[number];

export const room = signal<Room>('turn');
