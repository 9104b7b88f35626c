import { signal } from '@preact/signals';
import { notesIn } from '../../asking/build/index.ts';
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
  /** What was noted, where no job is open. */
  readonly notes: readonly string[];
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

  /** What was noted of the unit. */
  get notes(): readonly string[] {
    return this.jobs.open.value ? notesIn(this.jobs.open.value) : this.said.value.notes;
  }

  /** Notes something; the browser remembers it until there is a job. */
  async note(note: string): Promise<void> {
    if (this.jobs.open.value) return void (await this.jobs.write({ kind: 'note', note }));
    const { notes } = this.said.value;
    this.say({ ...this.said.value, notes: [...notes, note] });
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
    const { notes } = read(recalled(keyOf(this.jobs.aside.value), ['browser']));
    const told: readonly Told[] = [
      ...notes.map((note) => ({ kind: 'note', note }) as const),
      ...this.aside.map((part) => ({ kind: 'removed', part }) as const),
    ];
    for (const its of told) {
      // One after the other, as they came off; what was written is not aside any more.
      // oxlint-disable-next-line eslint/no-await-in-loop
      if ((await this.jobs.write(its)) !== 'kept') return;
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
    const { off, notes } = this.said.value;
    this.say({ way, off, notes });
  }

  /** Shows a part; without a name the next one. */
  show(at?: string): void {
    const { way, off, notes } = this.said.value;
    this.say({ way, off, notes, ...(at !== undefined && { at }) });
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
    const { way, off, notes } = this.said.value;
    const without = off.filter((other) => other !== name);
    this.say({ way, off: isOff ? without : [...off, name], notes, at: name });
  }

  /** What is being typed of a part, and not written down yet. */
  typed({ name }: Part): string {
    return recalled(`${this.key} typed ${name}`, ['browser']);
  }

  type({ name }: Part, text: string): void {
    remember(`${this.key} typed ${name}`, text, ['browser']);
  }

  private say(said: Said): void {
    this.said.value = said;
    remember(this.key, JSON.stringify(said), ['browser']);
  }
}

const keyOf = (work: string) => `strip ${work}`;

const NOTHING: Said = { way: 'apart', off: [], notes: [] };

// What a browser remembers may be anybody's.
function read(text: string): Said {
  try {
    const its = JSON.parse(text) as Partial<Record<keyof Said, unknown>>;
    const { way, at } = its;
    const place = typeof at === 'string' ? { at } : {};
    const [off, notes] = [textsOf(its.off), textsOf(its.notes)];
    return { way: way === 'together' ? way : 'apart', off, notes, ...place };
  } catch {
    return NOTHING;
  }
}

function textsOf(its: unknown): string[] {
  return Array.isArray(its) ? its.filter((one) => typeof one === 'string') : [];
}
