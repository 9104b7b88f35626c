import { batch, computed, type ReadonlySignal, signal } from '@preact/signals';
import { askStanding, type MeasuredThing } from '../../asking/build/index.ts';
import { asIfTold, entryMade, entryTold } from '../../asking/job/index.ts';
import { NoAnswer, type Refused } from '../../asking/request/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Told } from '../../shop/records/index.ts';
import { type JobDesk, jobsOf } from '../job/index.ts';
import type { Study } from '../study/index.ts';
import { isAt, type Place } from './kept.ts';
import { Notebook } from './notebook.ts';
import { looseWritten, type Written, writtenOf } from './written.ts';
import {
  inUnit,
  isWhole,
  limitWay,
  nextField,
  saidOf,
  SHELF,
  type Typed,
  unitOfFile,
  unitsOf,
  waysOf,
} from './ways.ts';

/** What is being measured of the train that is looked at: numbers as they are typed, and where they go. */
export class Measuring {
  readonly keeper: JobDesk;
  readonly notes: Notebook;
  readonly at: ReadonlySignal<Place | undefined> = computed(() => this.notes.at.value);
  readonly train: ReadonlySignal<Train | undefined>;
  /** Why the last was not written down. */
  readonly refused = signal<Refused | undefined>(undefined);

  /** All that is measured, as it was written down. */
  readonly things = computed(() => this.asked([]));
  /** The thing that is measured now, as if what is typed were written down. */
  readonly thing = computed(() => {
    const draft = this.draft.value;
    return this.found(draft ? this.asked([draft]) : this.things.value);
  });
  readonly ways = computed(() => {
    const thing = this.found(this.things.value);
    return thing ? waysOf(thing) : [];
  });
  readonly way = computed(() => {
    const [ways, at] = [this.ways.value, this.at.value];
    if (at?.side === 'limits') return limitWay(at.way);
    if (at?.side === 'shelf') return SHELF;
    return ways.find(({ way }) => way === at?.way) ?? ways[0];
  });
  readonly typed = computed(() => this.notes.kept.value.typed[this.key()] ?? []);
  readonly isUsed = computed(() => this.notes.kept.value.used.includes(this.at.value?.name ?? ''));
  /** What is typed, as it would be written down; undefined while it is not whole. */
  readonly draft: ReadonlySignal<Told | undefined> = computed(() => {
    const [way, at] = [this.way.value, this.at.value];
    if (!way || at?.side !== 'read' || !isWhole(way, this.typed.value)) return undefined;
    try {
      return entryTold(['reading', at.name, saidOf(way, this.typed.value, this.used())], {});
    } catch {
      return undefined;
    }
  });
  /** The unit of the next number: chosen here, else as the file writes what this one is judged by. */
  readonly unit = computed(() => {
    const field = this.field.value;
    if (!field) return '';
    const known = unitsOf(field);
    const thing = this.found(this.things.value);
    const its = this.notes.kept.value.units[`${this.at.value?.name} ${field.of}`];
    const meant = its ?? (thing && unitOfFile(thing, field));
    return known.find((one) => one === meant) ?? known[0] ?? '';
  });
  readonly field = computed(() => {
    const way = this.way.value;
    return way && nextField(way, this.typed.value);
  });
  /** What was written down of the thing, the newest last. */
  readonly written: ReadonlySignal<readonly Written[]> = computed(() => {
    const name = this.at.value?.name;
    const job = this.keeper.open.value;
    const all = job ? job.entries.flatMap(writtenOf) : this.notes.loose.value.map(looseWritten);
    return all.filter(({ told }) => 'of' in told && told.of === name && told.kind !== 'seen');
  });

  constructor(study: Study) {
    this.keeper = jobsOf(study);
    this.train = study.file.train;
    this.notes = new Notebook(this.keeper);
  }

  /** Goes to a thing, or back to all of them. */
  go(place: Omit<Place, 'way' | 'side'> & Partial<Place>): void {
    this.refused.value = undefined;
    const thing = this.things.value.find((its) => isAt(its, place));
    const way = place.way ?? (thing && waysOf(thing)[0]?.way) ?? '';
    this.notes.change({ at: { side: 'read', ...place, way } });
  }

  leave(): void {
    this.refused.value = undefined;
    this.notes.leave();
  }

  /** Whether numbers of a thing are typed and not written down. */
  isPending({ kind, name }: MeasuredThing): boolean {
    return Object.entries(this.notes.kept.value.typed).some(([key, typed]) => {
      return key.startsWith(`${kind}: ${name}: `) && typed.some(({ struck }) => !struck);
    });
  }

  /** Throws away what is typed here: it is written down, or not wanted. */
  clear(): void {
    this.put1([]);
  }

