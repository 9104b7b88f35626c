import { CASE, type MemberName } from './member.ts';
import type { Train } from './train.ts';

/** How an output stands: on a road that all share, held still, or without a load, as on ice. */
export type OutputLoad = 'road' | 'held' | 'none';

/** The members that drive the load, the first first. On a straight road all turn at one speed. */
export function outputsOf({ output, others = [] }: Train): readonly MemberName[] {
  return [output, ...others];
}

/**
 * The train with some outputs held or without a load: an edit, so that whatever is asked of a train
 * may be asked of one that stands so. Throws where nothing is left that drives a load.
 */
export function withLoads(train: Train, loads: ReadonlyMap<MemberName, OutputLoad>): Train {
  const all = outputsOf(train);
  const stray = [...loads.keys()].find((name) => !all.includes(name));
  if (stray !== undefined) throw new Error(`${stray} is no output`);
  const [output, ...others] = all.filter((name) => (loads.get(name) ?? 'road') === 'road');
  if (output === undefined) throw new Error('no output is left that drives a load');
  const held = all.filter((name) => loads.get(name) === 'held');
  const joins = held.length > 0 ? [...train.joins, { name: CASE, members: held }] : train.joins;
  const { others: _, ...rest } = train;
  return { ...rest, output, ...(others.length > 0 && { others }), joins };
}
