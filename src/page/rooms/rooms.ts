import { effect, signal } from '@preact/signals';

/**
 * What a person is at: beginning, turning the train, finding a fault, stripping the unit,
 * measuring it, building it, asking a class, describing it, a job, or printing.
 */
export const ROOMS = [
  'begin',
  'turn',
  'symptoms',
  'strip',
  'measure',
  'build',
  'ask',
  'describe',
  'job',
  'print',
] as const;

export type Room = (typeof ROOMS)[number];

const KEY = 'holdturn room';
const BEGUN = 'holdturn begun';

/**
 * A reload comes back to where it was. Another tab begins with the train, and where the page has
 * never been seen, and no link brought a train, it begins at the beginning.
 */
export const room = signal<Room>(firstRoom());

effect(() => {
  try {
    sessionStorage.setItem(KEY, room.value);
    if (room.value !== 'begin') localStorage.setItem(BEGUN, 'yes');
  } catch {
    // Forbidden: then a reload begins anew.
  }
});

function firstRoom(): Room {
  try {
    const last = ROOMS.find((name) => name === sessionStorage.getItem(KEY));
    if (last) return last;
    const isKnown = location.hash !== '' || localStorage.getItem(BEGUN) !== null;
    return isKnown ? 'turn' : 'begin';
  } catch {
    return 'turn';
  }
}
