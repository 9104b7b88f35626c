import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import {
  entryMade,
  jobMade,
  type OpenJob,
  openJob,
  type ToldOrStruck,
} from '../../asking/job/index.ts';
import { type Given, NoAnswer, type Refused, trainIn } from '../../asking/request/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { type FoldedJob, hashOf, partsOf, type Told } from '../../shop/records/index.ts';
import { deskOf, experienceUsed } from '../desk/index.ts';
import type { Study } from '../study/index.ts';
import { now } from './clock.ts';
import { type Held, foldedOf, textOf, trainNameOf } from './held.ts';
import { fileNameFor } from './filename.ts';
import { newId } from './id.ts';
import { JobFiles } from './jobfiles.ts';
import { JobTrain } from './jobtrain.ts';
import { lookAtKeeping } from './keeping.ts';
import { originOf } from './origin.ts';
import { picture } from './picture.ts';
import { recalled, remember } from '../words/index.ts';
import { type Outcome, JobShelf } from './shelf.ts';
import { NotKept, type Photograph } from './store.ts';

/** 'kept' when the disk has it; else why it is not. What only the store refused stays in this page. */
export type Kept = 'kept' | Unkept;

export type Unkept =
  | { readonly unkept: 'no job' | 'no initials' | 'other train' }
  /** Of a picture that the browser cannot read: its file's name, where it has one. */
  | { readonly unkept: 'no picture'; readonly name: string }
  /** By the browser's store; this page has it, and it can be saved to disk. */
  | { readonly unkept: 'forbidden' | 'full' | 'gone' }
  | { readonly unkept: 'failed'; readonly why: string }
  /** It could not be read again, or means nothing to the train. */
  | { readonly unkept: 'refused'; readonly why: Refused };

/** What a job is opened with. */
export interface Beginning {
  readonly unit: string;
  readonly complaint?: string;
  /** Without one it is a job of no train, or none yet. */
  readonly train?: Given | undefined;
}

/** What a photograph shows. */
export interface Shown {
  readonly part?: string;
  readonly step?: string;
}

/** The job that is open on the page, and what is written into it: the lines of a job file. */
export class JobDesk {
  /** Whose hand writes; remembered by the browser. */
  readonly initials = signal(recalled('initials', ['browser']));
  /** Whether it is known yet what this browser keeps. */
  readonly known = signal(false);
  /** Why the last thing that was to be kept is not, until the next is. */
  readonly unkept = signal<Unkept | undefined>(undefined);
  readonly shelf = new JobShelf();

  private readonly id = signal(recalled('job', ['tab', 'browser']));
  private readonly study: Study;
  private readonly begun: Promise<void>;

  readonly held: ReadonlySignal<Held | undefined> = computed(() => this.shelf.held(this.id.value));
  /** The open job as it stands, its entries in the order of time. */
  readonly open: ReadonlySignal<FoldedJob | undefined> = computed(() => {
    const held = this.held.value;
    return held && foldedOf(held);
  });
  /** The open job as questions are asked of it: its readings, what was seen, its limits. */
  readonly asked: ReadonlySignal<OpenJob | undefined> = computed(() => {
    const held = this.held.value;
    if (!held || held.job.header === '') return undefined;
    return openJob({ called: held.job.name, text: textOf(held) });
  });

  readonly files = new JobFiles(this.shelf, this.held, {
    take: (id) => void this.reopen(id),
    told: (outcome) => this.lost(outcome),
    train: () => this.train.given,
  });

  readonly train: JobTrain;
  /** Of which train what is done with no job is kept. */
  readonly aside: ReadonlySignal<string>;
  /**
   * Under which name a room keeps what is done and not written down: a job's own, else that of
   * `aside`. Undefined while it is not known which job is open, or another train is on the page.
   */
  readonly work: ReadonlySignal<string | undefined> = computed(() => {
    if (!this.known.value || !this.train.isHere.value) return undefined;
    const { id } = this.held.value?.job ?? {};
    return id === undefined ? this.aside.value : `job ${id}`;
  });

  constructor(study: Study) {
    this.study = study;
    this.aside = originOf(study.file);
    this.train = new JobTrain(study, this.shelf, this.held, (its) => this.lost(its));
    effect(() => remember('initials', this.initials.value, ['browser']));
    this.begun = this.shelf.load().then(async () => {
      // A browser that was killed may have forgotten which it was.
      if (!this.held.value && this.id.value !== NONE) {
        this.take(lastWritten(this.shelf.jobs.value)?.job.id ?? '');
      }
      this.known.value = true;
      // Nobody chose the train that a page begins with.
      if (deskOf(this.study)?.begunAnew) await this.train.bring();
    });
  }

  /** Takes up a job again, and brings its train onto the page. */
  async reopen(id: string): Promise<void> {
    this.take(id);
    await this.train.bring();
  }

  /** Opens a new job; its name on disk is made of the unit's. */
  begin(its: Beginning): Promise<Kept> {
    return this.once(its, () => this.opened(its));
  }

  private async opened({ unit, complaint = '', train }: Beginning): Promise<Kept> {
    await this.begun;
    const by = this.initials.value.trim();
    if (by === '') return this.answered({ unkept: 'no initials' });
    const file = train && { file: train.called, hash: hashOf(train.text) };
    return this.refusing(async () => {
      const header = jobMade({ unit, complaint, by, at: now(), ...(file && { train: file }) });
      const name = fileNameFor(unit, this.shelf.jobs.value);
      const job = { id: newId(), name, header, ...(train && { train }) };
      const outcome = await this.shelf.add(job, []);
      this.take(job.id);
      // Only now is there something for the browser to keep.
      void lookAtKeeping(outcome === 'kept' || outcome.why !== 'forbidden', true);
      return outcome;
    });
  }

