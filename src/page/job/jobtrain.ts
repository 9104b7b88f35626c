import { computed, effect, type ReadonlySignal, untracked } from '@preact/signals';
import { deskOf, ourTrains } from '../desk/index.ts';
import type { Study } from '../study/index.ts';
import { type Held, trainNameOf } from './held.ts';
import type { JobShelf } from './shelf.ts';

/** The train of the open job, and the one on the page: whether they are one, and how they become it. */
export class JobTrain {
  /** Whether the train on the page is the open job's: as it was kept with it, or edited since. */
  readonly isHere: ReadonlySignal<boolean>;
  /** Whether the job's own is at hand: kept with it, or one of ours. */
  readonly isAtHand: ReadonlySignal<boolean>;

  private readonly study: Study;
  private readonly shelf: JobShelf;
  private readonly held: ReadonlySignal<Held | undefined>;

  constructor(study: Study, shelf: JobShelf, held: ReadonlySignal<Held | undefined>) {
    [this.study, this.shelf, this.held] = [study, shelf, held];
    let matched = '';
    this.isHere = computed(() => {
      const its = held.value;
      const { name, text, opened } = study.file;
      const called = its && trainNameOf(its);
      if (!its || called === undefined) return true;
      // Once it is the job's, an edit of it is the job's too, until another file is opened.
      const pair = `${its.job.id} ${opened.value}`;
      const { train } = its.job;
      if (called === name.value && (!train || train.text === text.value)) matched = pair;
      return matched === pair;
    });
    this.isAtHand = computed(() => {
      const its = held.value;
      return its !== undefined && (its.job.train !== undefined || oursOf(its) !== undefined);
    });
    effect(() => this.keep());
  }

  /** Puts the job's own train on the page, where it is not. */
  async bring(): Promise<void> {
    const { value: held } = this.held;
    const desk = deskOf(this.study);
    if (!held || !desk || this.isHere.value) return;
    const { train } = held.job;
    const ours = oursOf(held);
    if (train) await desk.openText(train.called, train.text);
    else if (ours !== undefined) await desk.openOurs(ours);
  }

  // What is edited of the job's train is the job's: limits that were typed into it, say.
  private keep(): void {
    const { name, text, reading } = this.study.file;
    const its = { called: name.value, text: text.value };
    if (!this.isHere.value || !reading.value.train) return;
    untracked(() => {
      const { job } = this.held.value ?? {};
      if (!job?.train || job.train.text === its.text) return;
      void this.shelf.change(job.id, { train: its });
    });
  }
}

// A train of ours by the name of the job's file.
function oursOf(held: Held): string | undefined {
  const stem = trainNameOf(held)?.replace(/\.train\.yaml$/u, '');
  return ourTrains.find((ours) => ours === stem);
}
