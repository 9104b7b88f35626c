import { effect, signal } from '@preact/signals';
import { type Bench, fetchReader } from '../bench/index.ts';
import { type DiskFile, hasChanged, pick, saveAs, writeBack } from './disk.ts';
import { type Draft, forget, keep, live, orphans, TAB } from './kept.ts';
import { linkOf, textIn } from './link.ts';
import { hearOthers, type Tell } from './others.ts';
import { FIRST, readOurs } from './ours.ts';

/** What the desk has to say, until it is put away or the next word takes its place. */
export type Word =
  | { readonly word: 'saved' | 'not kept' | 'link copied' | 'damaged link' | 'not text' }
  | { readonly word: 'changed on disk' | 'open elsewhere' | 'saved elsewhere' }
  | { readonly word: 'failed'; readonly why: string };

/**
 * Where the file on the bench comes from and goes to: disk, a link, a train of ours, or what a
 * tab that is gone had not saved. Whatever fails is said, and the text stays.
 */
export class FileDesk {
  readonly word = signal<Word | undefined>(undefined);
  /** What tabs that are gone left unsaved. */
  readonly left = signal<readonly Draft[]>([]);
  /** The link that was made last, to be seen where it cannot be copied. */
  readonly link = signal('');

  private readonly bench: Bench;
  private readonly tell: Tell;
  private disk: DiskFile | undefined;

  constructor(bench: Bench) {
    this.bench = bench;
    this.tell = hearOthers(
      () => bench.file.name.value,
      ({ does }) => this.say(does === 'saved' ? 'saved elsewhere' : 'open elsewhere'),
    );
  }

  /** Keeps what is unsaved from now on, and offers what tabs that are gone have left. */
  async begin(): Promise<void> {
    window.addEventListener('hashchange', () => void this.arrive());
    live();
    this.keepDrafts();
    this.left.value = await orphans();
    await fetchReader();
  }

  async openOurs(name: string): Promise<void> {
    await this.attempt(async () =>
      this.put({ name: `${name}.train.yaml`, text: await readOurs(name), written: 0 }),
    );
  }

  async openDisk(): Promise<void> {
    await this.attempt(async () => {
      const file = await pick();
      if (file) await this.put(file);
    });
  }

  /** An empty file, to describe a train from nothing. */
  openNew(name: string): void {
    this.disk = undefined;
    this.bench.open(name, '', '');
  }

  openDraft(draft: Draft): void {
    this.disk = undefined;
    this.bench.open(draft.name, draft.text, draft.saved);
    void this.dropDraft(draft);
  }

  async dropDraft({ tab }: Draft): Promise<void> {
    this.left.value = this.left.value.filter((draft) => draft.tab !== tab);
    await forget(tab);
  }

  /** Saves to where the file came from; with `over`, even if somebody wrote there since. */
  async save(over = false): Promise<void> {
    await this.attempt(async () => {
      const { file } = this.bench;
      const text = file.text.value;
      const { handle, written } = this.disk ?? {};
      if (handle && !over && (await hasChanged(handle, written ?? 0))) {
        this.say('changed on disk');
        return;
      }
      const saved = handle ? await writeBack(handle, text) : await saveAs(file.name.value, text);
      if (!saved) return;
      this.disk = saved;
      file.name.value = saved.name;
      file.saved.value = text;
      await forget(TAB);
      this.tell('saved');
      this.say('saved');
    });
  }

  /** Saves under another name, or in another place. */
  async saveElsewhere(): Promise<void> {
    const before = this.disk;
    this.disk = undefined;
    await this.save();
    this.disk ??= before;
  }

  async share(): Promise<void> {
    await this.attempt(async () => {
      this.link.value = await linkOf(this.bench.file.text.value, location.href);
      await navigator.clipboard?.writeText(this.link.value);
      this.say('link copied');
    });
  }

  /** Puts the train of the page's address on the bench, or the first of ours. */
  async arrive(): Promise<void> {
    let damaged = false;
    const text = await textIn(location.hash).catch(() => {
      damaged = true;
      return undefined;
    });
    // What a link carries is on no disk.
    if (text !== undefined) await this.put({ name: 'linked.train.yaml', text, written: 0 }, false);
    else if (this.bench.file.text.value === '') await this.openOurs(FIRST);
    if (damaged) this.say('damaged link');
  }

  private async put(file: DiskFile, isSaved = true): Promise<void> {
    if (file.name !== `${FIRST}.train.yaml`) await fetchReader();
    this.disk = file;
    this.word.value = undefined;
    this.bench.open(file.name, file.text, isSaved ? file.text : undefined);
    this.tell('opened');
  }

  // A moment of quiet after each change, and at once when the page is put away.
  private keepDrafts(): void {
    let waits: ReturnType<typeof setTimeout> | undefined;
    const store = async () => {
      clearTimeout(waits);
      const { file } = this.bench;
      if (!file.changed.value) return forget(TAB);
      const saved = file.saved.value;
      const draft = { tab: TAB, name: file.name.value, text: file.text.value, at: Date.now() };
      const kept = await keep(saved === undefined ? draft : { ...draft, saved });
      this.keeps = kept;
      if (!kept) this.say('not kept');
      return undefined;
    };
    effect(() => {
      void this.bench.file.text.value;
      void this.bench.file.saved.value;
      clearTimeout(waits);
      waits = setTimeout(() => void store(), 300);
    });
    document.addEventListener('visibilitychange', () => document.hidden && void store());
    // Only where nothing is kept is there something to lose.
    window.addEventListener('beforeunload', (event) => {
      if (!this.keeps && this.bench.file.changed.value) event.preventDefault();
    });
  }

  private keeps = true;

  private say(word: Exclude<Word['word'], 'failed'>): void {
    this.word.value = { word };
  }

  private async attempt(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      if (error instanceof TypeError && /decod|utf/iu.test(error.message)) this.say('not text');
      else this.word.value = { word: 'failed', why: error instanceof Error ? error.message : '' };
    }
  }
}
