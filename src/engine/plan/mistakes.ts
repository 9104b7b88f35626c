import { applyFault, type Fault } from '../faults/index.ts';
import {
  carriersOf,
  CASE,
  coversOf,
  type Device,
  type Join,
  onePiece,
  ownName,
  type Part,
  piecesOf,
  type Train,
} from '../train/index.ts';
import type { Inspection, Mistake, Slip, Watched } from './answer.ts';

/** A mistake before it is known what catches it. */
export type Made = Omit<Watched, 'caughtBy'> & {
  /** What catches it where no hand can. */
  readonly inspection: Inspection;
};

/** Everything that the builder of a train can get wrong, in the order of the steps. */
export function mistakesOf(train: Train): Made[] {
  const { teardown = [] } = train;
  const stepOf = (part: Part) => teardown.length - teardown.indexOf(part);
  const byName = new Map(teardown.map((part) => [part.name, part]));
  // A part can be reached until the first of its covers goes on.
  const rightUntil = (part: Part) => {
    const covers = coversOf(teardown, part).map((name) => stepOf(byName.get(name) as Part));
    return Math.min(...covers.map((step) => step - 1), teardown.length);
  };
  const made = (mistake: Mistake, inspection: Inspection, part: Part): Made => {
    return {
      mistake,
      inspection,
      part: part.name,
      made: stepOf(part),
      rightUntil: rightUntil(part),
    };
  };
  const carriers = carriersOf(train);
  const inDevices = train.devices.flatMap((device): Made[] => {
    const parts = piecesOf(device).flatMap((piece) => carriers.get(piece) ?? []);
    const [part] = parts;
    // A clutch that is in two races is put right as long as both can be reached.
    if (!part) return [];
    const until = Math.min(...parts.map(rightUntil));
    const last = parts.reduce((a, b) => (stepOf(a) > stepOf(b) ? a : b));
    return deviceMistakes(device).map(([fault, inspection]) => {
      const its = made(fault, inspection, part);
      return { ...its, made: stepOf(last), rightUntil: Math.max(until, stepOf(last)) };
    });
  });
  const inJoins = train.joins.flatMap((join) => {
    return unseated(train, join, stepOf).map(([fault, part]) => made(fault, 'measure', part));
  });
  const inParts = teardown.flatMap((part) => {
    return partMistakes(train, part).map(([mistake, inspection]) => {
      return made(mistake, inspection, part);
    });
  });
  return [...inDevices, ...inJoins, ...inParts].toSorted((a, b) => a.made - b.made);
}

/** The train with the mistake in it; a slip leaves it as it is. */
export function mistaken(train: Train, mistake: Mistake): Train {
  if (mistake.what === 'slip') return train;
  if (mistake.what !== 'join' || mistake.of === undefined) return applyFault(train, mistake);
  // What one part carries stays one piece, off its splines.
  const { join: name, of } = mistake;
  const carriers = carriersOf(train);
  const own = ownName(train);
  const part = carriers.get(own(of));
  const join = train.joins.find((other) => other.name === name) as Join;
  const mates = join.members.filter((member) => carriers.get(own(member)) === part);
  const apart = mates.reduce((spoilt, mate): Train => {
    return applyFault(spoilt, { ...mistake, of: mate });
  }, train);
  return { ...apart, joins: [...apart.joins, ...onePiece(mates, carriers, own)] };
}

function deviceMistakes({ name, kind }: Device): [Fault, Inspection][] {
  if (kind !== 'one-way') {
    return [
      [{ what: 'device', device: name, is: 'will not release' }, 'measure'],
      [{ what: 'device', device: name, is: 'will not apply' }, 'air check'],
    ];
  }
  return (['backwards', 'seized', 'left out'] as const).map((is) => {
    return [{ what: 'one-way', device: name, is }, 'look'];
  });
}

// Each part whose splines engage another's: the join's own, or the first that is in. The part
// that goes in later is the one to push home.
function unseated(train: Train, join: Join, stepOf: (part: Part) => number): [Fault, Part][] {
  const carriers = carriersOf(train);
  const own = ownName(train);
  const parts = join.members.flatMap((member) => {
    const part = carriers.get(own(member));
    return part ? [{ member, part }] : [];
  });
  const hub =
    carriers.get(own(join.name)) ??
    (join.name === CASE
      ? undefined
      : parts.reduce<Part | undefined>((first, { part }) => {
          return first && stepOf(first) < stepOf(part) ? first : part;
        }, undefined));
  const others = parts.filter(({ part }, i) => {
    return part !== hub && parts.findIndex((other) => other.part === part) === i;
  });
  return others.map(({ member, part }) => {
    const fault: Fault = { what: 'join', join: join.name, is: 'stripped', of: member };
    return [fault, hub && stepOf(hub) > stepOf(part) ? hub : part];
  });
}

function partMistakes(train: Train, part: Part): [Mistake, Inspection][] {
  const carried = train.devices.find(({ name }) => name === part.carries[0]);
  const alone = part.carries.length === 1 && carried?.kind === 'one-way';
  const slip = (is: Slip['is']): Slip => ({ what: 'slip', part: part.name, is });
  // A part that is nothing but a one-way clutch is left out, and turned round, as one.
  const whole = train.devices.some(({ name, kind }) => {
    return kind === 'one-way' && part.carries.includes(name);
  });
  const mistakes: [Mistake, Inspection][] = [];
  if (!alone) mistakes.push([{ what: 'part', part: part.name, is: 'left out' }, 'look']);
  if (part.face !== undefined && !whole) mistakes.push([slip('wrong way round'), 'look']);
  if (part.align !== undefined) mistakes.push([slip('out of line'), 'look']);
  if (part.frictions !== undefined || part.steels !== undefined) {
    mistakes.push([slip('miscounted'), 'count']);
  }
  if (part.selective) mistakes.push([slip('wrong thickness'), 'measure']);
  return mistakes;
}
