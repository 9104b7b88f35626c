import { assemble } from './body.ts';
import type { EndPlay } from './endplay.ts';
import type { Part } from './part.ts';
import { carriersOf, ownName } from './teardown.ts';
import type { GearPair, Train } from './train.ts';

/**
 * The parts without which a gap is not what it will be: those that are said to set it, and of a
 * shaft those in its stack.
 */
export function settersOf({ teardown = [], endPlays = [] }: Train, name: string): Part[] {
  const stack = endPlays.filter(({ shaft }) => shaft === name).flatMap((its) => its.stack ?? []);
  const stacked = new Set(stack.map(({ part }) => part));
  return teardown.filter((part) => part.sets === name || stacked.has(part.name));
}

/**
 * The parts that bring the two gears whose backlash is measured: of the pair that it names, or
 * of the pairs of the member that it names; a name of its own means the pair behind the gears,
 * or the only one there is. None of an end play.
 */
export function meshMeasured(train: Train, { shaft, measure }: EndPlay): Part[] {
  if (measure !== 'backlash') return [];
  const own = ownName(train);
  const carriers = carriersOf(train);
  const bringing = (member: string) => {
    const part = carriers.get(own(member));
    return part ? [part] : partsOf(train, member);
  };
  const gears = pairsNamed(train, shaft).flatMap(({ driver, driven }) => [
    driver.member,
    driven.member,
  ]);
  return gears.flatMap(bringing);
}

function pairsNamed({ pairs, finalDrive = [], ...train }: Train, name: string): GearPair[] {
  const named = pairs.filter((pair) => pair.name === name);
  if (named.length > 0) return named;
  const { bodyOf } = assemble({ pairs, ...train });
  const body = bodyOf(name);
  const onIt = pairs.filter(({ driver, driven }) => {
    return body !== undefined && [driver.member, driven.member].map(bodyOf).includes(body);
  });
  if (onIt.length > 0) return onIt;
  const behind = pairs.filter((pair) => finalDrive.includes(pair.name));
  return behind.length > 0 ? behind : pairs.length === 1 ? [...pairs] : [];
}

// Of a member that no part carries by its own name, whatever carries a member of its body.
function partsOf(train: Train, member: string): Part[] {
  const { bodyOf } = assemble(train);
  const body = bodyOf(member);
  return (train.teardown ?? []).filter(({ carries }) => {
    return body !== undefined && carries.some((name) => bodyOf(name) === body);
  });
}
