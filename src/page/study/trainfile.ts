import { batch, computed, signal } from '@preact/signals';
import type { Train } from '../../engine/train/index.ts';
import type { Reading } from '../../engine/trainfile/index.ts';
import { text as firstText, train as firstTrain } from 'virtual:first-train';

type Read = Partial<Pick<Reading, 'train'>> & Pick<Reading, 'problems'>;
type Reader = (text: string) => Read;

// The first picture does not wait for it: the first train was read when the page was built.
const reader = signal<Reader | undefined>(undefined);

/** Fetches the code that reads train files; resolves when it has come. */
export async function fetchReader(): Promise<void> {
  reader.value ??= (await import('../../engine/trainfile/index.ts')).readTrain;
}

/** What undo takes back and redo brings again: of one file, and laid aside with it. */
export interface Edits {
  readonly past: readonly string[];
  readonly future: readonly string[];
}

const NONE: Edits = { past: [], future: [] };

/**
 * The text of the train file that is open, with undo and redo without end. Every change of the
 * text goes through `write`; what reads it are signals.
 */
export class TrainFile {
  readonly text = signal('');
  /** The name on disk, to save it by; a new file has one too. */
  readonly name = signal('');
  /** The text as it stands on disk, or as it came; undefined for one that never was saved. */
  readonly saved = signal<string | undefined>(undefined);
  /** How many files have been opened: another number is another file, and not an edit of one. */
  readonly opened = signal(0);
  readonly changed = computed(() => this.text.value !== this.saved.value);
  /** Where the code that reads files is still on its way, neither a train nor a problem. */
  readonly reading = computed<Read>(() => {
    const text = this.text.value;
    if (text === firstText) return { train: firstTrain, problems: [] };
    return reader.value?.(text) ?? { problems: [] };
  });
  /**
   * The last text of this file that was a train: a half-typed line does not empty the drawing. While
   * what is read stays the same it is the same object, so that a comment lays nothing out anew.
   */
  readonly train = computed<Train | undefined>(() => {
    const { train } = this.reading.value;
    if (train && !(this.last && said(this.last) === said(train))) this.last = train;
    return this.last;
  });

  private readonly past = signal<readonly string[]>([]);
  private readonly future = signal<readonly string[]>([]);
  private last: Train | undefined;

  readonly canUndo = computed(() => this.past.value.length > 0);
  readonly canRedo = computed(() => this.future.value.length > 0);

  get edits(): Edits {
    return { past: this.past.value, future: this.future.value };
  }

  /** Opens another file, with its own edits where it was open before. */
  open(name: string, text: string, saved: string | undefined, edits: Edits = NONE): void {
    batch(() => {
      this.opened.value = this.opened.peek() + 1;
      this.name.value = name;
      this.saved.value = saved;
      this.past.value = edits.past;
      this.future.value = edits.future;
      this.last = undefined;
      this.text.value = text;
    });
  }

  /** A step that `undo` takes back; with `joins` it is one with the step before, as typing is. */
  write(text: string, joins = false): void {
    if (text === this.text.value) return;
    if (!joins || !this.canUndo.value) this.past.value = [...this.past.value, this.text.value];
    this.future.value = [];
    this.text.value = text;
  }

  undo(): void {
    const before = this.past.value.at(-1);
    if (before === undefined) return;
    this.past.value = this.past.value.slice(0, -1);
    this.future.value = [...this.future.value, this.text.value];
    this.text.value = before;
  }

  redo(): void {
    const after = this.future.value.at(-1);
    if (after === undefined) return;
    this.future.value = this.future.value.slice(0, -1);
    this.past.value = [...this.past.value, this.text.value];
    this.text.value = after;
  }
}

// All that a train says; a set's wheels are a map.
function said(train: Train): string {
  return JSON.stringify(train, (_, its: unknown) => (its instanceof Map ? [...its] : its));
}
