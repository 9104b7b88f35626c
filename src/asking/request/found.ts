import {
  applyFault,
  everyFault,
  type Fault,
  faultNamed,
  faultText,
} from '../../engine/faults/index.ts';
import { oilOf } from '../../engine/controls/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { trainLoaded } from './loads.ts';
import { meant, split, unknown } from './names.ts';
import { NoAnswer } from './refused.ts';

/** What of a train is not as its file says, in a person's words. */
export interface AsFound {
  /** Each as in "low sprag: backwards". */
  readonly fault?: readonly string[];
  /** Parts that are left out, with commas between. */
  readonly without?: string;
  /** How outputs stand, each as in "left half shaft: held". */
  readonly load?: readonly string[];
}

/** The train of a file, so loaded, with these faults and without these parts. */
export function trainAsFound(file: Train, { fault = [], without = '', load }: AsFound): Train {
  const train = trainLoaded(file, load);
  const fitted = [...train.devices, ...train.pairs, ...train.sets].map(({ name }) => name);
  const parts = [...fitted, ...train.joins.map(({ name }) => name)];
  const missing = split(without, parts, train).map((given) => {
    const name = meant(given, parts, train);
    if (name === undefined) throw new NoAnswer({ refused: 'no.part', ...unknown(given, parts) });
    return fitted.includes(name) ? `${name}: left out` : `${name}: stripped`;
  });
  const faults = [...missing, ...fault].map((text) => faultOf(train, text, 'fault'));
  faults.forEach((one, k) => {
    const before = faults.slice(0, k).find((other) => ofOneThing(one, other));
    if (!before) return;
    const [given, other] = [faultText(one), faultText(before)];
    throw new NoAnswer({ refused: 'bad.fault twice', given, before: other });
  });
  const found = faults.reduce(applyFault, train);
  if (found.oilFaults) refuseChase(found);
  return found;
}

// Where nothing comes to rest nobody can say what is applied: that is no neutral.
function refuseChase(train: Train): void {
  for (const { call, settled } of oilOf(train).flat()) {
    if (settled.rest) continue;
    throw new NoAnswer({ refused: 'bad.oil chase', gear: `${call.range} ${call.gear}` });
  }
}

// A device that is backwards twice would be right again; one that slips and sticks is no device.
function ofOneThing(a: Fault, b: Fault): boolean {
  if ('device' in a && 'device' in b) return a.device === b.device;
  // A solenoid, a valve or a line is wrong in one way at a time; wires are crossed beside it.
  if (a.what === 'oil' && b.what === 'oil' && a.part !== 'wires') {
    return a.part === b.part && a.name === b.name;
  }
  return faultText(a) === faultText(b);
}

/** The only faults that are asked about, with commas between. */
export function faultsOf(train: Train, text: string): Fault[] {
  return split(text, everyFault(train, { slipping: true }).map(faultText)).map((one) =>
    faultOf(train, one, 'only'),
  );
}

function faultOf(train: Train, text: string, of: 'fault' | 'only'): Fault {
  const colon = text.lastIndexOf(':');
  const given = colon < 0 ? text : text.slice(0, colon);
  const read = faultNamed(text, train);
  if ('fault' in read) return read.fault;
  if (read.unknown === 'name') {
    const name = meant(given, read.known, train);
    if (name !== undefined && name !== given.trim() && colon >= 0) {
      return faultOf(train, `${name}${text.slice(colon)}`, of);
    }
    throw new NoAnswer({ refused: 'no.fault name', ...unknown(read.said, read.known), of });
  }
  const place = read.unknown === 'place' ? meant(read.said, read.known, train) : undefined;
  if (place !== undefined && place !== read.said) {
    return faultOf(train, `${given}: stripped at ${place}`, of);
  }
  const refused = read.unknown === 'fault' ? 'no.fault' : 'no.fault place';
  throw new NoAnswer({ refused, ...unknown(read.said, read.known), name: given.trim() });
}
