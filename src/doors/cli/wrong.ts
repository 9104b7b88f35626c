import {
  applyFault,
  everyFault,
  type Fault,
  faultNamed,
  faultText,
} from '../../engine/faults/index.ts';
import { compare, fromText, ONE, type Rational, signOf } from '../../engine/linear/index.ts';
import { type MeshEfficiency, USUAL_EFFICIENCY } from '../../engine/flow/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { trainLoaded } from './loads.ts';
import { meant, split, suggestion } from './names.ts';
import { Refusal } from './refusal.ts';
import type { Options } from './session.ts';

/** The train with outputs as --load says, what --fault says is wrong, and without the parts of --without. */
export function trainAsFound(file: Train, { fault = [], without = '', load }: Options): Train {
  const train = trainLoaded(file, load);
  const fitted = [...train.devices, ...train.pairs, ...train.sets].map(({ name }) => name);
  const joins = train.joins.map(({ name }) => name);
  const missing = split(without, [...fitted, ...joins]).map((given) => {
    const name = meant(given, [...fitted, ...joins]);
    if (name === undefined) throw new Refusal('no.part', suggestion(given, [...fitted, ...joins]));
    return fitted.includes(name) ? `${name}: left out` : `${name}: stripped`;
  });
  return [...missing, ...fault].reduce((found, text) => withFault(found, text), train);
}

function withFault(train: Train, text: string): Train {
  return applyFault(train, faultOf(train, text, '--fault'));
}

/** The faults of --only, with commas between. */
export function faultsOf(train: Train, text: string): Fault[] {
  return split(text, everyFault(train).map(faultText)).map((one) => faultOf(train, one, '--only'));
}

function faultOf(train: Train, text: string, option: string): Fault {
  const colon = text.lastIndexOf(':');
  const given = colon < 0 ? text : text.slice(0, colon);
  const read = faultNamed(text, train);
  if ('fault' in read) return read.fault;
  if (read.unknown === 'name') {
    const name = meant(given, read.known);
    if (name !== undefined && name !== given.trim() && colon >= 0) {
      return faultOf(train, `${name}${text.slice(colon)}`, option);
    }
    throw new Refusal('no.fault name', { ...suggestion(read.said, read.known), option });
  }
  const values = {
    ...suggestion(read.said, read.known),
    all: read.known.join(', '),
    name: given.trim(),
  };
  throw new Refusal(read.unknown === 'fault' ? 'no.fault' : 'no.fault place', values);
}

/** The efficiencies of --mesh-efficiency, the usual ones where it says nothing. */
export function lossesOf({ meshEfficiency }: Options): MeshEfficiency {
  if (meshEfficiency === undefined) return USUAL_EFFICIENCY;
  const losses: { external: Rational; internal: Rational } = { ...USUAL_EFFICIENCY };
  for (const part of meshEfficiency.split(',')) {
    const [, kind = '', value = ''] = /^\s*(external|internal)\s*=(.*)$/i.exec(part) ?? [];
    const efficiency = fromText(value);
    if (!efficiency || signOf(efficiency) <= 0 || compare(efficiency, ONE) > 0) {
      throw new Refusal('bad.efficiency', { given: meshEfficiency });
    }
    losses[kind.toLowerCase() as 'external' | 'internal'] = efficiency;
  }
  return losses;
}
