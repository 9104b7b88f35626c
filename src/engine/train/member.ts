/** A member's name: of a set and its part ("front.sun"), of a join or a device, or `case`. */
export type MemberName = string;

/** The member that never turns. */
export const CASE: MemberName = 'case';

/** Seen from the input end. Clockwise is a positive speed. */
export type Way = 'clockwise' | 'anticlockwise';

export interface Wheel {
  readonly member: MemberName;
  readonly teeth: number;
}

/** Members that are splined, tabbed or made in one piece; the name is a member too. */
export interface Join {
  readonly name: MemberName;
  readonly members: readonly MemberName[];
}
