import type { Capacity, DeviceKind, Train } from '../train/index.ts';
import type { Findings } from '../yaml/index.ts';
import { CAPACITY, SIZED_DEVICE, listed, type PlaceOf } from '../entries/index.ts';

export const CAPACITIES = listed({
  key: 'capacities',
  field: 'capacities',
  as: 'device',
  name: SIZED_DEVICE,
  entry: CAPACITY,
  description: 'How much each device can carry, by device.',
  checkSound: checkCapacities,
});

// Rings that are inside out, and sizes that are another kind of device's.
function checkCapacities(train: Train, at: PlaceOf, findings: Findings): void {
  for (const capacity of train.capacities ?? []) {
    const { device } = capacity;
    for (const key of ['lining mm', 'piston mm', 'servo mm'] as const) {
      const [outer, inner] = (capacity as Rings)[key] ?? [1, 0];
      if (inner < outer) continue;
      findings.error(at('capacities', device, key), { problem: 'inside out', outer, inner });
    }
    const kind = train.devices.find(({ name }) => name === device)?.kind;
    if (kind && !SIZES[kind].includes(sizeOf(capacity))) {
      findings.error(at('capacities', device), { problem: 'other kind', device, kind });
    }
  }
}

// What each kind of device may be told by: its sizes, one torque for both ways, or one each way.
const SIZES: Readonly<Record<DeviceKind, readonly ReturnType<typeof sizeOf>[]>> = {
  clutch: ['plates', 'one torque', 'torques'],
  brake: ['plates', 'one torque', 'torques'],
  band: ['drum', 'one torque', 'torques'],
  pawl: ['one torque', 'torques'],
  'one-way': ['one torque'],
};

function sizeOf(capacity: Capacity): 'plates' | 'drum' | 'one torque' | 'torques' {
  if ('faces' in capacity) return 'plates';
  if ('tightens' in capacity) return 'drum';
  return 'torque Nm' in capacity ? 'one torque' : 'torques';
}

type Rings = {
  readonly [key in 'lining mm' | 'piston mm' | 'servo mm']?: readonly [number, number];
};
