import type { Doubt } from '../doubts/index.ts';

/**
 * Marks what the file's warnings speak of, with a sign before its name; the returned function
 * takes the marks away.
 */
export function markDoubted(svg: Element, doubts: readonly Doubt[]): () => void {
  const undo: (() => void)[] = [];
  const about = doubts.flatMap((doubt) => doubt.about);
  for (const mark of svg.querySelectorAll<SVGGraphicsElement>('[data-kind]')) {
    const [kind, name] = [mark.getAttribute('data-kind'), mark.getAttribute('data-name')];
    if (!about.some((subject) => subject.kind === kind && subject.name === name)) continue;
    mark.classList.add('doubted');
    undo.push(() => mark.classList.remove('doubted'));
    const words = mark.querySelector<SVGGraphicsElement>(':scope > text.name');
    if (!words) continue;
    const { x, y, height } = words.getBBox();
    const sign = document.createElementNS('http://www.w3.org/2000/svg', 'path');
    sign.setAttribute('class', 'plate-sign');
    sign.setAttribute('d', `M${x - 13} ${y + height - 4}l7 -13l7 13zm7 -9v4m0 2v.5`);
    mark.append(sign);
    undo.push(() => sign.remove());
  }
  return () => undo.forEach((step) => step());
}
