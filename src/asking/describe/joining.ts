import {
  CASE,
  type Join,
  type MemberName,
  outputsOf,
  type Train,
} from '../../engine/train/index.ts';
import { type Edited, mend } from '../../engine/yaml/index.ts';

/**
 * Makes one piece of the pieces that have these names: adds them to a join that one of them has
 * part in, or else names a new join after one that has a name of its own, or `called`.
 */
export function joined(
  text: string,
  train: Train,
  members: readonly MemberName[],
  called: string,
): Edited {
  const join = members.map((name) => joinOf(train, name)).find((found) => found !== undefined);
  const name = join?.name ?? ownName(train, members) ?? called;
  const there = join?.members ?? [];
  const added = members.filter((one) => one !== name && !there.includes(one));
  return mend(text, ['joined', name], [...there, ...added]);
}

/** Whether the one piece that these would make needs a name that none of them has. */
export function freshJoin(
  train: Train,
  own: readonly MemberName[],
  others: readonly MemberName[],
): boolean {
  const members = [...own, ...others];
  return (
    members.every((name) => joinOf(train, name) === undefined) &&
    ownName(train, members) === undefined
  );
}

function joinOf(train: Train, name: MemberName): Join | undefined {
  return train.joins.find((join) => join.name === name || join.members.includes(name));
}

// The case gives its name to what is made fast to it; then names that a person gave.
function ownName(train: Train, members: readonly MemberName[]): MemberName | undefined {
  const plain = members.filter((name) => !name.includes('.'));
  const isEnd = (name: MemberName) => name === train.input || outputsOf(train).includes(name);
  return plain.find((name) => name === CASE) ?? plain.find((name) => !isEnd(name)) ?? plain[0];
}
