/**
 * How end views look. A wheel's standing is on its circle, not on its teeth: strong where it
 * carries, broken and strong where it is held, dotted where it is free. A bevel pinion's is on
 * its pin.
 */
export const END_LOOKS = `
.drawing .end-teeth { fill: var(--card, #fff); fill-rule: evenodd; stroke-linejoin: miter; }
.drawing .end-wheel > .end-teeth, .drawing .end-wheel > .end-edge {
  stroke: var(--ink, #111); stroke-width: 1.4; stroke-dasharray: none;
}
.drawing .end-wheel.carrying > .end-teeth { stroke: var(--load, #b93012); stroke-width: 1.8; }
.drawing .end-behind > .end-teeth { stroke-width: 1; stroke: var(--quiet, #555); }
.drawing .end-front > .end-teeth { fill-opacity: 0.5; }
.drawing .end-pinion > .end-teeth { fill-rule: nonzero; fill-opacity: 1; }
.drawing .end-wheel > .end-mark { fill: var(--ink, #111); stroke: none; }
.drawing .end-edge { fill: var(--card, #fff); }
.drawing .end-planet > .end-edge { fill: var(--ink, #111); stroke: none; }
.drawing .end-rim { stroke-width: 0.8; stroke: var(--quiet, #555); }
.drawing .end-pinion > .end-rim { stroke-width: 6; stroke: var(--ink, #111); }
.drawing .end-plate {
  fill: var(--line, #ddd); fill-opacity: 0.5; fill-rule: evenodd;
  stroke-width: 1; stroke: var(--quiet, #555);
}
.drawing .races-ring { fill: var(--line, #ddd); fill-rule: evenodd; stroke-width: 1.4; }
.drawing .races-jam { fill: var(--card, #fff); stroke-width: 1.8; }
.drawing .races-ramp { fill: var(--line, #ddd); stroke-width: 1.2; }
.drawing .end-chain { stroke-width: 3; }
.drawing .carrying > .end-rim { stroke: var(--load, #b93012); stroke-width: 5; }
.drawing .held > .end-rim { stroke: var(--ink, #111); stroke-width: 6; stroke-dasharray: 14 6; }
.drawing .free > .end-rim { stroke: var(--ink, #111); stroke-width: 2; stroke-dasharray: 2 6; }
.drawing .carrying > .end-plate { stroke: var(--load, #b93012); stroke-width: 4; }
.drawing .held > .end-plate { stroke: var(--ink, #111); stroke-width: 5; stroke-dasharray: 14 6; }
.drawing .free > .end-plate { stroke: var(--ink, #111); stroke-dasharray: 2 6; }
`.trim();
