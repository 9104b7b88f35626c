import {
  assemble,
  CASE,
  type GearSet,
  type MemberName,
  outputsOf,
  type Train,
} from '../../engine/train/index.ts';

/** One rigid piece as it is described so far: what a person takes in the hand. */
export interface Piece {
  /** The member that stands for it. */
  readonly name: MemberName;
  /** All its names, that one too. */
  readonly names: readonly MemberName[];
}

/** The pieces that can be held or splined to something; planets on their pins are left out. */
export function piecesOf(train: Train): Piece[] {
  const { bodies, onPins } = assemble(whole(train));
  return bodies
    .filter((_, i) => !onPins.has(i))
    .map(({ label, names }) => ({ name: label, names: names.filter((name) => name !== '') }))
    .filter(({ name }) => name !== '');
}

/** The piece that has a name. */
export function pieceWith(pieces: readonly Piece[], name: MemberName): Piece | undefined {
  return pieces.find(({ names }) => names.includes(name));
}

/**
 * Members that nothing is said to be splined to, to hold or to drive, in the order in which a
 * person would ask: the ends, then set by set. The case is none.
 */
export function looseMembers(train: Train): MemberName[] {
  const touched = new Set<MemberName>([
    ...train.joins.flatMap(({ name, members }) => [name, ...members]),
    ...train.devices.flatMap(({ first, second }) => [first, second]),
    ...train.pairs.flatMap(({ driver, driven }) => [driver.member, driven.member]),
  ]);
  const ends = [train.input, ...outputsOf(train)].filter((end) => end !== '' && !end.includes('.'));
  const wheels = train.sets.flatMap(wheelsOf);
  const isEnd = (name: MemberName) => name === train.input || outputsOf(train).includes(name);
  return [...ends, ...wheels.filter((name) => !isEnd(name))].filter(
    (name) => name !== CASE && !touched.has(name),
  );
}

/** Members that one device alone touches, and that are no wheel: what it holds or joins leads nowhere. */
export function deadEnds(train: Train): MemberName[] {
  const { devices, joins, pairs, input } = train;
  const touches = devices.flatMap(({ first, second }) => [first, second]);
  const elsewhere = new Set<MemberName>([
    CASE,
    input,
    ...outputsOf(train),
    ...joins.flatMap(({ name, members }) => [name, ...members]),
    ...pairs.flatMap(({ driver, driven }) => [driver.member, driven.member]),
  ]);
  return touches.filter((name, i) => {
    const isOnce = touches.indexOf(name) === i && touches.lastIndexOf(name) === i;
    return isOnce && !name.includes('.') && !elsewhere.has(name);
  });
}

// The members of a set that turn about the main axis and are its own.
function wheelsOf(set: GearSet): MemberName[] {
  const part = (name: string) => `${set.name}.${name}`;
  switch (set.kind) {
    case 'plain':
    case 'pair':
    case 'stepped':
      return ['sun', 'ring', 'carrier'].map(part);
    case 'sharing':
      return [
        ...(set.sun === undefined ? [] : [part('sun')]),
        ...(set.ring === undefined ? [] : [part('ring')]),
      ];
    case 'wheels':
      return [...set.wheels.keys()]
        .filter((name) => !set.carried.includes(name))
        .concat('carrier')
        .map(part);
    case 'bevel':
      return ['left', 'right', 'carrier'].map(part);
  }
}

// Without the sets whose planets nobody has: a text that is half written may name such.
function whole(train: Train): Train {
  const reaches = (set: GearSet, steps = 0): boolean => {
    if (set.kind !== 'sharing') return true;
    const owner = train.sets.find(({ name }) => name === set.shares);
    return owner !== undefined && steps < train.sets.length && reaches(owner, steps + 1);
  };
  return { ...train, sets: train.sets.filter((set) => reaches(set)) };
}
