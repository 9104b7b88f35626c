import type { MemberName } from '../../engine/train/index.ts';
import { type EndView, placeWheels } from './endview.ts';
import type { EndWheel } from './endwheel.ts';
import type { Group, Mark, Scene } from './scene.ts';
import type { MemberStanding, Standings } from './standing.ts';

/**
 * An end view as a scene, its members turned by `angles` (see `placeWheels`). Its groups of look
 * "end-wheel" are the view's wheels, in their order, each about its member: to turn them, write
 * what `placeWheels` says to their places. The wheel's circle tells how its member stands.
 */
export function endScene(
  view: EndView,
  angles: ReadonlyMap<MemberName, number> = new Map(),
  standings?: Pick<Standings, 'members'>,
  title: string = view.name,
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
    const runs: Mark = { mark: 'path', look: 'end-chain', d: chain };
    marks.push({ mark: 'group', at: mirrored, marks: [runs] });
  }
  return { width, height, title, marks };
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
      ...(kind === 'ring' ? [] : [{ mark: 'path', look: 'end-edge', d: edge } as const]),
    ],
  };
}

function looksOf(look: string, standing: MemberStanding | undefined): string {
  return standing ? `${look} ${standing.standing}` : look;
}
