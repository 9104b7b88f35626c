import { inFileNames } from '../../engine/words/index.ts';
import { computed, type ReadonlySignal, signal } from '@preact/signals';
import {
  askPlan,
  askStanding,
  type MeasuredThing,
  openIn,
  sizeFor,
} from '../../asking/build/index.ts';
import { asIfTold, faultsOf, type PartStanding, partsIn } from '../../asking/job/index.ts';
import { NoAnswer, type Refused } from '../../asking/request/index.ts';
import type { Plan, Step } from '../../engine/plan/index.ts';
import { piecesOf, type Train } from '../../engine/train/index.ts';
import {
  type Answered,
  type BuildTask,
  builtIn,
  builtTold,
  buildTasks,
  type Outcome,
} from '../../shop/build/index.ts';
import { entryText, readEntry, type Told } from '../../shop/records/index.ts';
import { type JobDesk, jobsOf } from '../job/index.ts';
import type { Again } from '../strip/index.ts';
import type { Study } from '../study/index.ts';
import { recalled, remember } from '../words/index.ts';

/** A plan that can be built by, its tasks in order; or why there is none. */
type Planned =
  | { readonly plan: Plan; readonly tasks: readonly BuildTask[] }
  | { readonly refused: Refused };

/** How far a unit is built: by the entries of the open job, else by what this browser keeps. */
export class Building {
  readonly jobs: JobDesk;
  readonly train: ReadonlySignal<Train | undefined>;
  readonly planned: ReadonlySignal<Planned | undefined>;
  /** What was told while no job was open. */
  readonly loose = signal<readonly Told[]>([]);
  readonly answered: ReadonlySignal<ReadonlyMap<string, Answered>>;
  /** The task that is done next; undefined: the unit is built, and has run. */
  readonly next: ReadonlySignal<BuildTask | undefined>;
  /** The task on the screen. */
  readonly task: ReadonlySignal<BuildTask | undefined>;

  private readonly at = signal<string | undefined>(undefined);
  private readonly work: string;

  constructor(study: Study, work: string) {
    this.work = work;
    this.jobs = jobsOf(study);
    this.train = study.file.train;
    this.loose.value = this.kept;
    this.at.value = recalled(this.placeKey, ['tab']) || undefined;
    this.planned = computed(() => this.train.value && plannedOf(this.train.value));
    this.answered = computed(() => {
      const its = this.planned.value;
      if (!its || 'refused' in its) return new Map();
      const { job } = asIfTold(this.jobs.open.value, this.jobs.open.value ? [] : this.loose.value);
      return builtIn(its.plan, job);
    });
    this.next = computed(() => this.tasks.find(({ key }) => !this.isPassed(key)));
    this.task = computed(() => {
      return this.tasks.find(({ key }) => key === this.at.value) ?? this.next.value;
    });
  }

  get tasks(): readonly BuildTask[] {
    const its = this.planned.value;
    return its && 'tasks' in its ? its.tasks : [];
  }

  get plan(): Plan | undefined {
    const its = this.planned.value;
    return its && 'plan' in its ? its.plan : undefined;
  }

  /** Whether a task is behind the builder: what felt wrong is not. */
  isPassed(key: string): boolean {
    const outcome = this.answered.value.get(key)?.outcome;
    return outcome !== undefined && outcome !== 'wrong';
  }

  /** Shows a task; without one the next that is open. */
  show(key?: string): void {
    this.at.value = key === this.next.value?.key ? undefined : key;
    remember(this.placeKey, this.at.value ?? '', ['tab']);
  }

  /** The task before or after the one on the screen, as far as anything was done. */
  beside(by: -1 | 1): BuildTask | undefined {
    const { tasks } = this;
    const place = this.task.value ? tasks.indexOf(this.task.value) : tasks.length;
    const end = this.next.value ? tasks.indexOf(this.next.value) : tasks.length - 1;
    return place + by <= end ? tasks[place + by] : undefined;
  }

  /** Writes down how the next task ended, and what of it; nothing else can be answered. */
  async answer(key: string, outcome: Outcome, said?: string): Promise<void> {
    const task = this.next.value;
    if (!task || key !== task.key) return;
    await this.write(builtTold(task, outcome, said && this.written(said)));
    this.show();
  }

  /** What was found of the part that a step fits; undefined where nothing speaks against it as it is. */
  faulty(task: BuildTask): PartStanding | undefined {
    const job = this.jobs.open.value;
    if (!job || task.what !== 'do' || task.step.does !== 'fit') return undefined;
    const { name } = task.step.part;
    const its = partsIn(job, [name]).get(name);
    return its && its.on?.why === undefined && faultsOf(its).length > 0 ? its : undefined;
  }

  /** The part that a step fits goes on: a new one, or the same, and why. */
  async fit(task: BuildTask, again: NonNullable<Again>, said: string): Promise<void> {
    if (task.what !== 'do' || task.step.does !== 'fit') return;
    const told: Told = { kind: 'installed', part: task.step.part.name, ...again };
    if ((await this.jobs.write(told)) === 'kept') await this.answer(task.key, 'done', said);
  }

