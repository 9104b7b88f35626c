import { effect, signal } from '@preact/signals';
import { type Study, fetchReader, type Edits } from '../study/index.ts';
import { type DiskFile, hasChanged, pick, readText, saveAs, writeBack } from './disk.ts';
import { type Draft, forget, keep, live, newId, orphans, TAB } from './kept.ts';
import { lastOpen, rememberOpen } from './lastopen.ts';
import { handedOver, linkOf, textIn } from './link.ts';
import { hearOthers, type Tell } from './others.ts';
import { FIRST, readOurs } from './ours.ts';

/** What the desk has to say, until it is put away or the next word takes its place. */
export type Word =
  | { readonly word: 'saved'; readonly name: string }
  | { readonly word: 'not kept' | 'link copied' | 'damaged link' | 'not text' | 'too large' }
  | { readonly word: 'command gone' }
  | { readonly word: 'changed on disk' | 'open elsewhere' | 'saved elsewhere' }
  | { readonly word: 'failed'; readonly why: string };

/** A draft that is offered again; one of this tab with all that belongs to it. */
export interface Left extends Draft {
  readonly disk?: DiskFile;
  readonly steps?: Edits;
}

/**
 * Where the file that is open comes from and goes to: disk, a link, a train of ours, or what a
 * tab that is gone had not saved. Whatever fails is said, and the text stays.
 */
export class FileDesk {
  readonly word = signal<Word | undefined>(undefined);
  /** What tabs that are gone left unsaved, and what was laid aside here for another file. */
  readonly left = signal<readonly Left[]>([]);
  /** The link that was made last, to be seen where it cannot be copied. */
  readonly link = signal('');

  /** Whether the train on the page is the one that every page begins with: nobody chose it. */
  begunAnew = false;

  private readonly study: Study;
  private readonly tell: Tell;
  private disk: DiskFile | undefined;
  private id = newId();

  constructor(study: Study) {
    this.study = study;
    desks.set(study, this);
    this.tell = hearOthers(
      () => study.file.name.value,
      ({ does }) => this.say(does === 'saved' ? 'saved elsewhere' : 'open elsewhere'),
    );
  }

  /** Keeps what is unsaved from now on, and offers what tabs that are gone have left. */
  async begin(): Promise<void> {
    window.addEventListener('hashchange', () => void this.arrive());
    live();
    this.keepDrafts();
    const gone = await orphans();
    const { name, text } = this.study.file;
    // What a reload came back to is kept as this tab's before the other is forgotten.
    const isHere = (its: Draft) => its.name === name.value && its.text === text.value;
    const here = gone.filter(isHere);
    if (here.length > 0 && (await this.keepNow()))
      await Promise.all(here.map(({ id }) => forget(id)));
    this.left.value = [...this.left.value, ...gone.filter((its) => !isHere(its))];
    await fetchReader();
  }

  async openOurs(name: string): Promise<void> {
    await this.attempt(async () =>
      this.put({ name: `${name}.train.yaml`, text: await readOurs(name), written: 0 }),
    );
  }

  async openDisk(): Promise<void> {
    await this.attempt(async () => {
      const picked = await pick();
      if (picked) await this.put(await readText(picked));
    });
  }

  /** A text that is kept elsewhere, as the train of a job is. */
  async openText(name: string, text: string): Promise<void> {
    await this.attempt(async () => this.put({ name, text, written: 0 }));
  }

  /** An empty file, to describe a train from nothing. */
  openNew(name: string): void {
    this.layAside();
    this.disk = undefined;
    this.study.open(name, '', '');
  }

  openDraft(draft: Left): void {
    this.layAside();
    const { id, name, text, saved, disk, steps } = draft;
    this.disk = disk;
    this.study.open(name, text, saved, steps);
    this.left.value = this.left.value.filter((other) => other.id !== id);
    // Kept as this tab's before the other is forgotten.
    void this.keepNow().then((kept) => (kept ? forget(id) : undefined));
  }

  async dropDraft({ id }: Draft): Promise<void> {
    this.left.value = this.left.value.filter((draft) => draft.id !== id);
    await forget(id);
  }

  /** Saves to where the file came from; with `over`, even if somebody wrote there since. */
  async save(over = false): Promise<void> {
    await this.attempt(async () => {
      const { file } = this.study;
      const text = file.text.value;
      const { handle, written } = this.disk ?? {};
      if (handle && !over && (await hasChanged(handle, written ?? 0))) {
        this.say('changed on disk');
        return;
      }
      const { id } = this;
      const yaml = new Blob([text], { type: 'application/yaml' });
      const saved = handle ? await writeBack(handle, text) : await saveAs(file.name.value, yaml);
      if (!saved) return;
      this.word.value = { word: 'saved', name: saved.name };
      await forget(id);
      // Another file may have been opened meanwhile.
      if (this.id !== id) return;
      this.disk = { ...saved, text };
      file.name.value = saved.name;
      file.saved.value = text;
      this.tell('saved');
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
      this.link.value = await linkOf(this.study.file.text.value, location.href);
      await navigator.clipboard?.writeText(this.link.value);
      this.say('link copied');
    });
  }

