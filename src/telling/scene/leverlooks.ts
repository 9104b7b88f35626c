/**
 * How lever diagrams look: the levers strong, what is free dotted, stops hatched. A thin level line joins
 * what is one member, or says with which race a stop moves.
 */
export const LEVER_LOOKS = `
.drawing .lever-zero { stroke-width: 1.6; }
.drawing .lever-tick { stroke-width: 0.7; stroke: var(--line, #bbb); }
.drawing .lever-axis { stroke-width: 1; stroke: var(--quiet, #555); }
.drawing .lever-beam { stroke-width: 3.5; }
.drawing .lever-joined { stroke-width: 1.4; }
.drawing .lever-race { stroke-width: 1; stroke: var(--quiet, #555); }
.drawing .lever-turns { fill: var(--quiet, #555); }
.drawing .lever-tie { stroke-width: 5; }
.drawing .lever-free { stroke-width: 7; stroke-dasharray: 1 11; }
.drawing .lever-stop { stroke-width: 2.2; }
.drawing .lever-reach { fill: transparent; stroke: none; }
.drawing .lever-node text {
  paint-order: stroke; stroke: var(--card, #fff); stroke-width: 5; stroke-linejoin: round;
}
.drawing .lever-dot { fill: var(--card, #fff); stroke-width: 3; }
`.trim();
