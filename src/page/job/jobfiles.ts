import { effect, type ReadonlySignal, signal, untracked } from '@preact/signals';
import { linesBeyond, partsOf, readJob } from '../../shop/records/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import { type Kinds, pick, type Picked, saveAs } from '../desk/index.ts';
import { type Brought, broughtBy, SeveralJobs, zipOf } from './archive.ts';
import { type Held, isTextOf, linesOf, textOf } from './held.ts';
import { newId } from './id.ts';
import { type DiskOutcome, isSameJob, uniteOnDisk } from './ondisk.ts';
import { type OtherPicture, parted } from './samepictures.ts';
import type { JobShelf, Outcome } from './shelf.ts';
import type { KeptJob } from './store.ts';

/** What came of a file, until the next. */
export type FileWord =
  | { readonly word: 'saved'; readonly name: string }
  | ({ readonly word: 'opened'; readonly name: string; readonly unread: number } & Remarks)
  /** It is a copy of a job that is here: so many lines came in. */
  | ({ readonly word: 'united'; readonly name: string; readonly came: number } & Remarks)
  | { readonly word: 'no job'; readonly name: string; readonly problems: readonly Problem[] }
  | { readonly word: 'several jobs'; readonly names: readonly string[] }
  | { readonly word: 'not text' | 'too large' }
  | { readonly word: 'failed'; readonly why: string };

/** What is to be said of what lay beside the job. */
export interface Remarks extends Pick<Brought, 'asCame' | 'leftOut'> {
  /** Pictures that are another here under the same name. */
  readonly others: readonly OtherPicture[];
}

/** What the files need of whoever keeps the jobs. */
interface Keeper {
  take(id: string): void;
  /** What became of something that was to be kept. */
  told(outcome: Outcome): void;
  /** The open job's train, as it is now. */
  train(): KeptJob['train'];
}

const JOB: Kinds = { 'application/yaml': ['.yaml', '.yml'] };
const ANY: Kinds = { ...JOB, 'application/zip': ['.zip'] };

/** Where jobs come from and go to on disk. What fails is said, and nothing here is changed. */
export class JobFiles {
  readonly word = signal<FileWord | undefined>(undefined);
  /** How the open job's file on disk stands, where it has one that can be written. */
  readonly disk = signal<DiskOutcome | undefined>(undefined);

  private readonly shelf: JobShelf;
  private readonly held: ReadonlySignal<Held | undefined>;
  private readonly keeper: Keeper;

  constructor(shelf: JobShelf, held: ReadonlySignal<Held | undefined>, keeper: Keeper) {
    this.shelf = shelf;
    this.held = held;
    this.keeper = keeper;
    effect(() => {
      const its = held.value;
      this.disk.value = undefined;
      if (its?.job.handle) untracked(() => void this.toDisk(its));
    });
  }

  /** Opens a job from disk: from then on its entries are written there as well, where that can be. */
  async open(): Promise<void> {
    await this.attempt(async () => {
      const picked = await pick(ANY);
      if (picked) await this.bring(picked, true);
    });
  }

  /** Takes in what a colleague's copy of a job has beyond ours; their file stays as it is. */
  async unite(): Promise<void> {
    await this.attempt(async () => {
      const picked = await pick(ANY);
      if (picked) await this.bring(picked, false);
    });
  }

  /** Saves the open job as a file of the command's. */
  async save(): Promise<void> {
    await this.attempt(async () => {
      const held = this.held.value;
      if (!held) return;
      const yaml = new Blob([textOf(held)], { type: 'application/yaml' });
      const saved = await saveAs(held.job.name, yaml, JOB);
      if (!saved) return;
      const { name, handle } = saved;
      const lines = linesOf(held).length;
      await this.shelf.change(held.job.id, {
        saved: { name, lines },
        ...(handle && { name, handle }),
      });
      this.word.value = { word: 'saved', name };
    });
  }

  /** Saves the open job, its train and its photographs, in one file. */
  async saveAll(): Promise<void> {
    await this.attempt(async () => {
      const held = this.held.value;
      if (!held) return;
      const { id, name } = held.job;
      const pictures = await this.shelf.photographs(id);
      const zip = zipOf({ name, text: textOf(held), train: this.keeper.train(), pictures });
      const saved = await saveAs(name.replace(/\.ya?ml$/u, '.zip'), zip, {
        'application/zip': ['.zip'],
      });
      if (!saved) return;
      await this.shelf.change(id, { saved: { name: saved.name, lines: linesOf(held).length } });
      this.word.value = { word: 'saved', name: saved.name };
    });
  }

  /** Writes the open job to its file where the browser wanted to be asked first. */
  async allowDisk(): Promise<void> {
    const held = this.held.value;
    if (held) await this.toDisk(held, true);
  }

  private async bring({ file, handle }: Picked, own: boolean): Promise<void> {
    const brought = await broughtBy(file);
    const { name, text, train, pictures, asCame, leftOut } = brought;
    const { job, problems } = readJob(text);
    if (!job) {
      this.word.value = { word: 'no job', name, problems };
      return;
    }
    const beside = train && (isTextOf(job, train.text) ? { train } : { beside: train });
    const more = { ...beside, ...(own && handle && name === file.name && { handle }) };
    const here = this.shelf.jobs.value.find((held) => isSameJob(textOf(held), text));
    if (here) await this.addTo(here, brought, more);
    else {
      const { header, lines } = partsOf(text);
      const id = newId();
      const saved = { name: file.name, lines: lines.length };
      this.keeper.told(await this.shelf.add({ id, name, header, saved, ...more }, lines, pictures));
      this.keeper.take(id);
      const remarks = { asCame, leftOut, others: [] };
      this.word.value = { word: 'opened', name: file.name, unread: problems.length, ...remarks };
    }
  }

  private async addTo(here: Held, brought: Brought, more: Partial<KeptJob>): Promise<void> {
    const { id, train } = here.job;
    const { name, text, asCame, leftOut } = brought;
    const came = linesBeyond(linesOf(here), partsOf(text));
    const { pictures, others } = parted(await this.shelf.photographs(id), brought.pictures);
    this.keeper.told(await this.shelf.keep(id, came, pictures));
    // Its train is here already, and may have been edited since.
    await this.shelf.change(id, { ...more, ...(train && { train }) });
    this.keeper.take(id);
    this.word.value = { word: 'united', name, came: came.length, asCame, leftOut, others };
  }

  private async toDisk(held: Held, mayAsk = false): Promise<void> {
    const { id, handle } = held.job;
    if (!handle) return;
    const outcome = await uniteOnDisk(handle, textOf(held), mayAsk);
    if (this.held.value?.job.id === id) this.disk.value = outcome;
    if (outcome.disk !== 'written') return;
    if (outcome.beyond.length > 0) this.keeper.told(await this.shelf.keep(id, outcome.beyond));
    const lines = linesOf(held).length;
    if (held.job.saved?.lines !== lines || held.job.saved.name !== handle.name) {
      await this.shelf.change(id, { saved: { name: handle.name, lines } });
    }
  }

  private async attempt(work: () => Promise<void>): Promise<void> {
    this.word.value = undefined;
    try {
      await work();
    } catch (error) {
      if (error instanceof SeveralJobs)
        this.word.value = { word: 'several jobs', names: error.names };
      else if (error instanceof RangeError) this.word.value = { word: 'too large' };
      else if (error instanceof TypeError) this.word.value = { word: 'not text' };
      else this.word.value = { word: 'failed', why: error instanceof Error ? error.message : '' };
    }
  }
}
