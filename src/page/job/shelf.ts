import { signal } from '@preact/signals';
import { linesBeyond } from '../../shop/records/index.ts';
import { type Held, linesOf } from './held.ts';
import { lookAtKeeping } from './keeping.ts';
import { JobStore, type KeptJob, NotKept, type Photograph } from './store.ts';
import { hearTabs } from './tabs.ts';

/** What became of something that was to be kept. */
export type Outcome = 'kept' | NotKept;

/**
 * The jobs of this browser, the same in each of its tabs. What the store will not take stays here,
 * as long as the page is open, and is tried again with whatever comes next.
 */
export class JobShelf {
  readonly jobs = signal<readonly Held[]>([]);
  /** How often pictures came: another number is more of them. */
  readonly pictured = signal(0);

  private readonly store = new JobStore();
  private readonly tell = hearTabs(() => void this.load());
  // One thing after another, so that none is reckoned on what another is about to change.
  private last: Promise<unknown> = Promise.resolve();

  constructor() {
    window.addEventListener('beforeunload', (event) => {
      if (this.jobs.value.some(({ isKept, pending }) => !isKept || pending.length > 0)) {
        event.preventDefault();
      }
    });
  }

  /** Reads what the store has; false where it keeps nothing. */
  load(): Promise<boolean> {
    return this.inTurn(async () => {
      try {
        const all = await this.store.all();
        const before = new Map(this.jobs.value.map((held) => [held.job.id, held]));
        const kept = all.map(({ lines, ...job }): Held => {
          const ours = before.get(job.id);
          before.delete(job.id);
          const { pending = [], pictures = [], isKept = true } = ours ?? {};
          return { job: ours && !isKept ? ours.job : job, lines, pending, pictures, isKept };
        });
        const unkept = [...before.values()].filter(({ isKept }) => !isKept);
        this.jobs.value = [...kept, ...unkept];
        await lookAtKeeping(true);
        return true;
      } catch {
        await lookAtKeeping(false);
        return false;
      }
    });
  }

  held(id: string | undefined): Held | undefined {
    return this.jobs.value.find(({ job }) => job.id === id);
  }

  /** A new job, with the lines and pictures that it comes with. */
  add(
    job: KeptJob,
    lines: readonly string[],
    pictures: readonly Photograph[] = [],
  ): Promise<Outcome> {
    this.jobs.value = [
      ...this.jobs.value,
      { job, lines: [], pending: [], pictures: [], isKept: false },
    ];
    return this.keep(job.id, lines, pictures);
  }

  /** Adds to a job, and whatever of it was not kept before. */
  keep(
    id: string,
    lines: readonly string[],
    pictures: readonly Photograph[] = [],
  ): Promise<Outcome> {
    return this.inTurn(async () => {
      const held = this.held(id);
      if (!held) return new NotKept('gone');
      const pending = [...held.pending, ...linesBeyond(linesOf(held), { header: '', lines })];
      const all = { ...held, pending, pictures: [...held.pictures, ...pictures] };
      // Nothing is seen to be written down before the disk has it.
      try {
        await this.write(all);
      } catch (error) {
        this.replace(all);
        const why = error instanceof NotKept ? error : new NotKept('failed', `${error}`);
        await lookAtKeeping(why.why !== 'forbidden');
        return why;
      }
      this.replace({ ...all, lines: linesOf(all), pending: [], pictures: [], isKept: true });
      this.tell(id);
      if (pictures.length > 0) {
        this.pictured.value += 1;
        void lookAtKeeping(true);
      }
      return 'kept';
    });
  }

  /** What is known of a job beside its lines; what is not kept at all is kept with it, later. */
  change(id: string, its: Partial<Omit<KeptJob, 'id'>>): Promise<Outcome> {
    return this.inTurn(async () => {
      const held = this.held(id);
      if (!held) return new NotKept('gone');
      const changed = { ...held, job: { ...held.job, ...its } };
      this.replace(changed);
      if (!held.isKept) return 'kept';
      try {
        await this.store.change(id, its);
      } catch (error) {
        // It is put there whole with whatever is kept next.
        this.replace({ ...changed, isKept: false });
        return error instanceof NotKept ? error : new NotKept('failed', `${error}`);
      }
      this.tell(id);
      return 'kept';
    });
  }

  /** Every picture of a job, those too that are only here. */
  async photographs(id: string): Promise<readonly Photograph[]> {
    const here = this.held(id)?.pictures ?? [];
    const kept = await this.store.photographs(id).catch(() => []);
    return [...kept, ...here];
  }

  remove(id: string): Promise<void> {
    return this.inTurn(async () => {
      if (this.held(id)?.isKept) await this.store.remove(id);
      this.jobs.value = this.jobs.value.filter(({ job }) => job.id !== id);
      this.tell(id);
    });
  }

  // What another tab has discarded and this one still writes to is there again, whole.
  private async write(held: Held): Promise<void> {
    const { job, pending, pictures } = held;
    const whole = () => this.store.put(job, linesOf(held), pictures);
    if (!held.isKept) return whole();
    try {
      await this.store.append(job.id, pending, pictures);
    } catch (error) {
      if (!(error instanceof NotKept) || error.why !== 'gone') throw error;
      await whole();
    }
  }

  private replace(held: Held): void {
    const { id } = held.job;
    this.jobs.value = this.jobs.value.map((other) => (other.job.id === id ? held : other));
  }

  private inTurn<Its>(work: () => Promise<Its>): Promise<Its> {
    const its = this.last.then(work);
    this.last = its.catch(() => {});
    return its;
  }
}