  /** Throws away the words beside it, too. */
  forget(): void {
    const key = this.key();
    const texts = Object.entries(this.notes.kept.value.texts);
    batch(() => {
      this.put1([]);
      const others = texts.filter(([its]) => !its.startsWith(`${key} `));
      this.notes.change({ texts: Object.fromEntries(others) });
    });
  }
  /** A number in the unit that stands beside it. */
  add(number: string): void {
    const [field, unit] = [this.field.value, this.unit.value];
    if (!field) return;
    this.put1([
      ...this.typed.value.filter((its) => field.many || its.field !== field.field || its.struck),
      { field: field.field, text: unit === '' ? number : `${number} ${unit}` },
    ]);
  }

  /** Words that are told beside the numbers here; undefined while nobody told any. */
  text(what: string): string | undefined {
    return this.notes.kept.value.texts[`${this.key()} ${what}`];
  }

  setText(what: string, text: string): void {
    const { texts } = this.notes.kept.value;
    this.notes.change({ texts: { ...texts, [`${this.key()} ${what}`]: text } });
  }

  setUnit(unit: string): void {
    const { units } = this.notes.kept.value;
    const key = `${this.at.value?.name} ${this.field.value?.of}`;
    this.notes.change({ units: { ...units, [key]: unit } });
  }

  setUsed(used: boolean): void {
    const name = this.at.value?.name ?? '';
    const others = this.notes.kept.value.used.filter((one) => one !== name);
    this.notes.change({ used: used ? [...others, name] : others });
  }

  /** Strikes what was typed; in another unit the same digits stand again. */
  strikeTyped(places: readonly number[], again?: string): void {
    const typed = this.typed.value;
    const struck = typed.map((its, i) =>
      places.includes(i) ? { ...its, struck: true as const } : its,
    );
    const more = again === undefined ? [] : places.flatMap((i) => inUnit(typed[i], again));
    batch(() => {
      this.put1([...struck, ...more]);
      if (again !== undefined) this.setUnit(again);
    });
  }

  /** Strikes what was typed in one place; another number stands for it. */
  retype(place: number, text: string): void {
    const { field = '' } = this.typed.value[place] ?? {};
    this.strikeTyped([place]);
    this.put1([...this.typed.value, { field, text }]);
  }

  /** Writes what is typed into the open job, or keeps it until there is one; true when it is kept. */
  async write(): Promise<boolean> {
    const { draft } = this;
    if (!draft.value || !(await this.enter(draft.value))) return false;
    this.put1([]);
    return true;
  }

  /** The part that was taken from the shelf: what is read next is with it in. */
  async choose(part: string, size: string): Promise<void> {
    const at = this.at.value;
    if (!at || !(await this.enter({ kind: 'chosen', of: at.name, part: `${part} ${size}` })))
      return;
    if (!this.ways.value.some(({ way }) => way === 'again')) return;
    batch(() => {
      this.notes.change({ at: { ...at, way: 'again', side: 'read' } });
      this.put1([{ field: 'fitted', text: size }]);
    });
  }

  /** Enters whatever is told of what is measured; what does not fit is refused, in words. */
  async enter(told: Told): Promise<boolean> {
    if (!this.fits(told)) return false;
    if (this.keeper.open.value) return (await this.keeper.write(told)) === 'kept';
    return this.notes.tell(told);
  }

  /** Whether it can be written down of this train; why not is then `refused`. */
  fits(told: Told): boolean {
    this.refused.value = undefined;
    const train = this.train.value;
    const job = this.keeper.open.value ?? asIfTold(undefined, []).job;
    try {
      entryMade({ told }, ANYBODY, job, train && { train, experience: '' });
      return true;
    } catch (error) {
      if (!(error instanceof NoAnswer)) throw error;
      this.refused.value = error.why;
      return false;
    }
  }

  /** Strikes what was written down; it stays, with the reason. */
  async strike(id: string, because: string): Promise<void> {
    if (this.keeper.open.value) return void (await this.keeper.strike(id, because));
    this.notes.strike(id, because);
  }

  private asked(more: readonly Told[]): readonly MeasuredThing[] {
    const train = this.train.value;
    if (!train) return [];
    return askStanding(
      train,
      asIfTold(this.keeper.open.value, [...this.notes.told.value, ...more]),
    );
  }

  private found(things: readonly MeasuredThing[]): MeasuredThing | undefined {
    const at = this.at.value;
    return at && things.find((its) => isAt(its, at));
  }

  private used(): boolean {
    return this.at.value?.kind === 'preload' && this.isUsed.value;
  }

  private key(at = this.at.value): string {
    return at ? `${at.kind}: ${at.name}: ${at.side} ${this.way.value?.way ?? at.way}` : '';
  }

  private put1(typed: readonly Typed[]): void {
    this.notes.change({ typed: { ...this.notes.kept.value.typed, [this.key()]: typed } });
  }
}

/** One for the page: a room that is left and entered again is where it was. */
export function measuringOf(study: Study): Measuring {
  const its = known.get(study) ?? new Measuring(study);
  known.set(study, its);
  return its;
}

const known = new WeakMap<Study, Measuring>();

// Only its form is looked at: the keeper knows who writes, and when.
const ANYBODY = { who: 'X', at: '2026-01-01T00:00:00.000Z' };
