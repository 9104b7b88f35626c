import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { entryMade, jobIn, jobMade, type ToldOrStruck } from '../../asking/job/index.ts';
import type { FoldedJob, Told } from '../../shop/records/index.ts';
import type { JobDesk } from '../job/index.ts';

/** What answers are written on: an open job, or a sheet that only this browser keeps. */
export interface Sheet {
  readonly job: ReadonlySignal<FoldedJob>;
  /** Whether it is a job's; else it is told that none is open. */
  readonly ofJob: boolean;
  /** Resolves when it is kept, with true; whoever keeps it tells why it is not. */
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
 * browser keeps anything.
 */
export class LooseSheet implements Sheet {
  readonly ofJob = false;
  readonly job: ReadonlySignal<FoldedJob>;
  private readonly place: string;
  private readonly told = signal<FoldedJob>(NOTHING);
  private text: string;

  constructor(aside: string) {
    this.place = `holdturn told ${aside}`;
    this.job = this.told;
    this.text = recalled(this.place) ?? blank();
    this.read();
  }

  write(told: Told): Promise<boolean> {
    return Promise.resolve(this.add({ told }));
  }

  strike(id: string, because: string): Promise<boolean> {
    return Promise.resolve(this.add({ strikes: { id, because } }));
  }

  /** Begins anew. */
  clear(): void {
    try {
      localStorage.removeItem(this.place);
    } catch {
      // Nothing was kept.
    }
    this.text = blank();
    this.read();
  }

  private add(said: ToldOrStruck): boolean {
    const { text } = entryMade(said, { who: WHO, at: new Date().toISOString() }, this.told.value);
    this.text += text;
    this.read();
    try {
      localStorage.setItem(this.place, this.text);
    } catch {
      // Forbidden or full: it holds until the page is closed.
    }
    return true;
  }

  private read(): void {
    this.told.value = jobIn({ called: '', text: this.text }).job;
  }
}

// Nobody signs what no job keeps.
const WHO = 'page';
function blank(): string {
  return jobMade({ unit: '-', complaint: '', by: WHO, at: new Date().toISOString() });
}

const NOTHING: FoldedJob = { unit: '', complaint: '', by: '', at: '', entries: [] };

function recalled(place: string): string | undefined {
  try {
    return localStorage.getItem(place) ?? undefined;
  } catch {
    return undefined;
  }
}
