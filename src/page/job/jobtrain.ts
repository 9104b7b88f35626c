import { computed, effect, type ReadonlySignal, untracked } from '@preact/signals';
import type { Given } from '../../asking/request/index.ts';
import { deskOf, ourTrains } from '../desk/index.ts';
import type { Study } from '../study/index.ts';
import { foldedOf, type Held, isTextOf, trainNameOf } from './held.ts';
import type { JobShelf, Outcome } from './shelf.ts';

/** How the train on the page stands to the open job's. */
export type Standing =
  /** It is the job's: as it was begun with, as it was kept with it, or edited since. */
  | 'here'
  /** It bears the name of the job's, and is another text: edited elsewhere, or another unit's. */
  | 'another text'
  | 'another';

/** The train of the open job, and the one on the page: whether they are one, and how they become it. */
export class JobTrain {
  readonly stands: ReadonlySignal<Standing>;
  readonly isHere: ReadonlySignal<boolean>;
  /** Whether another than the one on the page is at hand: kept with the job, or one of ours. */
  readonly isAtHand: ReadonlySignal<boolean>;

  private readonly study: Study;
  private readonly shelf: JobShelf;
  private readonly held: ReadonlySignal<Held | undefined>;
  private readonly told: (outcome: Outcome) => void;

  constructor(
    study: Study,
    shelf: JobShelf,
    held: ReadonlySignal<Held | undefined>,
    told: (outcome: Outcome) => void,
  ) {
    [this.study, this.shelf, this.held, this.told] = [study, shelf, held, told];
    let matched = '';
    this.stands = computed(() => {
      const its = held.value;
      const { name, text, opened } = study.file;
      const called = its && trainNameOf(its);
      if (!its || called === undefined) return 'here';
      // Once it is the job's, an edit of it is the job's too, until another file is opened.
      const pair = `${its.job.id} ${opened.value}`;
      const isNamed = called === name.value;
      if (isNamed && isIts(its, text.value)) matched = pair;
      if (matched === pair) return 'here';
      return isNamed ? 'another text' : 'another';
    });
    this.isHere = computed(() => this.stands.value === 'here');
    this.isAtHand = computed(() => {
      const its = held.value && kept(held.value);
      if (typeof its === 'object') return its.text !== study.file.text.value;
      return its !== undefined && its !== study.file.name.value.replace(ENDING, '');
    });
    effect(() => this.keep());
  }

  /** The job's own, as it is now; undefined where it is not at hand. */
  get given(): Given | undefined {
    const { name, text } = this.study.file;
    const { value: held } = this.held;
    if (!held || trainNameOf(held) === undefined) return undefined;
    if (this.isHere.value) return { called: name.value, text: text.value };
    return held.job.train;
  }

  /** Puts the job's own train on the page, where it is not. */
  async bring(): Promise<void> {
    const { value: held } = this.held;
    const desk = deskOf(this.study);
    if (!held || !desk || this.isHere.value) return;
    const its = kept(held);
    if (typeof its === 'object') await desk.openText(its.called, its.text);
    else if (its !== undefined) await desk.openOurs(its);
  }

  /** Whoever knows it says that the train on the page is the job's, edited since it was begun. */
  async take(): Promise<void> {
    const { value: held } = this.held;
    const { name, text } = this.study.file;
    if (!held || this.stands.value !== 'another text') return;
    const train = { called: name.value, text: text.value };
    this.told(await this.shelf.change(held.job.id, { train }));
  }

  // What is edited of the job's train is the job's: limits that were typed into it, say.
  private keep(): void {
    const { name, text, reading } = this.study.file;
    const its = { called: name.value, text: text.value };
    if (!this.isHere.value || !reading.value.train) return;
    untracked(() => {
      const { value: held } = this.held;
      if (!held || trainNameOf(held) === undefined || held.job.train?.text === its.text) return;
      void this.shelf.change(held.job.id, { train: its }).then(this.told);
    });
  }
}

function isIts(held: Held, text: string): boolean {
  const { train } = held.job;
  return train ? train.text === text : isTextOf(foldedOf(held), text);
}

// What there is to be brought: a text that was kept, else the name of a train of ours.
function kept(held: Held): Given | string | undefined {
  const stem = trainNameOf(held)?.replace(ENDING, '');
  return held.job.train ?? held.job.beside ?? ourTrains.find((ours) => ours === stem);
}

const ENDING = /\.train\.yaml$/u;
