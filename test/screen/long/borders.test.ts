import { describe, expect, it } from 'vitest';
import { withBrowser } from '../browser.ts';

const open = withBrowser();

describe('what can be pressed', () => {
  it.each(['light', 'dark'] as const)(
    'has a border of 3:1 on what it lies on, %s',
    async (colorScheme) => {
      const { page } = await open('', { colorScheme });
      const rooms = page.locator('.head-rooms button');
      for (let k = 0; k < (await rooms.count()); k++) {
        await rooms.nth(k).click();
        await page.waitForTimeout(300);
        const faint = await page.evaluate<string[]>(FAINT);
        expect(faint, await rooms.nth(k).innerText()).toEqual([]);
      }
    },
  );
});

// The controls in sight whose border is under 3:1 (WCAG 2.2, 1.4.11, its formula of relative luminance) on
// the first ground under them; one with no border of its own is known by its words.
const FAINT = `(() => {
  const pen = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
  const known = new Map();
  const rgba = (colour) => known.get(colour) ?? known.set(colour, drawn(colour)).get(colour);
  const drawn = (colour) => {
    pen.clearRect(0, 0, 1, 1);
    pen.fillStyle = colour;
    pen.fillRect(0, 0, 1, 1);
    return pen.getImageData(0, 0, 1, 1).data;
  };
  const light = ([r, g, b]) => {
    const [x, y, z] = [r, g, b].map((part) => {
      const s = part / 255;
      return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * x + 0.7152 * y + 0.0722 * z;
  };
  const ground = (its) => {
    for (let up = its.parentElement; up; up = up.parentElement) {
      const colour = rgba(getComputedStyle(up).backgroundColor);
      if (colour[3] > 250) return colour;
    }
    return [255, 255, 255];
  };
  return [...document.querySelectorAll('button, input, select, textarea, summary')].flatMap((its) => {
    const style = getComputedStyle(its);
    const border = rgba(style.borderBlockEndColor);
    if (!its.checkVisibility() || style.borderBlockEndStyle === 'none' || border[3] === 0) return [];
    if (['range', 'checkbox', 'radio'].includes(its.type)) return [];
    const [a, b] = [light(border), light(ground(its))].toSorted((one, other) => other - one);
    const ratio = (a + 0.05) / (b + 0.05);
    return ratio < 3 ? [its.outerHTML.slice(0, 80) + ' ' + ratio.toFixed(2)] : [];
  });
})()`;
