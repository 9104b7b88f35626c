import type { MemberName } from '../../engine/train/index.ts';
import { placeWheels } from './endview.ts';
import type { EndView } from './view.ts';
import type { EndWheel } from './endwheel.ts';
import {
  asInFile,
  type Group,
  linesOf,
  type Mark,
  type MemberStanding,
  type NameOf,
  type Scene,
  type Standings,
} from '../scene/index.ts';

/** What a scene of an end view tells besides the wheels. */
export interface EndShown {
  /** How members stand, by body label. */
  readonly standings?: Pick<Standings, 'members'>;
  /** The name for a screen reader; absent: the set's. */
  readonly title?: string;
  /** Whether the title and the members stand below, with their teeth; absent: they do. */
  readonly names?: boolean;
  /** What stands below them, in whole sentences. */
  readonly notes?: readonly string[];
  /** What the reader calls members; absent: as the file does. */
  readonly nameOf?: NameOf;
}

/**
 * An end view as a scene, its members turned by `angles` (see `placeWheels`). Its groups of look
 * "end-wheel" are the view's wheels, in their order, each about its member: to turn them, write
 * what `placeWheels` says to their places. The wheel's circle tells how its member stands.
 */
export function endScene(
  view: EndView,
  angles: ReadonlyMap<MemberName, number> = new Map(),
  { standings, title = view.name, names = true, notes = [], nameOf = asInFile }: EndShown = {},
): Scene {
  const { width, height, axis, carrier, chain, wheels } = view;
  const places = placeWheels(view, angles);
  const at = { x: axis.x, y: axis.y, degrees: 0 };
  const layered = wheels.some(({ plane }) => plane > 0);
  const marks: Mark[] = wheels.map((wheel, k) => {
    const [x = 0, y = 0, degrees = 0] = places.subarray(3 * k, 3 * k + 3);
    return paintWheel(wheel, { x, y, degrees }, standings?.members.get(wheel.label), layered);
  });
  const firstPlanet = wheels.findIndex(({ kind }) => kind === 'planet');
  if (carrier?.plate && firstPlanet >= 0) {
    const standing = standings?.members.get(carrier.label);
    marks.splice(firstPlanet, 0, {
      mark: 'group',
      look: looksOf('end-carrier', standing),
      about: { kind: 'member', name: carrier.label },
      at,
      marks: [{ mark: 'path', look: 'end-plate', d: carrier.plate }],
    });
  }
  if (chain) {
    const mirrored = view.seenFrom === 'output' ? { ...at, degrees: 180 } : at;
    const line: Mark = { mark: 'path', look: 'end-chain', d: chain };
    marks.push({ mark: 'group', at: mirrored, marks: [line] });
  }
  const lines = [
    ...(names ? [title, ...namesOf(view, standings, nameOf)] : []),
    ...notes.flatMap((note) => linesOf(note, SIZE, width - 2 * LEFT)),
  ];
  lines.forEach((text, k) => {
    const y = height + LINE * (k + 1);
    marks.push({ mark: 'words', x: LEFT, y, text, look: 'name', anchor: 'start', size: SIZE });
  });
  const below = lines.length > 0 ? LINE * (lines.length + 1) : 0;
  return { width, height: height + below, title, marks };
}

const LINE = 24;
const LEFT = 14;
const SIZE = 17;

// A line a member: its name in the set, its teeth, and the name of what it is joined to.
function namesOf(
  { wheels, carrier }: EndView,
  standings: EndShown['standings'],
  nameOf: NameOf,
): string[] {
  const lines = new Map<string, { readonly member: string; readonly label: string }>();
  for (const { member, label, teeth } of wheels.toReversed()) {
    lines.set(`${nameOf(member)}${teeth > 0 ? ` ${teeth}` : ''}`, { member, label });
  }
  if (carrier) lines.set(nameOf(carrier.member), carrier);
  return [...lines].map(([line, { member, label }]) => {
    const { mark = '', says = '' } = standings?.members.get(label) ?? {};
    const joined = member === label ? '' : ` (${nameOf(label)})`;
    return [`${line}${joined}`, `${mark} ${says}`.trim()].filter(Boolean).join(' · ');
  });
}

function paintWheel(
  { kind, label, plane, outline, mark, rim, edge }: EndWheel,
  at: NonNullable<Group['at']>,
  standing: MemberStanding | undefined,
  layered: boolean,
): Group {
  // What is in front lets through what is behind it.
  const layer = plane > 0 ? ' end-behind' : layered ? ' end-front' : '';
  // A ring's teeth are the hole in its rim.
  const body = kind === 'ring' ? `${edge}${outline}` : outline;
  return {
    mark: 'group',
    look: looksOf(`end-wheel end-${kind}${layer}`, standing),
    about: { kind: 'member', name: label },
    at,
    marks: [
      { mark: 'path', look: 'end-teeth', d: body },
      ...(mark ? [{ mark: 'path', look: 'end-mark', d: mark } as const] : []),
      ...(rim ? [{ mark: 'path', look: 'end-rim', d: rim } as const] : []),
      ...(kind === 'ring' || !edge ? [] : [{ mark: 'path', look: 'end-edge', d: edge } as const]),
    ],
  };
}

function looksOf(look: string, standing: MemberStanding | undefined): string {
  return standing ? `${look} ${standing.standing}` : look;
}
