import { LOOKS } from './looks.ts';
import type { Group, Mark, Scene } from './scene.ts';

/** The scene as a file: SVG with its looks inside, no script, no font, no other file. */
export function toSvg(scene: Scene): string {
  const { width, height, title } = scene;
  const size = `width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" class="drawing">`,
    `<title>${escaped(title)}</title>`,
    `<style>${LOOKS}</style>`,
    ...scene.marks.map(markSvg),
    '</svg>\n',
  ].join('\n');
}

function markSvg(mark: Mark): string {
  switch (mark.mark) {
    case 'path':
      return `<path class="${mark.look}" d="${mark.d}"/>`;
    case 'words': {
      const place = `x="${round(mark.x)}" y="${round(mark.y)}" text-anchor="${mark.anchor}"`;
      return `<text class="${mark.look}" ${place} font-size="${mark.size}">${escaped(mark.text)}</text>`;
    }
    case 'group':
      return `<g${groupAttributes(mark)}>${mark.marks.map(markSvg).join('\n')}</g>`;
  }
}

function groupAttributes({ look, about, at }: Group): string {
  const attributes = [
    look ? ['class', look] : [],
    about ? ['data-kind', about.kind, 'data-name', about.name] : [],
    at ? ['transform', placement(at)] : [],
  ].flat();
  let text = '';
  for (let i = 0; i < attributes.length; i += 2) {
    text += ` ${attributes[i]}="${escaped(attributes[i + 1] ?? '')}"`;
  }
  return text;
}

/** The place of a group as the value of SVG's `transform`. */
export function placement({ x, y, degrees }: NonNullable<Group['at']>): string {
  const moved = `translate(${round(x)} ${round(y)})`;
  return degrees ? `${moved} rotate(${round(degrees)})` : moved;
}

/** Hundredths of a sheet unit are finer than any printer's dot, and keep the goldens readable. */
export function round(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}

function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
