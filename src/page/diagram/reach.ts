const RIM = 22; // sheet units, as the dial is drawn
const MOST = 40;
const INWARD = 36; // from the middle of a dial to the foot of the drawing
const FINGER = 46; // pixels, whatever the sheet is drawn at

/**
 * Makes each dial and device a target for a finger in a glove, wherever the sheet is drawn
 * smaller than it is, and again when it is drawn larger: round a dial half the way to the next
 * one and over its name, round a device its own box. Returns what ends it.
 */
export function widenReach(svg: SVGSVGElement): () => void {
  const watch = new ResizeObserver(() => widen(svg));
  watch.observe(svg);
  widen(svg);
  return () => watch.disconnect();
}

function widen(svg: SVGSVGElement): void {
  const dials = [...svg.querySelectorAll<SVGGraphicsElement>('.dial')];
  const middles = dials.map((dial) => dial.transform.baseVal.consolidate()?.matrix);
  const finger = FINGER / (svg.getScreenCTM()?.a || 1);
  dials.forEach((dial, k) => {
    const here = middles[k];
    if (!here) return;
    const beside = middles.flatMap((there, other) => {
      if (!there || other === k || Math.abs(there.f - here.f) >= finger) return [];
      return (there.e - here.e) / 2;
    });
    const left = Math.min(...beside.filter((away) => away < 0).map((away) => -away));
    const right = Math.min(...beside.filter((away) => away >= 0));
    const most = Math.max(MOST, finger / 2);
    // Where one side is short of room, the other makes up for it.
    const before = Math.max(RIM, Math.min(left, Math.max(most, finger - right)));
    const behind = Math.max(RIM, Math.min(right, Math.max(most, finger - left)));
    const high = Math.max(2 * RIM, finger);
    const inward = Math.min(high / 2, INWARD);
    // Its name is on the side that is away from the drawing.
    const y = nameIsAbove(dial) ? inward - high : -inward;
    put(dial, { x: -before, y, width: before + behind, height: high });
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
    put(device, { x, y, width, height });
  }
}

function nameIsAbove(dial: SVGGraphicsElement): boolean {
  const name = dial.parentElement?.querySelector<SVGTextElement>(':scope > text');
  const at = dial.transform.baseVal.consolidate()?.matrix;
  return name !== null && name !== undefined && Number(name.getAttribute('y')) < (at?.f ?? 0);
}

const SYMBOL = '.plates, .band, .one-way';

function put(within: Element, sizes: Record<string, number>): void {
  const there = within.querySelector('.diagram-reach');
  const reach = there ?? document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  reach.setAttribute('class', 'diagram-reach');
  for (const [name, size] of Object.entries(sizes)) reach.setAttribute(name, size.toFixed(1));
  if (!there) within.append(reach);
}
