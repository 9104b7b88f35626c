import { MOST_PARTS } from '../../engine/plan/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { findingsIn } from '../../shop/causes/index.ts';
import { type BuildTask, builtIn, buildTasks } from '../../shop/build/index.ts';
import { faultsOf, type Found, type OpenJob, partsIn } from '../job/index.ts';
import { SPENT } from './spent.ts';
import { askPlan } from './plan.ts';
import { askStanding } from './standing.ts';

/** What a signature would stand under, and is not done: told to whoever signs, and prevents nothing. */
export interface Unsigned {
  /** Measured and not closed: outside, in doubt, or a preload that no torque has proved. */
  readonly open: readonly string[];
  /** The file asks for it, and it was never measured. */
  readonly unread: readonly string[];
  /** Parts that were found faulty, and not replaced; with what was found. */
  readonly faulty: readonly { readonly part: string; readonly says: readonly string[] }[];
  /** Parts that came off, and are not on again. */
  readonly off: readonly string[];
  /** Of the build; absent where the file does not tell how the unit comes apart. */
  readonly build?: UnbuiltYet;
}

/** How much of a build, and of the first start after it, is not written down. */
export interface UnbuiltYet {
  readonly all: number;
  readonly undone: number;
  /** The step of the first that is not. */
  readonly from?: number;
  /** Tasks that went wrong and not right since, by their keys. */
  readonly wrong: readonly string[];
  /** Stops that were covered before anybody of this job looked, by their steps. */
  readonly unseen: readonly number[];
  readonly starts: number;
  readonly startsUndone: number;
}

/** Asks a job what stands open in it. */
export function askUnsigned(train: Train, job: OpenJob): Unsigned {
  const names = train.teardown?.map(({ name }) => name) ?? [];
  const parts = [...partsIn(job.job, names)];
  const faulty = parts.flatMap(([part, its]) => {
    const left = faultsOf(its).filter((one) => !isRenewed(train, job, part, one));
    const says = left.map((one) => one.says);
    return says.length > 0 ? [{ part, says }] : [];
  });
  const build = unbuiltIn(train, job);
  return {
    open: openIn(train, job),
    unread: askStanding(train, job).flatMap((its) => (its.stands === 'nothing' ? [its.name] : [])),
    faulty,
    off: parts.flatMap(([name, its]) => (its.off ? [name] : [])),
    ...(build && { build }),
  };
}

// Of plates that were found burnt, new ones went in later by the pack's own name; the drum stays.
function isRenewed(train: Train, { job }: OpenJob, part: string, { id, says }: Found): boolean {
  const signs = findingsIn(train, [`${part}: ${says}`], []);
  const spent = signs.filter(({ sign }) => SPENT.has(sign));
  if (spent.length === 0) return false;
  const found = job.entries.findIndex((its) => its.id === id);
  return job.entries.slice(found + 1).some(({ told, struckBy }) => {
    if (struckBy || told?.kind !== 'installed' || !told.replaced) return false;
    return spent.some(({ of }) => of === told.part);
  });
}

/** What a job has measured and not closed. */
export function openIn(train: Train, job: OpenJob): readonly string[] {
  return askStanding(train, job).flatMap(({ name, stands }) => {
    return stands === 'asked' || stands === 'unjudged' || stands === 'outside' ? [name] : [];
  });
}

function unbuiltIn(train: Train, job: OpenJob): UnbuiltYet | undefined {
  const count = train.teardown?.length ?? 0;
  if (count === 0 || count > MOST_PARTS) return undefined;
  const plan = askPlan(train);
  const answered = builtIn(plan, job.job);
  const tasks = buildTasks(plan);
  const outcomeOf = ({ key }: BuildTask) => answered.get(key)?.outcome;
  const isUndone = (task: BuildTask) => (outcomeOf(task) ?? 'wrong') === 'wrong';
  const steps = tasks.filter(({ what }) => what !== 'start');
  const starts = tasks.filter(({ what }) => what === 'start');
  const first = steps.find(isUndone);
  return {
    all: steps.length,
    undone: steps.filter(isUndone).length,
    ...(first && first.what !== 'start' && { from: first.step.number }),
    wrong: steps.flatMap((task) => (outcomeOf(task) === 'wrong' ? [task.key] : [])),
    unseen: steps.flatMap((task) => {
      return task.what === 'stop' && outcomeOf(task) === 'found' ? [task.step.number] : [];
    }),
    starts: starts.length,
    startsUndone: starts.filter(isUndone).length,
  };
}
