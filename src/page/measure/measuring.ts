import { batch, computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import { askStanding, type MeasuredThing } from '../../asking/build/index.ts';
import { asIfTold, entryMade, entryTold } from '../../asking/job/index.ts';
import { NoAnswer, type Refused } from '../../asking/request/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Told } from '../../shop/records/index.ts';
import { type JobDesk, jobsOf } from '../job/index.ts';
import type { Study } from '../study/index.ts';
import { isAt, keep, type Kept, keptOf, type Loose, NOTHING, type Place } from './kept.ts';
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
  readonly at = signal<Place | undefined>(undefined);
  readonly keeper: JobDesk;
  readonly train: ReadonlySignal<Train | undefined>;
  /** Why the last was not written down. */
  readonly refused = signal<Refused | undefined>(undefined);
  /** Whether the browser keeps what is typed. */
  readonly keeps = signal(true);

  private readonly kept = signal<Kept>(NOTHING);
  // What was told with no job, while one is open.
  private readonly aside = signal<Kept>(NOTHING);
  private loaded = '';

  /** What was told while no job is open. */
  readonly loose = computed(() => {
    return (this.keeper.open.value ? this.aside : this.kept).value.loose;
  });
  private readonly told = computed(() => {
    if (this.keeper.open.value) return [];
    return this.loose.value.filter(({ struck }) => struck === undefined).map(({ told }) => told);
  });
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
  readonly typed = computed(() => this.kept.value.typed[this.key()] ?? []);
  readonly isUsed = computed(() => this.kept.value.used.includes(this.at.value?.name ?? ''));
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
    const its = this.kept.value.units[`${this.at.value?.name} ${field.of}`];
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
    const all = job ? job.entries.flatMap(writtenOf) : this.loose.value.map(looseWritten);
    return all.filter(({ told }) => 'of' in told && told.of === name && told.kind !== 'seen');
  });

  constructor(study: Study) {
    this.keeper = jobsOf(study);
    this.train = study.file.train;
    effect(() => void this.load(this.keeper.work.value, this.keeper.aside.value));
  }

  /** Goes to a thing, or back to all of them. */
  go(place: Omit<Place, 'way' | 'side'> & Partial<Place>): void {
    this.refused.value = undefined;
    const thing = this.things.value.find((its) => isAt(its, place));
    const way = place.way ?? (thing && waysOf(thing)[0]?.way) ?? '';
    this.change({ at: { side: 'read', ...place, way } });
  }

  leave(): void {
    this.refused.value = undefined;
    const { at: _, ...others } = this.kept.value;
    this.put(others);
  }

  /** Whether numbers of a thing are typed and not written down. */
  isPending({ kind, name }: MeasuredThing): boolean {
    return Object.entries(this.kept.value.typed).some(([key, typed]) => {
      return key.startsWith(`${kind}: ${name}: `) && typed.some(({ struck }) => !struck);
    });
  }

  /** Throws away what is typed here: it is written down, or not wanted. */
  clear(): void {
    this.put1([]);
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

  setUnit(unit: string): void {
    const { units } = this.kept.value;
    const key = `${this.at.value?.name} ${this.field.value?.of}`;
    this.change({ units: { ...units, [key]: unit } });
  }

  setUsed(used: boolean): void {
    const name = this.at.value?.name ?? '';
    const others = this.kept.value.used.filter((one) => one !== name);
    this.change({ used: used ? [...others, name] : others });
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
      this.change({ at: { ...at, way: 'again', side: 'read' } });
      this.put1([{ field: 'fitted', text: size }]);
    });
  }

  /** Enters whatever is told of what is measured; what does not fit is refused, in words. */
  async enter(told: Told): Promise<boolean> {
    if (!this.fits(told)) return false;
    if (this.keeper.open.value) return (await this.keeper.write(told)) === 'kept';
    const id = `${Date.now()}-${this.loose.value.length}`;
    this.putLoose([...this.loose.value, { id, at: Date.now(), told }]);
    return this.keeping;
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
    const loose = this.loose.value.map((its) =>
      its.id === id ? { ...its, struck: because } : its,
    );
    this.putLoose(loose);
  }

  /** Writes all that stands in no job into the open one. */
  async handOver(): Promise<void> {
    const [first, ...others] = this.loose.value;
    if (!first || !this.keeper.open.value) return;
    if (first.struck === undefined && (await this.keeper.write(first.told)) !== 'kept') return;
    this.putLoose(others);
    await this.handOver();
  }

  /** Throws away all that stands in no job: another unit of the same train lies on the bench. */
  forget(): void {
    this.putLoose([]);
  }

  private asked(more: readonly Told[]): readonly MeasuredThing[] {
    const train = this.train.value;
    if (!train) return [];
    return askStanding(train, asIfTold(this.keeper.open.value, [...this.told.value, ...more]));
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
    this.change({ typed: { ...this.kept.value.typed, [this.key()]: typed } });
  }

  private putLoose(loose: readonly Loose[]): void {
    if (!this.keeper.open.value) return this.change({ loose });
    this.aside.value = { ...this.aside.value, loose };
    void keep(this.keeper.aside.value, this.aside.value);
  }

  private change(its: Partial<Kept>): void {
    this.put({ ...this.kept.value, ...its });
  }

  private keeping: Promise<boolean> = Promise.resolve(true);

  private put(kept: Kept): void {
    batch(() => {
      this.kept.value = kept;
      this.at.value = kept.at;
    });
    this.keeping = keep(this.loaded, kept).then((done) => (this.keeps.value = done));
  }

  private async load(work: string | undefined, aside: string): Promise<void> {
    const [kept, loose] = await Promise.all([
      work === undefined ? NOTHING : keptOf(work),
      keptOf(aside),
    ]);
    if (this.keeper.work.value !== work || this.keeper.aside.value !== aside) return;
    // A job that is begun in the middle of a measurement goes on with it.
    const isNew = this.keeper.open.value?.entries.length === 0 && kept === NOTHING;
    const begun = isNew && work !== undefined && this.loaded === aside;
    const { loose: _, ...typed } = this.kept.value;
    this.loaded = work ?? '';
    batch(() => {
      this.aside.value = loose;
      this.kept.value = begun ? { ...typed, loose: [] } : kept;
      this.at.value = this.kept.value.at;
    });
    if (!begun) return;
    this.aside.value = { ...NOTHING, loose: loose.loose };
    await Promise.all([keep(this.loaded, this.kept.value), keep(aside, this.aside.value)]);
  }
}

// Only its form is looked at: the keeper knows who writes, and when.
const ANYBODY = { who: 'X', at: '2026-01-01T00:00:00.000Z' };
