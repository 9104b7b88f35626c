/** A hand laid on, seen from its back, its palm at the middle of a dial; sheet units. */
export const HAND =
  'M-9 16V4L-15-3C-17-6-14-9-11-7L-6-3V-15C-6-18-2-18-2-15V-5V-18C-2-21 2-21 2-18V-5V-16C2-19 6-19 6-16V-4V-11C6-14 10-14 10-11V6C10 12 7 14 7 16Z';

/** Arrows round a dial, both ways. */
export const TURN =
  'M-27-8A28 28 0 0 1 0-28M-27 8A28 28 0 0 0 0 28M-6-34L0-28L-6-22M-6 22L0 28L-6 34';