  /** Takes up another job; none, with ''. */
  take(id: string): void {
    this.id.value = id === '' ? NONE : id;
    remember('job', this.id.value, ['tab', 'browser']);
  }

  /** Adds what somebody tells to the open job. */
  write(told: Told): Promise<Kept> {
    return this.enter({ told });
  }

  /** Strikes an entry through; it stays, with the reason, and `told` may say what holds instead. */
  strike(id: string, because: string, told?: Told): Promise<Kept> {
    return this.enter({ strikes: { id, because }, ...(told && { told }) });
  }

  /**
   * Whether something can be written down now: why not, is told. It is asked before a photograph is
   * taken, which would be lost.
   */
  mayWrite(): boolean {
    const lacking = this.known.value ? this.lacking : undefined;
    if (lacking) this.answered(lacking);
    return lacking === undefined;
  }

  /** Keeps a picture with the job, as `picture` leaves it, and an entry that says what it shows. */
  async photograph(file: Blob, shown: Shown = {}): Promise<Kept> {
    await this.begun;
    if (this.lacking) return this.answered(this.lacking);
    let bytes: Uint8Array;
    try {
      bytes = await picture(file);
    } catch {
      return this.answered({ unkept: 'no picture', name: file instanceof File ? file.name : '' });
    }
    const stem = now().slice(0, 23).replaceAll(/\D/gu, '');
    const name = `${stem}-${this.initials.value.trim()}.jpg`;
    return this.enter({ told: { kind: 'photograph', name, ...shown } }, [{ name, bytes }]);
  }

  /** Takes a job out of this browser, for good. */
  async discard(id: string): Promise<void> {
    await this.shelf.remove(id);
    if (this.id.value === id) this.take('');
  }

  /** The train of the open job: as it is on the page, where it is that one; else as it was kept. */
  trainOf(held = this.held.value): Train | undefined {
    const isOpen = held !== undefined && held.job.id === this.held.value?.job.id;
    if (isOpen && this.train.isHere.value && trainNameOf(held) !== undefined) {
      return this.study.file.train.value;
    }
    try {
      return held?.job.train && trainIn(held.job.train).train;
    } catch {
      return undefined;
    }
  }

  // A second tap on the same, before the disk has answered the first, is the first.
  private enter(said: ToldOrStruck, pictures: readonly Photograph[] = []): Promise<Kept> {
    return this.once(said, () => this.entered(said, pictures));
  }

  private once(said: Beginning | ToldOrStruck, work: () => Promise<Kept>): Promise<Kept> {
    const key = JSON.stringify(said);
    const same = this.underWay.get(key);
    if (same) return same;
    const its = work().finally(() => this.underWay.delete(key));
    this.underWay.set(key, its);
    return its;
  }

  private readonly underWay = new Map<string, Promise<Kept>>();

  private async entered(said: ToldOrStruck, pictures: readonly Photograph[]): Promise<Kept> {
    await this.begun;
    const { id } = this.held.value?.job ?? {};
    const who = this.initials.value.trim();
    if (this.lacking || id === undefined)
      return this.answered(this.lacking ?? { unkept: 'no job' });
    // What was looked at on another train is not of this unit; words and pictures are.
    if (!this.train.isHere.value && said.told && !FREE.has(said.told.kind)) {
      return this.answered({ unkept: 'other train' });
    }
    // Without the figures only the form is known to be right, as without a train.
    const experience = (await experienceUsed().catch(() => undefined))?.text;
    return this.refusing(async () => {
      const held = this.shelf.held(id);
      if (!held) return new NotKept('gone');
      const train = this.trainOf(held);
      const its = train && experience !== undefined ? { train, experience } : undefined;
      const { text } = entryMade(said, { who, at: now() }, foldedOf(held), its);
      return this.shelf.keep(id, partsOf(text).lines, pictures);
    });
  }

  private async refusing(work: () => Promise<Outcome>): Promise<Kept> {
    try {
      const outcome = await work();
      return this.answered(outcome === 'kept' ? outcome : unkeptBy(outcome));
    } catch (error) {
      if (error instanceof NoAnswer) return this.answered({ unkept: 'refused', why: error.why });
      return this.answered({ unkept: 'failed', why: error instanceof Error ? error.message : '' });
    }
  }

  // What every entry needs, and is not there.
  private get lacking(): Unkept | undefined {
    if (!this.held.value) return { unkept: 'no job' };
    return this.initials.value.trim() === '' ? { unkept: 'no initials' } : undefined;
  }

  private lost(outcome: Outcome): void {
    if (outcome !== 'kept') this.answered(unkeptBy(outcome));
  }

  private answered(kept: Kept): Kept {
    this.unkept.value = kept === 'kept' ? undefined : kept;
    return kept;
  }
}

/** The keeper of this page's jobs: one, whichever rooms write into it. */
export function jobsOf(study: Study): JobDesk {
  const known = desks.get(study) ?? new JobDesk(study);
  desks.set(study, known);
  return known;
}

const desks = new WeakMap<Study, JobDesk>();

// Remembered where a person put the job away: '' may be a browser that forgot.
const NONE = 'none';
const FREE: ReadonlySet<Told['kind']> = new Set(['note', 'photograph', 'signed']);

function lastWritten(all: readonly Held[]): Held | undefined {
  const moment = (held: Held) => {
    const { at, entries } = foldedOf(held);
    return new Date(entries.at(-1)?.at ?? at).getTime() || 0;
  };
  return all.toSorted((a, b) => moment(b) - moment(a))[0];
}

function unkeptBy({ why, message }: NotKept): Unkept {
  return why === 'failed' ? { unkept: why, why: message } : { unkept: why };
}
