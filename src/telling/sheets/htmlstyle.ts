/**
 * How sheets look in a browser, as `STYLE` has it for the typesetter: black on white, 12-point text, thin
 * rules, letters and hatching, never a colour. A page is as large as the paper; a browser adds nothing.
 */
export const HTML_STYLE = `
:host { display: block; }
* { box-sizing: border-box; margin: 0; padding: 0; print-color-adjust: exact; }
.sheets {
  --ink: #000; --quiet: #333; --load: #000; --card: #fff; --paper: #fff; --edge: #000;
  color-scheme: only light; color: #000;
  font: 12pt/1.3 'Source Sans 3', 'Liberation Sans', Arial, sans-serif; text-align: start;
}
.sheet {
  display: grid; grid-template-rows: 27mm minmax(0, 1fr) 22mm; overflow: hidden; padding: 0 17mm;
  inline-size: var(--across); block-size: var(--down); background: #fff;
}
.sheet-wide { inline-size: var(--down); block-size: var(--across); }
.sheet-long { block-size: auto; grid-template-rows: 27mm auto 22mm; }
.sheet-head, .sheet-foot { display: flex; justify-content: space-between; gap: 8mm; }
.sheet-head { align-items: end; align-self: end; margin-block-end: 5mm; line-height: 1.15; }
.sheet-head, .sheet-foot { min-inline-size: 0; overflow-wrap: anywhere; }
.sheet-head { border-block-end: 0.6pt solid #000; padding-block-end: 1mm; }
.sheet-head > span { text-align: end; }
.sheet-foot {
  align-self: start; margin-block-start: 4mm; padding-block-start: 1mm;
  border-block-start: 0.6pt solid #000; font-size: 10pt;
}
.sheet-body { min-block-size: 0; white-space: pre-line; overflow-wrap: anywhere; }
.sheet-body > :first-child, .together > :first-child { margin-block-start: 0; }
h2 { margin-block-end: 4mm; font-size: 17pt; line-height: 1.2; }
h3 { margin-block: 6mm 2.5mm; font-size: 13pt; line-height: 1.2; }
p { margin-block: 2.2mm; line-height: 1.25; }
.look-strong, .look-warning, .look-stop { font-weight: 700; }
.look-quiet { font-size: 10.5pt; }
.look-struck { text-decoration: line-through; }
p.look-stop { border: 1.2pt solid #000; padding: 2mm; }
.sign { inline-size: 4mm; block-size: 3.7mm; margin-inline-end: 1.6mm; vertical-align: -0.4mm; }
.caution {
  display: grid; grid-template-columns: 14mm 1fr; gap: 4mm; margin-block: 4mm 5mm; padding: 4mm;
  border: 1.6pt solid #000;
}
.caution-sign { inline-size: 14mm; }
.caution-title { display: block; margin-block-end: 1mm; font-size: 13pt; }
.caution ul { padding-inline-start: 4mm; list-style-type: '– '; }
.caution li { font-weight: 600; margin-block-end: 0.9mm; line-height: 1.25; }
.caution-long ul { font-size: 9.6pt; }
table { inline-size: 100%; margin-block: 2.5mm; border-collapse: collapse; table-layout: fixed; }
th, td { padding: 1.5mm 2mm; border: 0.6pt solid #000; text-align: start; vertical-align: middle; }
th, td { line-height: 1.2; }
th { vertical-align: bottom; font-weight: 700; }
.middle { text-align: center; }
.shaded { background: #dbdbdb; }
th:has(.upright) { padding-inline: 0.5mm; }
.upright {
  display: inline-block; writing-mode: vertical-rl; rotate: 180deg; font-weight: 400; line-height: 1.05;
  text-align: start;
}
.turning { display: grid; grid-template-columns: 5.4mm 1fr; gap: 2mm; align-items: center; }
.arrow { inline-size: 5.4mm; block-size: 5.4mm; }
.tick {
  display: inline-block; flex: none; inline-size: 5mm; block-size: 5mm; border: 0.9pt solid #000;
  vertical-align: middle;
}
.ticks { list-style: none; }
.ticks > li { display: flex; gap: 2.2mm; margin-block: 1.8mm; line-height: 1.25; }
td > .ticks > li:first-child { margin-block-start: 0; }
td > .ticks > li:last-child { margin-block-end: 0; }
.fields { display: grid; grid-auto-flow: column; grid-auto-columns: minmax(0, 1fr); gap: 6mm; }
.fields { margin-block: 5mm 4mm; align-items: end; }
.field { display: flex; gap: 2mm; align-items: end; }
.field-line {
  flex: 1 1 10mm; min-block-size: 8mm; padding-block-start: 2mm; border-block-end: 0.6pt solid #000;
}
.lines { margin-block: 2mm 4mm; }
.lines > div { block-size: 8.5mm; border-block-end: 0.6pt solid #000; }
.together { margin-block: 5mm; }
figure { margin-block: 3mm; }
figure > div { margin-inline: auto; }
figure svg { display: block; inline-size: 100%; block-size: 100%; }
figcaption { margin-block-start: 2.5mm; text-align: center; }
@media screen {
  .sheets { display: grid; gap: 12px; justify-items: start; }
  .sheet { zoom: var(--fit, 1); box-shadow: 0 0 0 1px #777; }
}
@media print {
  .sheet { break-after: page; break-inside: avoid; }
  .sheet:last-child { break-after: auto; }
  .sheet-wide { page: wide; }
}
`.trim();
