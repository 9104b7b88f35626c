import { differencesOf, oilOf } from '../controls/index.ts';
import { PUMP } from '../hydraulics/index.ts';
import { stateOf, underPower, vehicleOf } from '../flow/index.ts';
import { type Motion, motionOf } from '../motion/index.ts';
import { judge, portsOf } from '../reckon/index.ts';
import { companyOf, gearsOf, isApplied, outputsOf, type Train } from '../train/index.ts';
import { geometryOf } from '../teeth/index.ts';
import type { Reading } from '../trainfile/index.ts';
import { mendsOf } from './mend.ts';
import type { Misgiving, Warning } from './warning.ts';

/**
 * Warnings about a train that was read: teeth that do not go together, and parts and gears
 * that come to nothing. None where reading found errors, which are the reading's problems.
 */
export function check(reading: Reading): Warning[] {
  const { train } = reading;
  if (!train) return [];
  const motion = motionOf(train);
  const geometry = geometryOf(train).map((finding): Warning => {
    const name = 'set' in finding ? finding.set : finding.within;
    const isSet = train.sets.some((set) => set.name === name);
    const place = isSet ? reading.place('sets', name) : reading.place('gear pairs', name);
    return { ...finding, severity: 'warning', place };
  });
  const misgivings = [
    ...causes(motion),
    ...idleMembers(motion),
    ...idleDevices(motion),
    ...oddGears(motion),
    ...oddOil(train),
    ...forwardTaken(train),
  ];
  return [
    ...geometry,
    ...misgivings.map(({ finding, path }): Warning => {
      return { ...finding, severity: 'warning', place: reading.place(...path) };
    }),
  ];
}

function oddOil(train: Train): Pointed[] {
  const differ = differencesOf(train).map(({ byOil, ...its }): Pointed => {
    const does = byOil ? 'applies' : 'leaves off';
    return {
      finding: { problem: 'oil differs', ...its, does },
      path: ['ranges', its.range, its.gear],
    };
  });
  const unsettled = oilOf(train).flatMap((range) =>
    range.flatMap(({ call: { range: name, gear }, settled, race }): Pointed[] => {
      const isShort = settled.rest?.lines.get(PUMP)?.state === 'short';
      if (settled.rest && !race && !isShort) return [];
      const is = isShort ? 'short' : settled.rest ? 'race' : 'chase';
      const finding = { problem: 'oil unsettled', range: name, gear, is } as const;
      return [{ finding, path: ['controls', 'valves'] }];
    }),
  );
  return [...unsettled, ...differ];
}

// Of odd gears the one cause comes first: the one change that mends them all and makes nothing else odd.
function causes(motion: Motion): Pointed[] {
  const gears = gearsOf(motion.train);
  const odd = gears.filter((gear) => oddGear(motion, gear));
  if (odd.length === 0) return [];
  const others = (its: Motion) =>
    [...idleMembers(its), ...idleDevices(its), ...againstForward(its.train)].length;
  const before = others(motion);
  // Where most things fail is asked first.
  const asked = [...odd, ...gears.filter((gear) => !odd.includes(gear))];
  const isOdd = (its: Motion) => asked.some((gear) => oddGear(its, gear)) || others(its) > before;
  return mendsOf(motion, isOdd, odd.length).map((mend): Pointed => {
    const path = 'set' in mend ? ['sets', mend.set] : ['devices', mend.device];
    return { finding: { problem: 'one cause', gears: odd.length, ...mend }, path };
  });
}

// What was taken is said, not doubted: most vehicles have a reverse.
function forwardTaken(train: Train): Pointed[] {
  if (train.forward) return againstForward(train);
  const vehicle = vehicleOf(train);
  if (!vehicle.hasReverse) return [];
  return [{ finding: { problem: 'forward taken', way: vehicle.forward }, path: ['output'] }];
}

function againstForward(train: Train): Pointed[] {
  const { mostly } = vehicleOf(train);
  if (!train.forward || !mostly || mostly === train.forward) return [];
  return [{ finding: { problem: 'forward against', way: train.forward }, path: ['forward'] }];
}

interface Pointed {
  readonly finding: Misgiving;
  readonly path: readonly string[];
}

// A body must be touched twice to hand anything on. The ends and the case are touched from
// outside, and so may a shaft with a name of its own be: a second output, a motor's shaft.
function idleMembers(motion: Motion): Pointed[] {
  const { assembly, train } = motion;
  const touches = assembly.bodies.map((): Touch[] => []);
  for (const { within, body } of portsOf(motion)) {
    const set = train.sets.find(({ name }) => within.split(' + ').includes(name));
    touches[body]?.push({ name: within, path: set ? ['sets', set.name] : ['gear pairs', within] });
  }
  for (const { name, first, second } of train.devices) {
    for (const member of [first, second]) {
      touches[assembly.bodyOf(member) as number]?.push({ name, path: ['devices', name] });
    }
  }
  const ends = new Set([0, ...[train.input, ...outputsOf(train)].map(assembly.bodyOf)]);
  const lone = touches.map(([touch, ...others], body) => {
    return others.length > 0 || ends.has(body) ? undefined : touch;
  });
  const busy = new Set(
    touches.flatMap((all, body) => (lone[body] ? [] : all.map(({ name }) => name))),
  );
  const alone = train.sets.filter(({ name }) => !busy.has(companyOf(train, name)));
  const told = new Set(alone.map(({ name }) => companyOf(train, name)));
  return [
    ...alone.map(({ name }): Pointed => {
      return { finding: { problem: 'set stands alone', set: name }, path: ['sets', name] };
    }),
    ...lone.flatMap((touch, body): Pointed[] => {
      const member = assembly.bodies[body]?.label as string;
      if (!touch || told.has(touch.name)) return [];
      if (touch.path[0] !== 'devices' && !member.includes('.')) return [];
      const finding = { problem: 'member carries nothing', member, touched: touch.name } as const;
      return [{ finding, path: touch.path }];
    }),
  ];
}

interface Touch {
  readonly name: string;
  readonly path: readonly string[];
}

// A device whose members cannot turn against each other anyway, and one that no gear applies.
function idleDevices({ train, devices, base }: Motion): Pointed[] {
  const applied = new Set(gearsOf(train).flatMap(({ on }) => on));
  return devices.flatMap(({ device, slip }): Pointed[] => {
    const path = ['devices', device.name];
    if (base.reduce(slip).coef.every((coef) => coef === 0)) {
      return [{ finding: { problem: 'device does nothing', device: device.name }, path }];
    }
    if (!isApplied(device) || applied.size === 0 || applied.has(device.name)) return [];
    return [{ finding: { problem: 'device never applied', device: device.name }, path }];
  });
}

function oddGears(motion: Motion): Pointed[] {
  return gearsOf(motion.train).flatMap((gear) => oddGear(motion, gear) ?? []);
}

function oddGear(
  motion: Motion,
  { range, gear, on }: ReturnType<typeof gearsOf>[number],
): Pointed | undefined {
  const state = stateOf(judge(motion, underPower(motion.train, on)));
  const idle = [range, gear].some((name) => /^(n|p|neutral|park)$/i.test(name));
  const where = { range, gear };
  const path = ['ranges', range, gear];
  if (state === 'tied up') return { finding: { problem: 'gear ties up', ...where }, path };
  if (state === 'neutral' && !idle)
    return { finding: { problem: 'gear is neutral', ...where }, path };
  if (state === 'driving' && idle)
    return { finding: { problem: 'neutral drives', ...where }, path };
  return undefined;
}
