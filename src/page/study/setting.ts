import type { MemberName, Way } from '../../engine/train/index.ts';

/** Who turns the train: its engine, in the gear that is applied, or a hand on a member. */
export type TurnedBy = ByEngine | ByHand;

export interface ByEngine {
  readonly by: 'engine';
  readonly side: Side;
}

export interface ByHand {
  readonly by: 'hand';
  readonly turn: MemberName;
  readonly way: Way;
}

/** Under power, on coast, rolled back on a hill with the input free or held. */
export type Side = 'drive' | 'coast' | 'rolled back' | 'rolled back, input held';

export const SIDES: readonly Side[] = ['drive', 'coast', 'rolled back', 'rolled back, input held'];
