import { isSpan, type Quantity } from '../../engine/flow/index.ts';
import { type Rational, toNumber } from '../../engine/linear/index.ts';
import { CASE, isApplied } from '../../engine/train/index.ts';
import {
  type Group,
  hatched,
  LINE,
  type Mark,
  round,
  type Scene,
  SIZE,
  widthOf,
} from '../scene/index.ts';
import { type Box, FIGURE, type Figured, type FigurePlace, placeFigures } from './figures.ts';
import type { LeverDevice, DiagramNode, LeverDiagram } from './leverdiagram.ts';

/** At what speeds a lever diagram is shown. Members go by the labels of their bodies. */
export interface LeverShown {
  /** One motion, in turns: where the nodes stand. A member that is not told stands still. */
  readonly drawn: ReadonlyMap<string, number>;
  /** Ranges are free: their axes show how far. */
  readonly speeds: ReadonlyMap<string, Quantity>;
  /** The friction devices that are on. */
  readonly on: ReadonlySet<string>;
  /** What stands beside a node. */
  readonly figure: (speed: number) => string;
  readonly title?: string;
  /** The speed at the top of the diagram; absent: the greatest of the drawn, and 1.25 at least. */
  readonly most?: number;
}

/**
 * A lever diagram as a scene. Each node is a group of look "lever-node" about its member, at its
 * place; `speedAt` tells the speed of a height, for a node that is pulled.
 */
export function leverScene(diagram: LeverDiagram, shown: LeverShown): Scene {
  const most = mostOf(diagram, shown);
  const y = (speed: number) => heightOf(diagram, most, speed);
  const speed = (member: string) => (member === CASE ? 0 : (shown.drawn.get(member) ?? 0));
  const nodes = diagram.levers.flat();
  const figured = diagram.levers.flatMap((lever) => {
    const rise = speed(lever.at(-1)?.member ?? CASE) - speed(lever[0]?.member ?? CASE);
    return lever.map(({ member, x }) => {
      const [at, settled] = [speed(member), shown.speeds.get(member)];
      // The speed that a free member has in one of the motions is no fact: its axis shows how far.
      const text = settled !== undefined && isSpan(settled) ? '' : shown.figure(at);
      return { member, x, y: y(at), rise, text };
    });
  });
  const ticks = ticksOf(most).map((at) => tickBox(at, y(at)));
  const sheet = { left: 2, right: diagram.width - 2, top: 2, foot: diagram.foot + 20 };
  const places = placeFigures(figured, ticks, sheet);
  return {
    width: Math.ceil(diagram.width),
    height: Math.ceil(diagram.height),
    title: shown.title ?? diagram.name,
    marks: [
      { mark: 'path', look: 'lever-zero', d: `M8 ${round(y(0))}H${round(diagram.width - 8)}` },
      ...ticksOf(most).flatMap((at) => tickMarks(at, y(at), diagram.width)),
      ...nodes.map((node) => axisOf(diagram, node)),
      ...nodes.flatMap((node) => reachOf(diagram, node, shown.speeds.get(node.member), most)),
      ...diagram.joined.map(({ member, xs }): Group => {
        const at = round(y(speed(member)));
        const d = `M${round(xs[0] ?? 0)} ${at}H${round(xs.at(-1) ?? 0)}`;
        return about('member', member, [{ mark: 'path', look: 'lever-joined', d }]);
      }),
      ...diagram.levers.flatMap((lever): Mark[] => {
        const points = lever.map(({ x, member }) => `${round(x)} ${round(y(speed(member)))}`);
        return points.length > 1
          ? [{ mark: 'path', look: 'lever-beam', d: `M${points.join('L')}` }]
          : [];
      }),
      ...diagram.devices.flatMap((device) => deviceMarks(diagram, device, shown, most)),
      ...figured.map((node, k) => nodeOf(node, places[k] as FigurePlace)),
    ],
  };
}

/** The speed at a height of a diagram that is shown, for who pulls a node there. */
export function speedAt(diagram: LeverDiagram, shown: LeverShown, height: number): number {
  const { top, foot } = diagram;
  return (((top + foot) / 2 - height) / ((foot - top) / 2)) * mostOf(diagram, shown);
}

/** The speed at the top of a diagram: the greatest that it must hold, in quarter turns. */
export function mostOf({ levers }: LeverDiagram, { drawn, most }: LeverShown): number {
  if (most !== undefined) return most;
  const speeds = levers.flat().map(({ member }) => Math.abs(drawn.get(member) ?? 0));
  return Math.max(1.25, Math.ceil(Math.max(...speeds, 0) * 4) / 4);
}

function heightOf({ top, foot }: LeverDiagram, most: number, speed: number): number {
  return (top + foot) / 2 - (speed / most) * ((foot - top) / 2);
}

