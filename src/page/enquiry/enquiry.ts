import { batch, computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Examination } from '../../asking/faults/index.ts';
import { entryTold } from '../../asking/job/index.ts';
import type { Told } from '../../shop/records/index.ts';
import { ownExperience } from '../desk/index.ts';
import { jobsOf } from '../job/index.ts';
import type { Study } from '../study/index.ts';
import { type AllTold, beside } from '../thread/index.ts';
import { recall, remember, type Screen } from './screen.ts';
import { seenEntries } from './told.ts';
import { troubleText } from './trouble.ts';
import { JobSheet, LooseSheet, type Sheet } from './sheet.ts';

/** What a person is at in finding a fault: what was told so far, what comes of it, and what is asked. */
export class Enquiry {
  readonly sheet: ReadonlySignal<Sheet>;
  /** What is suspected by all that was told; that of before, while it is worked out. */
  readonly found = signal<Examination | undefined>(undefined);
  readonly working = signal(false);
  /** Why something was not worked out or not written. */
  readonly trouble = signal<string | undefined>(undefined);
  readonly skipped = signal<readonly string[]>([]);
  readonly screen = signal<Screen>({ at: 'driver' });
  /** The suspect that is looked at: places in the ranking. */
  readonly opened = signal<{ readonly bracket: number; readonly suspect: number } | undefined>(
    undefined,
  );
  private readonly past = signal<readonly Screen[]>([]);
  readonly canGoBack = computed(() => this.past.value.length > 0);
  private readonly study: Study;
  /** What is told in no job. */
  readonly loose: ReadonlySignal<LooseSheet>;

  constructor(study: Study) {
    this.study = study;
    const desk = jobsOf(study);
    const work = computed(() => desk.work.value ?? '');
    this.loose = computed(() => new LooseSheet(desk.aside.value));
    const ofJob = new JobSheet(desk);
    effect(() => this.loose.value.follow());
    const isOpen = computed(() => desk.open.value !== undefined);
    this.sheet = computed(() => (isOpen.value ? ofJob : this.loose.value));
    effect(() => {
      const its = recall(work.value);
      batch(() => {
        this.screen.value = its.screen;
        this.skipped.value = its.skipped;
        this.past.value = [];
        this.opened.value = undefined;
        this.found.value = undefined;
      });
    });
    effect(() => remember(work.peek(), { screen: this.screen.value, skipped: this.skipped.value }));
  }

  /** All that was told, as the other thread takes it; undefined where there is no train. */
  readonly told = computed<AllTold | undefined>(() => {
    const { file } = this.study;
    if (!file.train.value || file.reading.value.train === undefined) return undefined;
    const { job } = this.sheet.value;
    return { train: file.text.value, job: job.value, skipped: this.skipped.value };
  });

  /** Keeps what is suspected as it should be by what was told; the returned function ends it. */
  follow(): () => void {
    let last = 0;
    return effect(() => {
      // Another shop's figures weigh it anew.
      const [told] = [this.told.value, ownExperience.value];
      if (!told) return;
      const number = (last += 1);
      this.working.value = true;
      beside('examine', told).then(
        (found) => number === last && this.came(found),
        (error: unknown) => number === last && this.fell(error),
      );
    });
  }

  /** From the driver's words on, with nothing skipped. */
  begin(): void {
    batch(() => {
      this.screen.value = { at: 'driver' };
      this.past.value = [];
      this.skipped.value = [];
      this.opened.value = undefined;
    });
  }

  go(screen: Screen): void {
    batch(() => {
      this.past.value = [...this.past.value, this.screen.value].slice(-MOST_BACK);
      this.screen.value = screen;
    });
  }

  back(): void {
    const last = this.past.value.at(-1);
    if (!last) return;
    batch(() => {
      this.past.value = this.past.value.slice(0, -1);
      this.screen.value = last;
    });
  }

  skip(test: string): void {
    this.skipped.value = [...new Set([...this.skipped.value, test])];
  }

  /** Writes down what was seen of a test, in the words of a file; on to the next question. */
  async answer(test: string, saw: string): Promise<void> {
    const told = seenTold(test, saw);
    const all = this.told.value;
    try {
      if (all) await beside('fits', { ...all, told });
      if (!(await this.write(told))) return;
      batch(() => {
        this.skipped.value = this.skipped.value.filter((other) => other !== test);
        // Back leads to the test that was answered, not to whatever is the next one then.
        if (this.screen.value.at === 'next') this.screen.value = { at: 'test', test };
        this.go({ at: 'next' });
      });
    } catch (error) {
      this.fell(error);
    }
  }

  /** What the driver says, in their own words. */
  says(text: string): Promise<boolean> {
    return this.write(seenTold('driver says', text));
  }

  /** What was found as it came apart, in a note. */
  finds(note: string): Promise<boolean> {
    return this.write({ kind: 'note', note });
  }

  /** What the driver's words were taken for is not what they say, or is after all. */
  unsay(test: string): Promise<boolean> {
    return this.write(seenTold(test, 'not said'));
  }

  strike(id: string, because: string): Promise<boolean> {
    return this.sheet.value.strike(id, because);
  }

  /** What was told before the job was opened, and stands. */
  readonly before = computed(() => {
    if (!this.sheet.value.ofJob) return [];
    return seenEntries(this.loose.value.job.value).filter(({ entry }) => !entry.struckBy);
  });

  /**
   * Writes what was told before into the job, one after the other as they were told; each is told
   * no more beside it once the job has it, so that one that is refused is not written twice.
   */
  async takeOver(): Promise<void> {
    if (this.taking) return;
    this.taking = true;
    const { value: loose } = this.loose;
    for (const { entry, of, text } of this.before.value.toReversed()) {
      const told =
        of === '' ? ({ kind: 'note', note: text } as const) : ({ kind: 'seen', of, text } as const);
      // oxlint-disable-next-line eslint/no-await-in-loop
      if (!(await this.write(told))) break;
      // oxlint-disable-next-line eslint/no-await-in-loop
      await loose.strike(entry.id, 'in the job');
    }
    this.taking = false;
    if (this.before.value.length === 0) loose.clear();
  }

  private taking = false;

  private write(told: Told): Promise<boolean> {
    return this.sheet.value.write(told);
  }

  private came(found: Examination): void {
    batch(() => {
      this.found.value = found;
      this.working.value = false;
      this.trouble.value = undefined;
    });
  }

  private fell(error: unknown): void {
    batch(() => {
      this.working.value = false;
      this.trouble.value = troubleText(error);
    });
  }
}

const MOST_BACK = 50;

function seenTold(of: string, said: string): Told {
  return entryTold(['seen', of, JSON.stringify(said)], {});
}
