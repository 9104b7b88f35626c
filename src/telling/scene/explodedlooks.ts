/**
 * How the parts of an exploded row look: faces as white as the paper, outsides a little darker,
 * bores darker still; a part that is off is empty and thin, the next one strong.
 */
export const EXPLODED_LOOKS = `
.drawing .solid-side, .drawing .solid-face, .drawing .solid-bore, .drawing .solid-through,
.drawing .solid-mark, .drawing .solid-soft { stroke-width: 1.5; }
.drawing .solid-side { fill: var(--solid-side, #e4e4e4); }
.drawing .solid-face { fill: var(--card, #fff); }
.drawing .solid-face.solid-lined { fill: var(--solid-lined, #a9a9a9); }
.drawing .solid-face.solid-soft { fill: var(--solid-side, #e4e4e4); }
.drawing .solid-bore { fill: var(--solid-bore, #bdbdbd); }
.drawing .solid-through { fill: var(--card, #fff); stroke-width: 0.9; }
.drawing .solid-line { stroke-width: 0.8; }
.drawing .solid-way { stroke-width: 3.2; stroke: var(--quiet, #555); }
.drawing .solid-mark { fill: var(--ink, #111); stroke-width: 0.6; }
.drawing .part-number { fill: var(--card, #fff); stroke-width: 1.5; }
.drawing .part-faces { fill: var(--ink, #111); stroke-width: 0; }
.drawing .exploded-axis { stroke-width: 1; stroke-dasharray: 18 5 3 5; stroke: var(--quiet, #555); }
.drawing .exploded-turn { stroke-width: 1; }
.drawing .part.off path {
  fill: var(--card, #fff); stroke: var(--quiet, #555); stroke-width: 0.9;
}
.drawing .part.off .solid-line, .drawing .part.off .part-faces { display: none; }
.drawing .part.off .part-number { stroke-width: 1; }
.drawing .part .part-done, .drawing .part.off .part-done {
  fill: none; stroke: var(--ink, #111); stroke-width: 3;
}
.drawing .part.off .part-name { fill: var(--quiet, #555); }
.drawing .part.next path { stroke-width: 2.4; }
.drawing .part.next .solid-line { stroke-width: 1.1; }
.drawing .part.next .part-number { fill: var(--ink, #111); }
.drawing .part.next .part-figure { fill: var(--card, #fff); }
.drawing .part.refused .part-number { stroke-width: 3; }
.drawing .part-figure, .drawing .part.next .part-name { font-weight: 700; }
.drawing .exploded-end { font-style: italic; }
`.trim();