function ticksOf(most: number): number[] {
  // Six a side at most: 1, 5, 10, 50, 100 turns apart.
  let step = 1;
  for (let k = 0; most / step > 6; k++) step *= k % 2 === 0 ? 5 : 2;
  const ticks: number[] = [];
  for (let at = step; at <= most; at += step) ticks.push(at, -at);
  return ticks;
}

const TICK_X = 8;

function tickText(at: number): string {
  return String(at).replace('-', '−');
}

function tickBox(at: number, y: number): Box {
  const right = TICK_X + widthOf(tickText(at), FIGURE);
  return { left: TICK_X, right, top: y - 5 - FIGURE, foot: y - 1 };
}

// A line right across, and its speed in turns on it.
function tickMarks(at: number, y: number, width: number): Mark[] {
  const [text, x] = [tickText(at), TICK_X];
  return [
    { mark: 'path', look: 'lever-tick', d: `M${x} ${round(y)}H${round(width - 8)}` },
    { mark: 'words', look: 'lever-turns', text, x, y: y - 5, anchor: 'start', size: FIGURE },
  ];
}

function axisOf({ top, foot }: LeverDiagram, node: DiagramNode): Group {
  const { x, member, names, nameX, nameY, anchor } = node;
  const low = anchor === 'start' ? nameY + (names.length - 1) * LINE : foot + 8;
  const d = `M${round(x)} ${round(top - 14)}V${round(low)}`;
  return about('member', member, [
    { mark: 'path', look: 'lever-axis', d },
    ...names.map((text, k): Mark => {
      const at = { x: nameX, y: nameY + k * LINE, anchor, size: SIZE };
      return { mark: 'words', text, look: 'name', ...at };
    }),
  ]);
}

// How far a free member may slide, to the end of the axis where nothing stops it.
function reachOf(
  diagram: LeverDiagram,
  node: DiagramNode,
  speed: Quantity | undefined,
  most: number,
) {
  if (speed === undefined || !isSpan(speed)) return [];
  const end = (of: Rational | null, open: number) => {
    return heightOf(diagram, most, Math.max(-most, Math.min(most, of ? toNumber(of) : open)));
  };
  const [high, low] = [end(speed.to, most), end(speed.from, -most)];
  const d = `M${round(node.x)} ${round(high)}V${round(low)}`;
  return [about('member', node.member, [{ mark: 'path', look: 'lever-free', d }])];
}

// A brake that is on clamps its axis at nothing; a one-way clutch is a stop on the side to which
// its first member may not pass the second; a clutch that is on ties two nodes.
function deviceMarks(
  diagram: LeverDiagram,
  { device, first, second }: LeverDevice,
  { drawn, on }: LeverShown,
  most: number,
): Group[] {
  const at = second.member === CASE ? 0 : (drawn.get(second.member) ?? 0);
  const y = heightOf(diagram, most, at);
  const { x } = first;
  if (!isApplied(device)) {
    // Of a clutch whose inner race is the case, the outer may turn the other way.
    const up = (device.lets === 'clockwise') === (device.first !== CASE);
    const stop = y + (up ? 15 : -15);
    // Only the case is hatched: another race moves, and its stop with it.
    const isCase = second.member === CASE;
    const line = `M${round(x - 16)} ${round(stop)}H${round(x + 16)}`;
    const d = isCase ? hatched(x - 16, x + 16, stop, up ? 1 : -1) : line;
    const marks: Mark[] = [{ mark: 'path', look: 'lever-stop', d }];
    if (second.member !== CASE) {
      // The stop moves with the other race: a level line says with which.
      const level = `M${round(x)} ${round(stop)}H${round(second.x)}V${round(y)}`;
      marks.push({ mark: 'path', look: 'lever-race', d: level });
    }
    return [about('device', device.name, marks)];
  }
  if (!on.has(device.name)) return [];
  const tie = `M${round(Math.min(x, second.x))} ${round(y)}H${round(Math.max(x, second.x))}`;
  const clamp = hatched(x - 16, x + 16, y - 15, -1) + hatched(x - 16, x + 16, y + 15, 1);
  const d = second.member === CASE ? clamp : tie;
  const look = second.member === CASE ? 'lever-stop' : 'lever-tie';
  return [about('device', device.name, [{ mark: 'path', look, d }])];
}

const DOT = 11;
const REACH = 22; // a target for a finger

function nodeOf(
  { member, x, y, text }: Figured & { readonly member: string },
  place: FigurePlace,
): Group {
  const circle = (r: number) => `M${-r} 0a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0Z`;
  return {
    ...about('member', member, [
      { mark: 'path', look: 'lever-reach', d: circle(REACH) },
      { mark: 'path', look: 'lever-dot', d: circle(DOT) },
      { mark: 'words', text, look: 'letter', ...place, size: FIGURE },
    ]),
    look: 'lever-node',
    at: { x, y },
  };
}

function about(kind: 'member' | 'device', name: string, marks: readonly Mark[]): Group {
  return { mark: 'group', look: kind, about: { kind, name }, marks };
}
