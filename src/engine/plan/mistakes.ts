import { applyFault, type Fault } from '../faults/index.ts';
import {
  carriersOf,
  CASE,
  coversOf,
  coversPorts,
  type Device,
  type Join,
  onePiece,
  ownName,
  type Part,
  piecesOf,
  type Train,
} from '../train/index.ts';
import type { Glance, Measuring, Mistake, Slip } from './answer.ts';

/** A mistake before it is known what catches it; steps count parts. */
export interface Made {
  readonly mistake: Mistake;
  /** The part to put right. */
  readonly part: string;
  /** How many parts are on once it is made. */
  readonly made: number;
  /** How many are at most while it can be put right without stripping. */
  readonly open: number;
  /** What catches it where no hand can: the first of them that the build has. */
  readonly instead: readonly Instead[];
}

/** A step of the build that measures something (`of`), or what eyes tell at the part's own. */
export type Instead = { readonly by: Measuring; readonly of: string } | { readonly by: Glance };

/** Everything that the builder of a train can get wrong, in the order of the steps. */
export function mistakesOf(train: Train): Made[] {
  const { teardown = [] } = train;
  const stepOf = (part: Part) => teardown.length - teardown.indexOf(part);
  const byName = new Map(teardown.map((part) => [part.name, part]));
  // A part can be reached until the first of its covers goes on.
  const openUntil = (part: Part) => {
    const covers = coversOf(teardown, part).map((name) => stepOf(byName.get(name) as Part));
    return Math.min(...covers.map((step) => step - 1), teardown.length);
  };
  const made = (mistake: Mistake, instead: readonly Instead[], part: Part): Made => {
    return { mistake, instead, part: part.name, made: stepOf(part), open: openUntil(part) };
  };
  const carriers = carriersOf(train);
  const inDevices = train.devices.flatMap((device): Made[] => {
    const parts = piecesOf(device).flatMap((piece) => carriers.get(piece) ?? []);
    const [part] = parts;
    // A clutch that is in two races is put right as long as both can be reached.
    if (!part) return [];
    const until = Math.min(...parts.map(openUntil));
    const last = parts.reduce((a, b) => (stepOf(a) > stepOf(b) ? a : b));
    return deviceMistakes(device).map(([fault, instead]) => {
      const its = made(fault, instead, part);
      return { ...its, made: stepOf(last), open: Math.max(until, stepOf(last)) };
    });
  });
  const inJoins = train.joins.flatMap((join) => {
    return unseated(train, join, stepOf).map(([fault, part]) => {
      return made(fault, [{ by: 'height', of: part.name }, { by: 'measure' }], part);
    });
  });
  const inParts = teardown.flatMap((part) => {
    return partMistakes(train, part).map(([mistake, instead]) => made(mistake, instead, part));
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

type MistakeAnd = [Mistake, readonly Instead[]];

function deviceMistakes({ name, kind }: Device): [Fault, readonly Instead[]][] {
  switch (kind) {
    case 'pawl': {
      const tried = { by: 'pawl check', of: name } as const;
      return (['will not release', 'will not apply'] as const).map((is) => {
        return [{ what: 'device', device: name, is }, [tried, { by: 'look' }]];
      });
    }
    case 'one-way':
      return (['backwards', 'seized', 'left out'] as const).map((is) => {
        return [{ what: 'one-way', device: name, is }, [{ by: 'look' }]];
      });
    case 'clutch':
    case 'brake':
    case 'band': {
      const gap = { by: kind === 'band' ? 'band' : 'clearance', of: name } as const;
      const air = { by: 'air check', of: name } as const;
      return [
        [{ what: 'device', device: name, is: 'will not release' }, [gap, air, { by: 'measure' }]],
        [{ what: 'device', device: name, is: 'will not apply' }, [air, gap, { by: 'look' }]],
      ];
    }
  }
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

function partMistakes(train: Train, part: Part): MistakeAnd[] {
  const { carries } = part;
  // By the time all the oil goes through it, air was put on everything.
  const feeds = coversPorts(train, part) ? [] : (part.feeds ?? []);
  const carried = train.devices.find(({ name }) => name === carries[0]);
  const alone = carries.length === 1 && carried?.kind === 'one-way';
  const slip = (is: Slip['is']): Slip => ({ what: 'slip', part: part.name, is });
  // A part that is nothing but a one-way clutch is left out, and turned round, as one.
  const whole = train.devices.some(({ name, kind }) => {
    return kind === 'one-way' && carries.includes(name);
  });
  const gaps = gapsSetBy(train, part);
  const on = (by: 'air check' | 'clearance' | 'band', of: readonly string[]) => {
    return of.map((name): Instead => ({ by, of: name }));
  };
  const mistakes: MistakeAnd[] = [];
  if (!alone) {
    // Eyes miss a pack before a shaft.
    const devices = new Set(train.devices.map(({ name }) => name));
    const packs = carries.every((name) => devices.has(name)) ? carries : [];
    const fed = carries.length === packs.length ? [...packs, ...feeds] : [];
    const instead = [
      ...gaps,
      ...on('clearance', packs),
      ...on('band', packs),
      ...on('air check', fed),
      { by: 'look' } as const,
    ];
    mistakes.push([{ what: 'part', part: part.name, is: 'left out' }, instead]);
  }
  const { face, faces, align } = part;
  if ((face ?? faces) !== undefined && !whole) {
    mistakes.push([slip('wrong way round'), [{ by: 'look' }]]);
  }
  if (align !== undefined) {
    mistakes.push([slip('out of line'), [...on('air check', feeds), { by: 'look' }]]);
  }
  if (part.frictions !== undefined || part.steels !== undefined) {
    mistakes.push([slip('miscounted'), [...on('clearance', carries), { by: 'count' }]]);
  }
  if (part.selective) mistakes.push([slip('wrong thickness'), [...gaps, { by: 'measure' }]]);
  return mistakes;
}

// What is measured to find a part that is too thick, too thin or not there: what it is said to
// set, and the shafts in whose stack it stands.
function gapsSetBy({ endPlays = [] }: Train, { name, sets }: Part): Instead[] {
  const stacks = endPlays.filter(({ stack = [] }) => stack.some(({ part }) => part === name));
  return [
    ...(sets === undefined
      ? []
      : (['end play', 'clearance', 'band', 'preload'] as const).map((by): Instead => ({
          by,
          of: sets,
        }))),
    ...stacks.map(({ shaft }): Instead => ({ by: 'end play', of: shaft })),
  ];
}
