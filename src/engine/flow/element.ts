import { opposite, type Rational, ZERO } from '../linear/index.ts';
import type { Motion } from '../motion/index.ts';
import { isSpan, isZero, type Port, type Quantity, stretched } from '../reckon/index.ts';
import type { Device, MemberName, Way } from '../train/index.ts';
import type { Carried } from './carried.ts';

/**
 * A thing that hands load from body to body: a set (or sets that share planets), a gear pair
 * or a device. Only what carries load is an element.
 */
export interface Element {
  readonly name: string;
  readonly device?: Device;
  readonly touches: readonly Touch[];
}

/** What an element puts on a body. */
export interface Touch {
  readonly member: MemberName;
  readonly body: number;
  readonly torque: Quantity;
  /** The same in the certificate's way of carrying the load: settled. */
  readonly point: Rational;
}

const MINUS_ONE: Rational = { num: -1, den: 1 };

/** The loaded elements in the order of the file: sets, gear pairs, devices. */
export function elementsOf(motion: Motion, ports: readonly Port[], carried: Carried): Element[] {
  const boxes = new Map<string, Touch[]>();
  ports.forEach(({ within, member, body }, k) => {
    const touch = {
      member,
      body,
      torque: carried.ports[k] ?? ZERO,
      point: carried.point.ports[k] ?? ZERO,
    };
    if (isZero(touch.torque)) return;
    const box = boxes.get(within);
    if (box) box.push(touch);
    else boxes.set(within, [touch]);
  });
  const elements: Element[] = [...boxes].map(([name, touches]) => ({ name, touches }));
  motion.devices.forEach(({ device }, d) => {
    const point = carried.point.devices[d] ?? ZERO;
    const torque = carried.devices[d] ?? ZERO;
    if (isZero(torque)) return;
    const label = (member: MemberName) => {
      const body = motion.assembly.bodyOf(member) as number;
      return { member: motion.assembly.bodies[body]?.label ?? member, body };
    };
    const touches = [
      { ...label(device.first), torque, point },
      { ...label(device.second), torque: stretched(torque, MINUS_ONE), point: opposite(point) },
    ];
    elements.push({ name: device.name, device, touches });
  });
  return elements;
}

/** The way in which an element pushes a body, even where another could take the whole push. */
export function pushOf({ point, torque }: Touch): Way {
  const leans = isSpan(torque) && point.num === 0 ? (torque.to?.num ?? 1) : point.num;
  return leans > 0 ? 'clockwise' : 'anticlockwise';
}
