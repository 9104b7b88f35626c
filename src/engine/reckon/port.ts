import { plus, type Rational, times, ZERO } from '../linear/index.ts';
import { type Motion, willis } from '../motion/index.ts';
import { CASE, companyOf, type MemberName, type Mesh } from '../train/index.ts';

/** Where a set (a company of sets that share planets) or a gear pair meets a body. */
export interface Port {
  readonly within: string;
  /** The name under which the set knows the body; planets are not ports. */
  readonly member: MemberName;
  readonly body: number;
  /** The torque on the body: the multipliers of some meshes, each so many times. */
  readonly terms: readonly (readonly [mesh: Mesh, times: number])[];
}

/**
 * Every port of a train, in the order of the file. The case itself, which a gear pair bears against,
 * is a port apart from a wheel that is made fast to it.
 */
export function portsOf({ assembly, train, meshes }: Motion): Port[] {
  const ports = new Map<string, Port & { readonly terms: [Mesh, number][] }>();
  for (const { mesh } of meshes) {
    const within = companyOf(train, mesh.within);
    for (const [member, torque] of willis(mesh)) {
      const body = assembly.bodyOf(member) as number;
      if (assembly.onPins.has(body)) continue;
      const key = `${member === CASE ? CASE : body} ${within}`;
      const port = ports.get(key) ?? { within, member, body, terms: [] };
      ports.set(key, port);
      port.terms.push([mesh, torque]);
    }
  }
  return [...ports.values()];
}

/** What the meshes' multipliers come to at a port. */
export function portTorque({ terms }: Port, multipliers: ReadonlyMap<Mesh, Rational>): Rational {
  return terms.reduce((sum, [mesh, num]) => {
    return plus(sum, times(multipliers.get(mesh) as Rational, { num, den: 1 }));
  }, ZERO);
}
