import {
  fraction,
  fromNumber,
  over,
  type Rational,
  toNumber,
  ZERO,
} from '../../engine/linear/index.ts';
import { type Limit, type Strength, strengthNm } from '../../engine/margin/index.ts';
import type { DeviceGrip } from '../../engine/cause/index.ts';
import type { Capacity, Train } from '../../engine/train/index.ts';
import { bandRise, type Drag } from './band.ts';
import { plateRise, type Ring } from './plate.ts';
import type { Rise } from './rise.ts';

/**
 * What each device of a train whose file tells its capacity can put on its first-named member.
 * Sizes come to torques that are no fractions: these are rounded down, by less than a millionth of
 * a newton metre for each kilopascal, from a pressure rounded up by less than a thousandth.
 */
export function limitsOf(train: Train): Limit[] {
  return (train.capacities ?? []).map(limitOf);
}

/**
 * How strong each device is beside the others, each way, in N·m at an ordinary pressure: enough to
 * tell what slips first where all have the same. No number here is what a unit holds.
 */
export function gripsOf(train: Train): DeviceGrip[] {
  return limitsOf(train).map(({ device, clockwise, anticlockwise }) => ({
    device,
    clockwise: toNumber(strengthNm(clockwise, ORDINARY_KPA)),
    anticlockwise: toNumber(strengthNm(anticlockwise, ORDINARY_KPA)),
  }));
}

const ORDINARY_KPA = fraction(800, 1);

// A device pushes back: what it holds against a clockwise push it puts on anticlockwise.
function limitOf(capacity: Capacity): Limit {
  const { device } = capacity;
  if ('faces' in capacity) {
    const { faces, friction, presses = 'uniform pressure' } = capacity;
    const [lining, piston] = [ringOf(capacity['lining mm']), ringOf(capacity['piston mm'])];
    const springsN = capacity['springs N'];
    const either = rising(plateRise({ faces, friction, lining, piston, springsN, presses }));
    return { device, clockwise: either, anticlockwise: either };
  }
  if ('tightens' in capacity) {
    const { friction, lever = 1, tightens } = capacity;
    const band = {
      drumMm: capacity['drum mm'],
      wrapDegrees: capacity['wrap degrees'],
      servo: ringOf(capacity['servo mm']),
      springsN: capacity['springs N'],
    };
    const pushed = (way: typeof tightens) => {
      const drag: Drag = way === tightens ? 'towards the anchor' : 'from the anchor';
      return rising(bandRise({ ...band, friction, lever }, drag));
    };
    return { device, clockwise: pushed('anticlockwise'), anticlockwise: pushed('clockwise') };
  }
  if ('torque Nm' in capacity) {
    const either = fixed(capacity['torque Nm']);
    return { device, clockwise: either, anticlockwise: either };
  }
  return {
    device,
    clockwise: fixed(capacity['anticlockwise Nm']),
    anticlockwise: fixed(capacity['clockwise Nm']),
  };
}

function ringOf([outerMm, innerMm]: readonly [number, number]): Ring {
  return { outerMm, innerMm };
}

function rising({ perKpaNm, fromKpa }: Rise): Strength {
  return {
    fixedNm: ZERO,
    perKpaNm: parts(perKpaNm, 1e6, Math.floor),
    fromKpa: parts(fromKpa, 1000, Math.ceil),
  };
}

function fixed(torqueNm: number): Strength {
  return { fixedNm: fromNumber(torqueNm), perKpaNm: ZERO, fromKpa: ZERO };
}

function parts(value: number, den: number, rounded: (value: number) => number): Rational {
  return over(fromNumber(rounded(value * den)), fraction(den));
}