  /** The unit is taken up as it stands: with a step done, and all that goes before it. */
  async takeUp(task: BuildTask, because: string): Promise<void> {
    await this.write(builtTold(task, 'found', because));
    this.show();
  }

  /** Whether what comes after a task is on already: a unit that was taken up half-built. */
  isCovered(task: BuildTask): boolean {
    return this.tasks.slice(this.tasks.indexOf(task) + 1).some(({ key }) => this.isPassed(key));
  }

  /** Everything from a step on is taken off again. */
  async takeOff(step: number, because: string): Promise<void> {
    await this.write({ kind: 'unbuilt', step: `${step}`, why: this.written(because) });
    this.show();
  }

  /** What the job found wrong of the parts of a device, and nobody replaced. */
  foundOf(device: string): readonly string[] {
    const { devices = [], teardown = [] } = this.train.value ?? {};
    const pieces = new Set(devices.filter(({ name }) => name === device).flatMap(piecesOf));
    const parts = teardown.filter(({ carries }) => carries.some((its) => pieces.has(its)));
    const names = [...new Set([device, ...parts.map(({ name }) => name)])];
    return [...partsIn(this.jobs.open.value, names)].flatMap(([name, part]) =>
      faultsOf(part).map(({ says }) => `${name}: ${says}`),
    );
  }

  /** A sentence as it stands in a job: with the names of the train's own file. */
  written(said: string): string {
    const train = this.train.value;
    return train ? inFileNames(said, train) : said;
  }

  /** Puts what stands in no job into the open one. */
  async handOver(): Promise<void> {
    const [first, ...others] = this.loose.value;
    if (!first || !this.jobs.open.value) return;
    if ((await this.jobs.write(first)) !== 'kept') return;
    this.keep(others);
    await this.handOver();
  }

  /** Another unit of the same train is on the bench. */
  forget(): void {
    this.keep([]);
    this.show();
  }

  /** The size that the part of a step goes in with, as far as the job says. */
  sizeAt(step: Step): ReturnType<typeof sizeFor> {
    const train = this.train.value;
    if (!train || step.does !== 'fit') return undefined;
    return sizeFor(train, asIfTold(this.jobs.open.value, []), step.part);
  }

  /** What was measured of the unit so far and is not closed. */
  get open(): readonly string[] {
    const train = this.train.value;
    return train ? openIn(train, asIfTold(this.jobs.open.value, [])) : [];
  }

  /** What is measured at a step, as it stands in the job. */
  measured(step: Step): MeasuredThing | undefined {
    const train = this.train.value;
    const [kind, name] = measuredAt(step) ?? [];
    if (!train || !kind) return undefined;
    const job = asIfTold(this.jobs.open.value, []);
    return askStanding(train, job).find((its) => its.kind === kind && its.name === name);
  }

  private async write(told: Told): Promise<void> {
    if (this.jobs.open.value) await this.jobs.write(told);
    else this.keep([...this.kept, told]);
  }

  private keep(loose: readonly Told[]): void {
    this.loose.value = loose;
    const text = loose.length > 0 ? JSON.stringify(loose) : '';
    remember(this.toldKey, text, ['browser']);
  }

  // Another tab may have told more meanwhile.
  private get kept(): readonly Told[] {
    return read(recalled(this.toldKey, ['browser']));
  }

  private get toldKey(): string {
    return `build told ${this.jobs.aside.peek()}`;
  }

  private get placeKey(): string {
    return `build at ${this.work}`;
  }
}

function plannedOf(train: Train): Planned {
  try {
    const plan = askPlan(train);
    return { plan, tasks: buildTasks(plan) };
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error;
    return { refused: error.why };
  }
}

function measuredAt(step: Step): readonly [MeasuredThing['kind'], string] | undefined {
  switch (step.does) {
    case 'clearance':
      return ['pack', step.pack.device];
    case 'band':
      return ['band', step.band.device];
    case 'end play':
      return ['endplay', step.endPlay.shaft];
    case 'preload':
      return ['preload', step.preload.bearings];
    default:
      return undefined;
  }
}

// What a browser remembers may be anybody's: what a job could not be told is passed over.
function read(text: string): readonly Told[] {
  try {
    const all = JSON.parse(text) as unknown;
    return Array.isArray(all) ? all.flatMap((its: Told | null) => (its ? toldAgain(its) : [])) : [];
  } catch {
    return [];
  }
}

function toldAgain(its: Told): readonly Told[] {
  if (its.kind !== 'built' && its.kind !== 'unbuilt') return [];
  const { body, id } = entryText({ at: '2026-01-01T00:00:00.000Z', who: 'X', told: its });
  const { told } = readEntry(body, id).entry ?? {};
  return told ? [told] : [];
}
