import { gearsOf } from '../train/index.ts';
import type { Cause } from './cause.ts';
import { type Road, SOUND } from './road.ts';
import type { Bare, DeviceGrip } from './manner.ts';

// From nearly nothing to nearly all of it, close enough that two gears which ask for different
// torques are parted; what hardly holds is as good as dead, and counted there.
const STRENGTHS = Array.from({ length: 26 }, (_, k) => 0.98 * 0.87 ** k);

// A car is brought while it still drives: what has lost little is as frequent as what has lost
// much, so that on steps of equal proportion a strength weighs as much as it is.
function weightOf(strength: number, among: readonly number[]): number {
  return strength / among.reduce((sum, its) => sum + its, 0);
}

// Wrong fluid and lining hold more cold; a shrunken seal less.
const COLD = [
  { cold: 0.7, share: 0.75 },
  { cold: 1.4, share: 0.25 },
];
const BACK = [1, 1.5];
// A leak takes little of what the pump gives, and now and then so much that the others want it.
const ENOUGH = [{ share: 1, starves: undefined }];
const STARVING = [
  { share: 0.8, starves: undefined },
  { share: 0.2, starves: 0.45 },
];
// A band holds two to four times better with its wrap than against it.
const WRAPS = [2, 3, 4];

/** The manners of a device that holds with a part of its strength. */
export function weakWays(
  device: string,
  cause: Cause,
  road: Road,
  grips: readonly DeviceGrip[],
): Bare[] {
  const leaks = cause.cause === 'device leaks';
  const starving = leaks ? STARVING : ENOUGH;
  const strengths = leaks ? STRENGTHS.filter((_, k) => k % 2 === 0) : STRENGTHS;
  const backs = worksBothWays(device, road) ? BACK : [1];
  const manners = gripsOf(device, road, grips).flatMap(({ share: gripped, ...grip }) =>
    backs.flatMap((back) => {
      const most = mostAsked(device, grip, back, road);
      const scaled = {
        device,
        clockwise: grip.clockwise * most,
        anticlockwise: grip.anticlockwise * most,
      };
      return COLD.flatMap(({ cold, share }) =>
        strengths.flatMap((strength) =>
          starving.map(({ starves, share: starved }): Bare => {
            const weak = { device, strength, cold, grip: scaled, back };
            return {
              share: (gripped * share * starved * weightOf(strength, strengths)) / backs.length,
              faults: SOUND,
              weak: [{ ...weak, ...(starves !== undefined && { starves }) }],
            };
          }),
        ),
      );
    }),
  );
  return manners;
}

// Whether gears of both ways load the device: only then the pressure in reverse makes a difference.
function worksBothWays(device: string, road: Road): boolean {
  const back = gearsOf(road.train).flatMap(({ on }) => {
    const torque = road.torques(SOUND, on, 'under power').get(device)?.most ?? 0;
    return torque === 0 ? [] : [road.goesBack(on)];
  });
  return new Set(back).size > 1;
}

// As the file says; else a band holds one way better, and nobody has said which.
function gripsOf(device: string, { train }: Road, grips: readonly DeviceGrip[]) {
  const known = grips.find((grip) => grip.device === device);
  if (known) return [{ ...known, share: 1 }];
  const even = { device, clockwise: 1, anticlockwise: 1 };
  const band = train.devices.some(({ name, kind }) => name === device && kind === 'band');
  if (!band) return [{ ...even, share: 1 }];
  const share = 1 / (2 * WRAPS.length + 1);
  const wrapped = WRAPS.flatMap((wrap) => [
    { ...even, clockwise: wrap, share },
    { ...even, anticlockwise: wrap, share },
  ]);
  return [{ ...even, share }, ...wrapped];
}

// What the gear that asks most of it asks under power, over what it could carry there.
function mostAsked(device: string, grip: DeviceGrip, back: number, road: Road): number {
  const asked = gearsOf(road.train).map(({ on }) => {
    const torque = road.torques(SOUND, on, 'under power').get(device);
    return over(torque?.least ?? 0, grip) / (road.goesBack(on) ? back : 1);
  });
  return Math.max(...asked, 0) || 1;
}

/** A torque on the first-named member, over what a device can put there that way. */
export function over(torque: number, { clockwise, anticlockwise }: DeviceGrip): number {
  return torque > 0 ? torque / clockwise : -torque / anticlockwise;
}

const NO_GRIP: DeviceGrip = { device: '', clockwise: 1, anticlockwise: 1 };

/** The manners of low line pressure. */
export function lineWays(): Bare[] {
  // Hot oil leaks more: a worn pump is good cold.
  const colds = [0.4, 1];
  return colds.flatMap((cold) =>
    STRENGTHS.map((strength): Bare => {
      const share = weightOf(strength, STRENGTHS) / colds.length;
      return { share, faults: SOUND, weak: [{ strength, cold, grip: NO_GRIP, back: 1 }] };
    }),
  );
}
