import { signal } from '@preact/signals';
import { partsIn, type PartStanding } from '../../asking/job/index.ts';
import type { Part } from '../../engine/train/index.ts';
import type { Told } from '../../shop/records/index.ts';
import { nextOff, nextOn, type Stripping } from '../../shop/strip/index.ts';
import type { JobDesk } from '../job/index.ts';
import { recalled, remember } from '../words/index.ts';

/** What a person is at: taking the unit apart, or putting it together. */
export type StripTask = 'apart' | 'together';

/** How a part goes on again. */
export type Again = { readonly replaced: true } | { readonly why: string } | undefined;

interface Said {
  readonly way: StripTask;
  /** What is off, where no job says it. */
  readonly off: readonly string[];
  /** The part that is on the screen; absent: the next one. */
  readonly at?: string;
}

/**
 * How far a unit is stripped. With a job open its entries say what is off; with none the browser
 * remembers it of the train, and in both where a person is, so that a reload comes back to the
 * same part. Names that the file has no more are passed over.
 */
export class Progress {
  private readonly said;
  private readonly key: string;
  private readonly jobs: JobDesk;
  private readonly names: readonly string[];
  readonly teardown: readonly Part[];

  constructor(work: string, teardown: readonly Part[], jobs: JobDesk) {
    this.key = keyOf(work);
    this.teardown = teardown;
    this.names = teardown.map(({ name }) => name);
    this.jobs = jobs;
    this.said = signal(read(recalled(this.key, ['browser'])));
  }

  get way(): StripTask {
    return this.said.value.way;
  }

  get stripping(): Stripping {
    const parts = this.jobs.open.value && partsIn(this.jobs.open.value, this.names);
    const off = this.names.filter((name) => {
      return parts ? parts.get(name)?.off : this.said.value.off.includes(name);
    });
    return { teardown: this.teardown, off: new Set(off) };
  }

  /** What the job says of a part: what it was found to be, and how it went on. */
  standing({ name }: Part): PartStanding | undefined {
    return partsIn(this.jobs.open.value, this.names).get(name);
  }

  /** What came off with no job open, while the one that is open has no part off or on. */
  get aside(): readonly string[] {
    const { value: job } = this.jobs.open;
    if (!job || job.entries.some(({ told }) => told?.kind === 'removed')) return [];
    const { off } = read(recalled(keyOf(this.jobs.aside.value), ['browser']));
    return this.names.filter((name) => off.includes(name));
  }

  /** Writes what came off with no job into the open one: it is the same unit. */
  async handOver(): Promise<void> {
    for (const part of this.aside) {
      // One after the other, as they came off; what was written is not aside any more.
      // oxlint-disable-next-line eslint/no-await-in-loop
      if ((await this.jobs.write({ kind: 'removed', part })) !== 'kept') return;
    }
    remember(keyOf(this.jobs.aside.value), '', ['browser']);
  }

  /** The part on the screen; undefined when nothing is left to do this way. */
  get part(): Part | undefined {
    const { at } = this.said.value;
    return this.teardown.find(({ name }) => name === at) ?? this.next;
  }

  /** The part that comes next this way. */
  get next(): Part | undefined {
    return this.way === 'apart' ? nextOff(this.stripping) : nextOn(this.stripping);
  }

  turn(way: StripTask): void {
    this.say({ way, off: this.said.value.off });
  }

  /** Shows a part; without a name the next one. */
  show(at?: string): void {
    const { way, off } = this.said.value;
    this.say({ way, off, ...(at !== undefined && { at }) });
  }

  /** Takes a part off or puts it on, and stays with it. */
  async move({ name }: Part, again?: Again): Promise<void> {
    const isOff = this.stripping.off.has(name);
    this.show(name);
    if (this.jobs.open.value) {
      const told: Told = isOff
        ? { kind: 'installed', part: name, ...again }
        : { kind: 'removed', part: name };
      await this.jobs.write(told);
      return;
    }
    const { way, off } = this.said.value;
    const without = off.filter((other) => other !== name);
    this.say({ way, off: isOff ? without : [...off, name], at: name });
  }

  private say(said: Said): void {
    this.said.value = said;
    remember(this.key, JSON.stringify(said), ['browser']);
  }
}

const keyOf = (work: string) => `strip ${work}`;

const NOTHING: Said = { way: 'apart', off: [] };

// What a browser remembers may be anybody's.
function read(text: string): Said {
  try {
    const { way, off, at } = JSON.parse(text) as Partial<Record<keyof Said, unknown>>;
    const names = Array.isArray(off) ? off.filter((name) => typeof name === 'string') : [];
    const place = typeof at === 'string' ? { at } : {};
    return { way: way === 'together' ? way : 'apart', off: names, ...place };
  } catch {
    return NOTHING;
  }
}
