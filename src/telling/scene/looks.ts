import { END_LOOKS } from './endlooks.ts';
import { EXPLODED_LOOKS } from './explodedlooks.ts';
import { LEVER_LOOKS } from './leverlooks.ts';

/**
 * How marks look: one style sheet for files and for the screen, which sets the colours by the
 * variables. What a mark means never hangs on a colour: weight, dashes, hatching, arrows and
 * marks say it. A line of dashes stands still, one of dots is free, and no other is broken but the
 * axis and teeth in mesh; every legend says so.
 */
export const LOOKS = `
.drawing { background: var(--card, #fff); font-family: 'Liberation Sans', Arial, sans-serif; }
.drawing path {
  fill: none; stroke: var(--ink, #111); stroke-width: 2;
  stroke-linecap: round; stroke-linejoin: round;
}
.drawing text { fill: var(--ink, #111); stroke: none; }
.drawing .axis { stroke-width: 1; stroke-dasharray: 18 5 3 5; stroke: var(--quiet, #555); }
.drawing .leader { stroke-width: 0.8; stroke: var(--quiet, #555); }
.drawing .case { stroke-width: 1.5; }
.drawing .line, .drawing .wheel, .drawing .end { stroke-width: 2.5; }
.drawing .planet { stroke-width: 2; }
.drawing .teeth { stroke-width: 2; stroke-dasharray: 0.5 4; }
.drawing .bare, .drawing .free > .bare { stroke-width: 3.5; stroke-dasharray: none; }
.drawing .band, .drawing .pawl { stroke-width: 3; }
.drawing .arrow { stroke-width: 1.6; }
.drawing .set-name { font-style: italic; }
.drawing .letter { font-weight: 700; }
.drawing .dial-rim { fill: var(--card, #fff); stroke-width: 1.6; }
.drawing .dial-held { display: none; stroke-width: 1.2; }
.drawing .held .dial-held { display: inline; }
.drawing .stop-mark { stroke-width: 4; }
.drawing .load { stroke: var(--load, #b93012); stroke-width: 3.5; }
.drawing .flow { fill: var(--load, #b93012); stroke: var(--card, #fff); stroke-width: 1.5; }
.drawing .still { stroke-width: 5; stroke-dasharray: 14 5; }
.drawing .carrying > path, .drawing .carrying .plates, .drawing .carrying .band, .drawing .carrying .pawl,
.drawing .carrying .one-way { stroke: var(--load, #b93012); stroke-width: 4; }
.drawing .weight-1, .drawing .weight-1 > path { stroke-width: 3.5; }
.drawing .weight-2, .drawing .weight-2 > path { stroke-width: 4.5; }
.drawing .weight-3, .drawing .weight-3 > path { stroke-width: 6; }
.drawing .weight-4, .drawing .weight-4 > path { stroke-width: 7.5; }
.drawing .weight-5, .drawing .weight-5 > path { stroke-width: 9; }
.drawing .free > path { stroke-dasharray: 2 6; }
.drawing .released .plates, .drawing .released .band, .drawing .released .pawl { stroke-width: 1; }
.drawing .idle .plates, .drawing .idle .band { stroke-width: 2.5; }
.drawing .circling .planet { stroke-width: 5; }
${END_LOOKS}
${LEVER_LOOKS}
${EXPLODED_LOOKS}
`.trim();
