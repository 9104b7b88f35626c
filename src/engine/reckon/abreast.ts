import { type LinearForm, ONE, opposite, ZERO } from '../linear/index.ts';
import type { DeviceRow } from '../motion/index.ts';
import type { Device } from '../train/index.ts';
import { between, isSpan, type Quantity, stretched } from './quantity.ts';

/** Devices that can push between the same two bodies; the first stands for all of them. */
export type Group = readonly [Abreast, ...Abreast[]];

export interface Abreast {
  readonly device: Device;
  readonly slip: LinearForm;
  /** 1 where it is put together as the first of them is, -1 where its members change places. */
  readonly turned: 1 | -1;
  /** The only sign, as the first counts, of what it can put on the first's first member; 0: both. */
  readonly only: 1 | -1 | 0;
}

/** The devices that can push, those between the same two bodies together, in the order of the file. */
export function groupsOf(pushers: readonly DeviceRow[]): Group[] {
  const groups: [Abreast, ...Abreast[]][] = [];
  for (const { device, slip, sense, pushes } of pushers) {
    const beside = groups.find(([first]) => sameBodies(first.slip, slip));
    const turned = !beside || coefAt(beside[0].slip, slip) === slip.coef[0] ? 1 : -1;
    const only = sense === '>=' ? ((pushes * turned) as 1 | -1) : 0;
    const its = { device, slip, turned, only } as const;
    if (beside) beside.push(its);
    else groups.push([its]);
  }
  return groups;
}

/** The only sign of what they can put on the first's first member together; 0: both. */
export function onlySign([first, ...others]: Group): 1 | -1 | 0 {
  return others.every(({ only }) => only === first.only) ? first.only : 0;
}

/**
 * What each of several puts on its own first member: any part of what they carry together. A one-way
 * clutch takes no part in what would turn it free; where only one is left, it takes all.
 */
export function partsOf(group: Group, together: Quantity): [Device, Quantity][] {
  const { from, to } = isSpan(together) ? together : { from: together, to: together };
  const pulled = to === null || to.num > 0;
  const pushed = from === null || from.num < 0;
  const taking = group.filter(({ only }) => (pulled && only >= 0) || (pushed && only <= 0));
  return group.map((one): [Device, Quantity] => {
    if (group.length === 1) return [one.device, together];
    if (!taking.includes(one)) return [one.device, ZERO];
    const by = one.turned === 1 ? ONE : opposite(ONE);
    if (taking.length === 1) return [one.device, stretched(together, by)];
    const least = pushed && one.only <= 0 ? from : ZERO;
    const most = pulled && one.only >= 0 ? to : ZERO;
    return [one.device, stretched(between(least, most), by)];
  });
}

function sameBodies(one: LinearForm, other: LinearForm): boolean {
  return one.at.length === other.at.length && other.at.every((body) => one.at.includes(body));
}

// A form's coefficient where another has its first.
function coefAt({ at, coef }: LinearForm, { at: [first] }: LinearForm) {
  return coef[at.indexOf(first as number)];
}
