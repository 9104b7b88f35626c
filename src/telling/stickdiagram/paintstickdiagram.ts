import { type StickDiagram } from './stickdiagram.ts';
import { DIAL, type Handle } from './handle.ts';
import type { Figure } from './figure.ts';
import type { Line, Piece } from './line.ts';
import {
  type DeviceStanding,
  type Group,
  hatched,
  LINE,
  linesOf,
  type Mark,
  type MemberStanding,
  round,
  type Scene,
  SIZE,
  type Standings,
  turnArrow,
} from '../scene/index.ts';

/**
 * The stick diagram as a scene: `title` names it for a screen reader, `standings` say how all
 * stands in a gear. Each dial is a group about its member that holds a group of look "dial-face"
 * to be turned by the member's angle.
 */
export function paintStickDiagram(
  drawn: StickDiagram,
  title: string = drawn.name,
  standings: Standings = NOTHING,
): Scene {
  const { width, height, caseY, axes } = drawn;
  const key = (standings.key ?? []).flatMap((text) => linesOf(text, SIZE, width - 2 * KEY_MARGIN));
  const axis = axes.map((y) => `M6 ${round(y)}H${round(width - 6)}`).join('');
  return {
    width: Math.ceil(width),
    height: Math.ceil(height) + (key.length > 0 ? (key.length + 0.5) * LINE : 0),
    title,
    marks: [
      { mark: 'path', look: 'axis', d: axis },
      { mark: 'path', look: 'case', d: hatched(10, width - 10, caseY, -1) },
      ...drawn.handles.map((handle): Mark => ({ mark: 'path', look: 'leader', d: handle.leader })),
      ...drawn.lines.map((line) => paintLine(line, standings)),
      ...drawn.figures.map((figure) => paintFigure(figure, standings)),
      ...drawn.handles.map((handle) => paintHandle(handle, standings.members.get(handle.member))),
      ...key.map((text, k): Mark => {
        const [x, y] = [KEY_MARGIN, height + (k + 1) * LINE];
        return { mark: 'words', text, look: 'key', x, y, anchor: 'start', size: SIZE };
      }),
    ],
  };
}

const KEY_MARGIN = 16;

const NOTHING: Standings = {
  members: new Map(),
  devices: new Map(),
  circling: new Set(),
  loads: new Map(),
};

// The whole body plain, and over it as much of it as the load takes.
function paintLine(line: Line, standings: Standings): Group {
  const { member, shaft, drum, branches, disc } = line;
  const standing = standings.members.get(member);
  const whole =
    along(shaft) + along(drum) + [...branches, ...(disc ? [disc] : [])].map(({ d }) => d).join('');
  const load = loadPath(line, standings.loads.get(member));
  const still = standing?.standing === 'held' ? ' still' : '';
  return {
    mark: 'group',
    look: `member${standing?.standing === 'free' ? ' free' : ''}`,
    about: { kind: 'member', name: member },
    marks: [
      { mark: 'path', look: 'line', d: whole },
      ...(load
        ? [{ mark: 'path', look: `load${weightOf(standing)}${still}`, d: load } as const]
        : []),
      ...flowArrows(line, standings.loads.get(member)),
    ],
  };
}

type Loads = ReadonlyMap<string, number>;

// On each loaded branch, which way the power goes.
function flowArrows({ shaft, drum, branches }: Line, loads?: Loads): Mark[] {
  return branches.flatMap(({ meets, on, pieces: [upright] }): Mark[] => {
    const way = loads?.get(meets) ?? 0;
    const trunk = on === 'shaft' ? shaft : drum;
    if (way === 0 || on === 'nothing' || !trunk || !upright) return [];
    const { x1: x, y1, y2 } = upright;
    if (Math.abs(y2 - y1) < 2 * ARROW) return [];
    const away = Math.abs(y1 - trunk.y1) > Math.abs(y2 - trunk.y1) ? -1 : 1;
    const point = way * away * ARROW;
    const y = (y1 + y2) / 2 - point / 2;
    const d = `M${round(x - ARROW * 0.7)} ${round(y)}h${1.4 * ARROW}L${round(x)} ${round(y + point)}Z`;
    return [{ mark: 'path', look: 'flow', d }];
  });
}

const ARROW = 15;

