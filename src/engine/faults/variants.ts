import { type Motion, motionOf, withDevices } from '../motion/index.ts';
import type { Train } from '../train/index.ts';
import { applyFault } from './apply.ts';
import { faultText } from './every.ts';
import type { Fault } from './fault.ts';

/**
 * The motions of one train with this or that wrong. Those that differ in devices alone share
 * what was solved for their gears, which is most of the work.
 */
export class Variants {
  readonly train: Train;
  private readonly trunks = new Map<string, Motion>();
  private readonly gearFaults = new Map<Fault, boolean>();

  constructor(train: Train) {
    this.train = train;
  }

  /** Throws where a fault names what the train lacks. */
  motion(faults: readonly Fault[]): Motion {
    const ofGears = faults.filter((fault) => this.changesGears(fault));
    const trunk = this.trunk(ofGears);
    if (ofGears.length === faults.length) return trunk;
    const ofDevices = faults.filter((fault) => {
      return !ofGears.includes(fault) && this.isFitted(trunk.train, fault);
    });
    return withDevices(trunk, ofDevices.reduce(applyFault, trunk.train));
  }

  private trunk(faults: readonly Fault[]): Motion {
    const key = faults.map(faultText).join('\n');
    let motion = this.trunks.get(key);
    if (!motion) this.trunks.set(key, (motion = motionOf(faults.reduce(applyFault, this.train))));
    return motion;
  }

  // A device that went with a part that is left out can neither hold nor seize.
  private isFitted(found: Train, fault: Fault): boolean {
    if (!('device' in fault)) return true;
    const stuck = ({ devices }: Train) => devices.find(({ name }) => name === fault.device)?.stuck;
    return stuck(found) === stuck(this.train);
  }

  // An edit keeps what it does not touch.
  private changesGears(fault: Fault): boolean {
    let changes = this.gearFaults.get(fault);
    if (changes === undefined) {
      const { sets, pairs, joins } = applyFault(this.train, fault);
      const { train } = this;
      changes = sets !== train.sets || pairs !== train.pairs || joins !== train.joins;
      this.gearFaults.set(fault, changes);
    }
    return changes;
  }
}
