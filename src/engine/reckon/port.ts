import { type Form, type Int, plus, type Rational, times, ZERO } from '../linear/index.ts';
import { type Motion, willis } from '../motion/index.ts';
import { companyOf, type MemberName } from '../train/index.ts';

/** Where a set (a company of sets that share planets) or a gear pair meets a body. */
export interface Port {
  readonly within: string;
  /** The name under which the set knows the body; planets are not ports. */
  readonly member: MemberName;
  readonly body: number;
  /** The torque on the body, as a form in the meshes' multipliers. */
  readonly torque: Form;
}

/** Every port of a train, in the order of the file. */
export function portsOf(motion: Motion): Port[] {
  const { assembly, train } = motion;
  const ports = new Map<string, Port & { torque: { at: number[]; coef: Int[] } }>();
  motion.meshes.forEach((mesh, m) => {
    const within = companyOf(train, mesh.within);
    for (const [member, torque] of willis(mesh)) {
      const body = assembly.bodyOf(member) as number;
      if (assembly.onPins.has(body)) continue;
      const key = `${body} ${within}`;
      const port = ports.get(key) ?? { within, member, body, torque: { at: [], coef: [] } };
      ports.set(key, port);
      const again = port.torque.at.indexOf(m); // two wheels of one body
      if (again < 0) {
        port.torque.at.push(m);
        port.torque.coef.push(torque);
      } else {
        port.torque.coef[again] = (port.torque.coef[again] as number) + torque;
      }
    }
  });
  return [...ports.values()];
}

/** What the meshes' multipliers come to at a port. */
export function portTorque({ torque }: Port, multipliers: readonly Rational[]): Rational {
  return torque.at.reduce((sum, mesh, k) => {
    const coef = torque.coef[k] as Int;
    return plus(sum, times(multipliers[mesh] as Rational, { num: coef, den: 1 }));
  }, ZERO);
}
