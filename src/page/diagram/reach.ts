const RIM = 22; // sheet units, as the dial is drawn
const MOST = 40;

/**
 * Makes each dial and device a target for a finger in a glove, wherever the sheet is drawn
 * smaller than it is: round a dial half the way to the next one, round a device its own box.
 */
export function widenReach(svg: SVGSVGElement): void {
  const dials = [...svg.querySelectorAll<SVGGraphicsElement>('.dial')];
  const middles = dials.map((dial) => dial.transform.baseVal.consolidate()?.matrix);
  dials.forEach((dial, k) => {
    const [here, rest] = [middles[k], middles.filter((_, other) => other !== k)];
    const away = rest.map((there) => {
      return here && there ? Math.hypot(here.e - there.e, here.f - there.f) : MOST * 2;
    });
    const r = Math.max(RIM, Math.min(MOST, ...away.map((distance) => distance / 2)));
    put(dial, 'circle', { r });
  });
  for (const device of svg.querySelectorAll<SVGGraphicsElement>('.device')) {
    const boxes = [...device.querySelectorAll<SVGGraphicsElement>(SYMBOL)].map((part) =>
      part.getBBox(),
    );
    if (boxes.length === 0) continue;
    const x = Math.min(...boxes.map((box) => box.x));
    const y = Math.min(...boxes.map((box) => box.y));
    const width = Math.max(...boxes.map((box) => box.x + box.width)) - x;
    const height = Math.max(...boxes.map((box) => box.y + box.height)) - y;
    put(device, 'rect', { x, y, width, height });
  }
}

const SYMBOL = '.plates, .band, .one-way';

function put(within: Element, shape: 'circle' | 'rect', sizes: Record<string, number>): void {
  const there = within.querySelector('.diagram-reach');
  const reach = there ?? document.createElementNS('http://www.w3.org/2000/svg', shape);
  reach.setAttribute('class', 'diagram-reach');
  for (const [name, size] of Object.entries(sizes)) reach.setAttribute(name, size.toFixed(1));
  if (!there) within.append(reach);
}