// The branches that are loaded, and of each trunk as much as lies between them.
function loadPath({ shaft, drum, branches, disc }: Line, loads?: Loads): string {
  if (!loads) return '';
  const loaded = branches.filter(({ meets }) => loads.has(meets));
  const taps = (on: 'shaft' | 'drum') => loaded.filter((one) => one.on === on).map(({ x }) => x);
  const [near, far] = [taps('shaft'), taps('drum')];
  if (shaft && loads.has('input')) near.push(shaft.x1);
  if (shaft && loads.has('output')) near.push(shaft.x2);
  const through = disc && near.length > 0 && far.length > 0 ? [disc] : [];
  for (const { x } of through) [near, far].forEach((list) => list.push(x));
  return along(shaft, near) + along(drum, far) + [...loaded, ...through].map(({ d }) => d).join('');
}

function along(trunk: Piece | undefined, taps = trunk ? [trunk.x1, trunk.x2] : []): string {
  if (!trunk || taps.length === 0) return '';
  return `M${round(Math.min(...taps))} ${round(trunk.y1)}H${round(Math.max(...taps))}`;
}

function paintFigure({ about, marks, names, nameX, nameY }: Figure, standings: Standings): Group {
  const device = about?.kind === 'device' ? standings.devices.get(about.name) : undefined;
  const circles = about !== undefined && standings.circling.has(about.name) ? ' circling' : '';
  const name = [...names, ...(device ? [wordOf(device)] : [])];
  const kind = about?.kind ?? 'end';
  return {
    mark: 'group',
    look: `${kind}${looks(device)}${circles}`,
    ...(about && { about }),
    marks: [
      ...marks.map((mark) => weighed(mark, about?.name ?? '', standings)),
      ...name.map((text, k): Mark => {
        const look = k < names.length ? `name ${kind}-name` : 'letter';
        return {
          mark: 'words',
          text,
          look,
          x: nameX,
          y: nameY + k * LINE,
          anchor: 'end',
          size: SIZE,
        };
      }),
    ],
  };
}

// A wheel stands as its body does in its set.
function weighed(mark: Mark, within: string, { members, loads }: Standings): Mark {
  if (mark.mark !== 'group' || mark.about?.kind !== 'member') return mark;
  const { name } = mark.about;
  const standing = members.get(name);
  const loaded = loads.get(name)?.has(within) ? ` carrying${weightOf(standing)}` : '';
  return { ...mark, look: `member${standing?.standing === 'free' ? ' free' : ''}${loaded}` };
}

function paintHandle(handle: Handle, standing: MemberStanding | undefined): Group {
  const { member, x, y, names, nameY } = handle;
  const says = standing ? [wordOf(standing)] : [];
  const circle = `M${-DIAL} 0a${DIAL} ${DIAL} 0 1 1 ${2 * DIAL} 0a${DIAL} ${DIAL} 0 1 1 ${-2 * DIAL} 0Z`;
  const lines = nameY < y ? [...says, ...names] : [...names, ...says];
  const first = nameY < y ? nameY - LINE * says.length : nameY;
  return {
    mark: 'group',
    look: `handle${looks(standing)}`,
    about: { kind: 'member', name: member },
    marks: [
      {
        mark: 'group',
        look: 'dial',
        at: { x, y },
        marks: [
          { mark: 'path', look: 'dial-rim', d: circle },
          { mark: 'path', look: 'dial-held', d: 'M-15 -15L15 15M-21 -6L6 21M-6 -21L21 6' },
          ...(standing?.way ? [turnArrow(0, 0, 9, standing.way)] : []),
          {
            mark: 'group',
            look: 'dial-face',
            at: { x: 0, y: 0, degrees: 0 },
            marks: [{ mark: 'path', look: 'stop-mark', d: `M0 ${-DIAL}V${-DIAL + 9}` }],
          },
        ],
      },
      ...lines.map((text, k): Mark => {
        const look = says.includes(text) ? 'letter' : 'name member-name';
        return { mark: 'words', text, look, x, y: first + k * LINE, anchor: 'middle', size: SIZE };
      }),
    ],
  };
}

function wordOf({ mark, says }: MemberStanding | DeviceStanding): string {
  return says === undefined ? mark : `${mark} ${says}`.trim();
}

function looks(standing: { readonly standing: string } | undefined): string {
  return standing ? ` ${standing.standing}` : '';
}

// Power by width, in steps that can be told apart on paper.
function weightOf(standing: MemberStanding | undefined): string {
  if (standing?.power === undefined || standing.power === 0) return '';
  return ` weight-${Math.max(1, Math.min(5, Math.round(standing.power * 3)))}`;
}
