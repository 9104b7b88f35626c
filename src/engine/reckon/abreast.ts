import { type Form, ZERO } from '../linear/index.ts';
import { between, isSpan, type Quantity, stretched } from './quantity.ts';
import { canPush, firstSign, type Verdict } from './verdict.ts';

/** A device that can push, beside others between the same two bodies. */
export interface Abreast {
  /** Its place among the devices. */
  readonly device: number;
  /** 1 where it is put together as the first of them is, -1 where its members change places. */
  readonly turned: 1 | -1;
  /** The only sign, as the first counts, of what it can put on the first's first member; 0: both. */
  readonly only: 1 | -1 | 0;
}

/** The devices that can push, those between the same two bodies together, in the order of the file. */
export function abreastOf(verdict: Verdict, slips: readonly Quantity[]): Abreast[][] {
  const { motion, posed } = verdict;
  const groups: Abreast[][] = [];
  const firsts: Form[] = [];
  motion.devices.forEach(({ slip }, device) => {
    if (!canPush(verdict, device, slips)) return;
    const at = firsts.findIndex((form) => sameBodies(form, slip));
    const turned = at < 0 || coefAt(firsts[at] as Form, slip) === slip.coef[0] ? 1 : -1;
    const row = posed.programme.rows[posed.deviceRow[device] as number];
    const only = row?.sense === '>=' ? ((firstSign(motion, posed, device) * turned) as 1 | -1) : 0;
    const its = { device, turned, only } as const;
    if (at >= 0) groups[at]?.push(its);
    else {
      firsts.push(slip);
      groups.push([its]);
    }
  });
  return groups;
}

/** The only sign of what they can put on the first's first member together; 0: both. */
export function onlySign(abreast: readonly Abreast[]): 1 | -1 | 0 {
  const [first] = abreast;
  return abreast.every(({ only }) => only === first?.only) ? (first?.only ?? 0) : 0;
}

/**
 * What each of several puts on its own first member: any part of what they carry together. A one-way
 * clutch takes no part in what would turn it free; where only one is left, it takes all.
 */
export function partsOf(abreast: readonly Abreast[], together: Quantity): Quantity[] {
  const { from, to } = isSpan(together) ? together : { from: together, to: together };
  const pulled = to === null || to.num > 0;
  const pushed = from === null || from.num < 0;
  const taking = abreast.filter(({ only }) => (pulled && only >= 0) || (pushed && only <= 0));
  return abreast.map((one) => {
    if (!taking.includes(one)) return ZERO;
    const by = one.turned === 1 ? ONE : MINUS_ONE;
    if (taking.length === 1) return stretched(together, by);
    const least = pushed && one.only <= 0 ? from : ZERO;
    const most = pulled && one.only >= 0 ? to : ZERO;
    return stretched(between(least, most), by);
  });
}

const ONE = { num: 1, den: 1 };
const MINUS_ONE = { num: -1, den: 1 };

function sameBodies(one: Form, other: Form): boolean {
  return one.at.length === other.at.length && other.at.every((body) => one.at.includes(body));
}

// A form's coefficient where another has its first.
function coefAt({ at, coef }: Form, { at: [first] }: Form) {
  return coef[at.indexOf(first as number)];
}
