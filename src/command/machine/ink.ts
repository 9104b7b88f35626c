import type { Ink } from '../../telling/text/index.ts';

/** A terminal's colours, by ECMA-48 (ISO 6429), section 8.3.117: bold 1, faint 2, neither 22, … */
export const COLOURS: Ink = {
  strong: dressed(1, 22),
  faint: dressed(2, 22),
  bad: dressed(31, 39),
  odd: dressed(33, 39),
};

// What stands within and ends its own dress takes up the outer one again.
function dressed(on: number, off: number): (text: string) => string {
  const [open, close] = [`\u001b[${on}m`, `\u001b[${off}m`];
  return (text) => `${open}${text.replaceAll(close, close + open)}${close}`;
}
