/** How speed scales look: the levers strong, what is free dotted, stops hatched. */
export const SCALE_LOOKS = `
.drawing .scale-zero { stroke-width: 1.6; }
.drawing .scale-tick { stroke-width: 0.7; stroke: var(--line, #bbb); }
.drawing .scale-axis { stroke-width: 1; stroke: var(--quiet, #555); }
.drawing .scale-lever { stroke-width: 3.5; }
.drawing .scale-joined { stroke-width: 1.4; stroke-dasharray: 9 6; }
.drawing .scale-race { stroke-width: 1; stroke-dasharray: 3 3; }
.drawing .scale-turns { fill: var(--quiet, #555); }
.drawing .scale-tie { stroke-width: 3; stroke-dasharray: 2 6; }
.drawing .scale-free { stroke-width: 7; stroke-dasharray: 1 11; }
.drawing .scale-stop { stroke-width: 2.2; }
.drawing .scale-reach { fill: transparent; stroke: none; }
.drawing .scale-node text {
  paint-order: stroke; stroke: var(--plate, #fff); stroke-width: 5; stroke-linejoin: round;
}
.drawing .scale-dot { fill: var(--plate, #fff); stroke-width: 3; }
`.trim();
