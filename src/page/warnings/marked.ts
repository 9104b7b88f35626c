import type { Warned } from './warnings.ts';

/**
 * Marks what the file's warnings speak of, with a sign before its name; the returned function
 * takes the marks away.
 */
export function markWarned(svg: Element, warnings: readonly Warned[]): () => void {
  const undo: (() => void)[] = [];
  const about = warnings.flatMap((warned) => warned.about);
  for (const mark of svg.querySelectorAll<SVGGraphicsElement>('[data-kind]')) {
    const [kind, name] = [mark.getAttribute('data-kind'), mark.getAttribute('data-name')];
    if (!about.some((subject) => subject.kind === kind && subject.name === name)) continue;
    mark.classList.add('warned');
    undo.push(() => mark.classList.remove('warned'));
    const words = mark.querySelector<SVGGraphicsElement>(':scope > text.name');
    if (!words) continue;
    const { x, y, height } = words.getBBox();
    const sign = document.createElementNS('http://www.w3.org/2000/svg', 'path');
    sign.setAttribute('class', 'warning-sign');
    // Before the name; above it at the edge of the sheet.
    const [left, foot] = x < 20 ? [x, y] : [x - 19, y + height - 3];
    sign.setAttribute('d', `M${left} ${foot}l8 -14l8 14zm8 -10v5m0 2.5v.5`);
    mark.append(sign);
    undo.push(() => sign.remove());
  }
  return () => undo.forEach((step) => step());
}
