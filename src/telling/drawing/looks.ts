/**
 * How marks look: one style sheet for files and for the screen, which sets the colours by the
 * variables. What a mark means never hangs on a colour: weight, hatch, arrow and letter say it.
 */
export const LOOKS = `
.drawing { background: var(--paper, #fff); font-family: "Liberation Sans", Arial, Helvetica, sans-serif; }
.drawing path { fill: none; stroke: var(--ink, #111); stroke-width: 1.5; stroke-linecap: round; stroke-linejoin: round; }
.drawing text { fill: var(--ink, #111); stroke: none; }
.drawing .carrying > path { stroke: var(--load, #c0391b); stroke-width: 4; }
`.trim();
