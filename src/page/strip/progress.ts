import { signal } from '@preact/signals';
import type { Part } from '../../engine/train/index.ts';
import { nextOff, nextOn, type Stripping } from '../../shop/strip/index.ts';
import { recalled, remember } from '../words/index.ts';

/** What a person is at: taking the unit apart, or putting it together. */
export type StripTask = 'apart' | 'together';

interface Said {
  readonly way: StripTask;
  readonly off: readonly string[];
  /** The part that is on the screen; absent: the next one. */
  readonly at?: string;
}

/**
 * How far a unit is stripped, a job each (else a train): remembered by the browser, so that a reload
 * comes back to the same part. Names that the file has no more are passed over.
 */
export class Progress {
  private readonly said;
  private readonly key: string;
  readonly teardown: readonly Part[];

  constructor(work: string, teardown: readonly Part[]) {
    this.key = `strip ${work}`;
    this.teardown = teardown;
    this.said = signal(read(recalled(this.key, ['browser'])));
  }

  get way(): StripTask {
    return this.said.value.way;
  }

  get stripping(): Stripping {
    const known = new Set(this.teardown.map(({ name }) => name));
    const off = this.said.value.off.filter((name) => known.has(name));
    return { teardown: this.teardown, off: new Set(off) };
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
  move({ name }: Part): void {
    const { way, off } = this.said.value;
    const without = off.filter((other) => other !== name);
    this.say({ way, off: without.length === off.length ? [...off, name] : without, at: name });
  }

  private say(said: Said): void {
    this.said.value = said;
    remember(this.key, JSON.stringify(said), ['browser']);
  }
}

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
