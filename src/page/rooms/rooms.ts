import { effect, signal } from '@preact/signals';

/**
 * What a person is at: turning the train, finding a fault, stripping the unit, measuring it,
 * asking a class, describing it, or a job.
 */
export const ROOMS = ['turn', 'symptoms', 'strip', 'measure', 'ask', 'describe', 'job'] as const;

export type Room = (typeof ROOMS)[number];

const KEY = 'holdturn room';

/** A reload comes back to where it was; another tab begins with the train. */
export const room = signal<Room>(lastRoom());

effect(() => {
  try {
    sessionStorage.setItem(KEY, room.value);
  } catch {
    // Forbidden: then a reload begins with the train.
  }
});

function lastRoom(): Room {
  try {
    const last = sessionStorage.getItem(KEY);
    return ROOMS.find((name) => name === last) ?? 'turn';
  } catch {
    return 'turn';
  }
}
