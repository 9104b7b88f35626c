import { signal } from '@preact/signals';
import { type Room, room } from './rooms.ts';

/** What somebody was sent to in another room, and where they come back to. */
export interface Errand {
  readonly to: Room;
  readonly from: Room;
  /** What it is about, as that room names its things. */
  readonly kind: string;
  readonly name: string;
}

/** Undefined while nobody was sent anywhere. */
export const errand = signal<Errand | undefined>(undefined);

export function send(its: Errand): void {
  errand.value = its;
  room.value = its.to;
}

export function comeBack(): void {
  const from = errand.value?.from;
  errand.value = undefined;
  if (from) room.value = from;
}
