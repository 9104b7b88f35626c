import { equal, ONE, opposite, type Rational, signOf, ZERO } from '../linear/index.ts';
import type { Motion } from '../motion/index.ts';
import {
  isSpan,
  isZero,
  type Observed,
  type Quantity,
  stretched,
  type Torques,
} from '../reckon/index.ts';
import { CASE, type Device, type MemberName, type Way } from '../train/index.ts';

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
  /** The name under which the element knows the body. */
  readonly member: MemberName;
  /** The body, by its label. */
  readonly body: MemberName;
  readonly torque: Quantity;
  /** The same in the certificate's way of carrying the load: settled. */
  readonly point: Rational;
  /** The body's in the certificate's motion. */
  readonly speed: Rational;
}

const MINUS_ONE: Rational = { num: -1, den: 1 };

/** The loaded elements in the order of the file: sets, gear pairs, devices. */
export function elementsOf(
  { assembly, devices }: Motion,
  { drawn }: Observed,
  torques: Torques,
  proved: Torques<Rational>,
): Element[] {
  const touch = (member: MemberName, torque: Quantity, point: Rational): Touch => {
    const body = assembly.bodies[assembly.bodyOf(member) as number]?.label as MemberName;
    return { member, body, torque, point, speed: drawn.get(body) ?? ZERO };
  };
  const boxes = new Map<string, Touch[]>();
  for (const [port, torque] of torques.ports) {
    if (isZero(torque)) continue;
    const box = boxes.get(port.within) ?? [];
    boxes.set(port.within, box);
    box.push(touch(port.member, torque, proved.ports.get(port) as Rational));
  }
  const elements: Element[] = [...boxes].map(([name, touches]) => ({ name, touches }));
  for (const { device } of devices) {
    const torque = torques.devices.get(device) as Quantity;
    const point = proved.devices.get(device) as Rational;
    if (isZero(torque)) continue;
    const first = touch(device.first, torque, point);
    const second = touch(device.second, stretched(torque, MINUS_ONE), opposite(point));
    // Whom a device joins is told by the bodies.
    const touches = [first, second].map((its) => ({ ...its, member: its.body }));
    elements.push({ name: device.name, device, touches });
  }
  return elements;
}

/** Whether it is the case that the element touches there. */
export function onCase({ body }: Touch): boolean {
  return body === CASE;
}

/** The way in which an element pushes a body, even where another could take the whole push. */
export function pushOf(touch: Touch): Way {
  return leanOf(touch) > 0 ? 'clockwise' : 'anticlockwise';
}

/** Whether the element takes power from a body (-1), gives it power (1) or neither (0). */
export function flowTo(touch: Touch): -1 | 0 | 1 {
  return (leanOf(touch) * signOf(touch.speed)) as -1 | 0 | 1;
}

function leanOf({ point, torque }: Touch): number {
  const takesNone = isSpan(torque) && point.num === 0;
  return takesNone ? signOf(torque.to ?? ONE) || -1 : signOf(point);
}

/** Whether nothing settles even which way it pushes one of its bodies. */
export function isUnsettled({ touches }: Element): boolean {
  return touches.some(({ torque }) => {
    if (!isSpan(torque)) return false;
    const { from, to } = torque;
    return (from === null || from.num < 0) && (to === null || to.num > 0);
  });
}

/** Whether all that it loads turns as one, at whatever speed. */
export function isSolid({ touches }: Element): boolean {
  const [first, ...others] = touches;
  return others.every(({ speed }) => equal(speed, (first as Touch).speed));
}
