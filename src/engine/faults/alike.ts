import type { DeviceRow, Motion } from '../motion/index.ts';
import { reachOf } from './reach.ts';

/**
 * Tells which trains with this or that wrong come to the same thing with some devices applied: a
 * gear that applies a device and a fault that never releases it, any wheel of a set without its
 * teeth. By `reach` their states and ratios are the same, else all that they do.
 */
export class Alike {
  private readonly by: 'reach' | 'gears';
  private readonly bases = new WeakMap<Motion['base'], number>();
  private readonly reaches = new Map<string, number>();
  private count = 0;

  constructor(by: 'reach' | 'gears') {
    this.by = by;
  }

  /** The same text for what comes to the same thing; the devices are those of one train. */
  textOf(motion: Motion, on: readonly string[]): string {
    return `${this.kinOf(motion)} ${rowsOf(motion, on)}`;
  }

  private kinOf(motion: Motion): number {
    let kin = this.bases.get(motion.base);
    if (kin === undefined) {
      kin = this.by === 'gears' ? this.count++ : this.reached(reachOf(motion));
      this.bases.set(motion.base, kin);
    }
    return kin;
  }

  private reached(reach: string): number {
    const kin = this.reaches.get(reach) ?? this.count++;
    this.reaches.set(reach, kin);
    return kin;
  }
}

// A letter a device: which row it has, if any.
function rowsOf({ devices }: Motion, on: readonly string[]): string {
  const letter = (row: DeviceRow | undefined) => {
    if (!row) return '-';
    if (row.sense === '=') return '=';
    return row.pushes > 0 ? '>' : '<';
  };
  return devices
    .map(({ device, whenOn, whenOff }) => letter(on.includes(device.name) ? whenOn : whenOff))
    .join('');
}