  /** Opens the train of the page's address, or the first of ours. */
  async arrive(): Promise<void> {
    let [damaged, gone] = [false, false];
    const text = await textIn(location.hash).catch(() => {
      damaged = true;
      return undefined;
    });
    const handed = await handedOver(location.hash).catch(() => void (gone = true));
    // What a link carries is on no disk.
    if (handed) await this.put({ ...handed, written: 0 });
    else if (text !== undefined)
      await this.put({ name: 'linked.train.yaml', text, written: 0 }, false);
    else if (this.study.file.text.value === '') await this.openLast();
    if (damaged) this.say('damaged link');
    if (gone) this.say('command gone');
  }

  // What this tab had open before it was loaded anew, else the first of ours.
  private async openLast(): Promise<void> {
    const last = location.hash === '' ? lastOpen() : undefined;
    if (!last) {
      await this.openOurs(FIRST);
      this.begunAnew = true;
      return;
    }
    await fetchReader();
    this.study.open(last.name, last.text, last.saved);
    this.tell('opened');
  }

  private async put(file: DiskFile, isSaved = true): Promise<void> {
    if (file.name !== `${FIRST}.train.yaml`) await fetchReader();
    this.layAside();
    this.disk = file;
    this.word.value = undefined;
    this.study.open(file.name, file.text, isSaved ? file.text : undefined);
    this.tell('opened');
  }

  // What is open and not saved makes room for another file, and is offered beside it.
  private layAside(): void {
    this.begunAnew = false;
    const draft = this.draft();
    if (draft) {
      const { disk } = this;
      const aside = { ...draft, steps: this.study.file.edits, ...(disk && { disk }) };
      this.left.value = [aside, ...this.left.value];
      void this.keepNow(draft);
    }
    this.id = newId();
  }

  // What is open, where it is not on disk and not nothing.
  private draft(): Draft | undefined {
    const { changed, text, saved, name } = this.study.file;
    if (!changed.value || text.value === '') return undefined;
    const its = { id: this.id, tab: TAB, name: name.value, text: text.value, at: Date.now() };
    return saved.value === undefined ? its : { ...its, saved: saved.value };
  }

  // False where the browser keeps nothing, which is said.
  private async keepNow(draft = this.draft()): Promise<boolean> {
    if (!draft) return true;
    this.keeps = await keep(draft);
    if (!this.keeps) this.say('not kept');
    return this.keeps;
  }

  // A moment of quiet after each change, and at once when the page is hidden.
  private keepDrafts(): void {
    let waits: ReturnType<typeof setTimeout> | undefined;
    const store = async () => {
      clearTimeout(waits);
      this.remember();
      const draft = this.draft();
      if (draft) await this.keepNow(draft);
      else await forget(this.id);
    };
    effect(() => {
      void this.study.file.text.value;
      void this.study.file.saved.value;
      clearTimeout(waits);
      waits = setTimeout(() => void store(), 300);
    });
    document.addEventListener('visibilitychange', () => document.hidden && void store());
    // Only where nothing is kept is there something to lose.
    window.addEventListener('beforeunload', (event) => {
      const own = this.left.value.some(({ tab }) => tab === TAB);
      if (!this.keeps && (own || this.study.file.changed.value)) event.preventDefault();
    });
  }

  private remember(): void {
    const { name, text, saved } = this.study.file;
    const its = { name: name.value, text: text.value, saved: saved.value };
    const isFirst = its.name === `${FIRST}.train.yaml` && its.text === its.saved;
    rememberOpen(isFirst || its.text === '' ? undefined : its);
  }

  private keeps = true;

  private say(word: Exclude<Word['word'], 'failed' | 'saved'>): void {
    this.word.value = { word };
  }

  private async attempt(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      if (error instanceof RangeError) this.say('too large');
      else if (error instanceof TypeError && /decod|utf/iu.test(error.message))
        this.say('not text');
      else this.word.value = { word: 'failed', why: error instanceof Error ? error.message : '' };
    }
  }
}

const desks = new WeakMap<Study, FileDesk>();

/** The desk of what is looked at; none before there is one. */
export function deskOf(study: Study): FileDesk | undefined {
  return desks.get(study);
}
