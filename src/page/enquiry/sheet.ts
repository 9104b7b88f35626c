import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { entryMade, jobIn, type ToldOrStruck } from '../../asking/job/index.ts';
import { NoAnswer } from '../../asking/request/index.ts';
import type { FoldedJob, Told } from '../../shop/records/index.ts';
import type { JobDesk } from '../job/index.ts';
import { blank, LooseStore } from './loosestore.ts';

/** What answers are written on: an open job, or a sheet that only this browser keeps. */
export interface Sheet {
  readonly job: ReadonlySignal<FoldedJob>;
  /** Whether it is a job's; else it is told that none is open. */
  readonly ofJob: boolean;
  /**
   * Resolves with true when it is kept, or is held by this page alone, which `keeps` then says; a
   * job's keeper tells itself why it is not.
   */
  write(told: Told): Promise<boolean>;
  strike(id: string, because: string): Promise<boolean>;
}

/** The job that is open on the page. */
export class JobSheet implements Sheet {
  readonly ofJob = true;
  readonly job: ReadonlySignal<FoldedJob>;
  private readonly desk: JobDesk;

  constructor(desk: JobDesk) {
    this.desk = desk;
    this.job = computed(() => desk.open.value ?? NOTHING);
  }

  async write(told: Told): Promise<boolean> {
    return (await this.desk.write(told)) === 'kept';
  }

  async strike(id: string, because: string): Promise<boolean> {
    return (await this.desk.strike(id, because)) === 'kept';
  }
}

/**
 * A sheet with no job, of one train (`aside` of the job desk): it outlives a reload where the
 * browser keeps anything. Two tabs write on the same one, each below the other's.
 */
export class LooseSheet implements Sheet {
  readonly ofJob = false;
  readonly job: ReadonlySignal<FoldedJob>;
  /** Whether the browser keeps it; else it is gone with the page. */
  readonly keeps = signal(true);
  /** What was kept and cannot be read: it is set aside as it was. */
  readonly spoilt = signal<string | undefined>(undefined);
  private readonly told = signal<FoldedJob>(NOTHING);
  private readonly store: LooseStore;
  /** What the browser would not keep, in its order. */
  private held = '';

  constructor(aside: string) {
    this.store = new LooseStore(aside);
    this.job = this.told;
    this.read();
  }

  /** Looks at what another tab writes on it; the returned function ends it. */
  follow(): () => void {
    return this.store.follow(() => this.read());
  }

  write(told: Told): Promise<boolean> {
    return Promise.resolve(this.add({ told }));
  }

  strike(id: string, because: string): Promise<boolean> {
    return Promise.resolve(this.add({ strikes: { id, because } }));
  }

  /** Begins anew. */
  clear(): void {
    this.store.forget();
    this.held = '';
    this.read();
  }

  // Below all that stands by now: another tab may have written since.
  private add(said: ToldOrStruck): boolean {
    const before = this.read();
    const { text } = entryMade(said, { who: WHO, at: new Date().toISOString() }, this.told.value);
    this.keeps.value = this.store.keep(before + text);
    this.held = this.keeps.value ? '' : this.held + text;
    this.told.value = folded(before + text) ?? this.told.value;
    return true;
  }

  private read(): string {
    const kept = this.store.text();
    const sound = kept !== undefined && folded(kept + this.held) !== undefined;
    if (kept !== undefined && !sound) this.spoilt.value = this.store.setAside(kept);
    const text = (sound ? kept : blank(WHO)) + this.held;
    this.told.value = folded(text) ?? NOTHING;
    return text;
  }
}

function folded(text: string): FoldedJob | undefined {
  try {
    return jobIn({ called: '', text }).job;
  } catch (error) {
    if (error instanceof NoAnswer) return undefined;
    throw error;
  }
}

// Nobody signs what no job keeps.
const WHO = 'page';

const NOTHING: FoldedJob = { unit: '', complaint: '', by: '', at: '', entries: [] };
