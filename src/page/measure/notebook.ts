import { batch, computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Told } from '../../shop/records/index.ts';
import type { JobDesk } from '../job/index.ts';
import { keep, type Kept, keptOf, type Loose, NOTHING, type Place } from './kept.ts';

/**
 * What the browser keeps of this room: what is typed and not written down, for each job; and what
 * was told while no job was open.
 */
export class Notebook {
  readonly at = signal<Place | undefined>(undefined);
  readonly kept = signal<Kept>(NOTHING);
  /** Whether the browser keeps what is typed. */
  readonly keeps = signal(true);
  /** What was told while no job is open. */
  readonly loose: ReadonlySignal<readonly Loose[]> = computed(() => {
    return (this.keeper.open.value ? this.aside : this.kept).value.loose;
  });
  /** What of it stands, while no job is open. */
  readonly told: ReadonlySignal<readonly Told[]> = computed(() => {
    if (this.keeper.open.value) return [];
    return this.loose.value.filter(({ struck }) => struck === undefined).map(({ told }) => told);
  });

  private readonly keeper: JobDesk;
  // What was told with no job, while one is open.
  private readonly aside = signal<Kept>(NOTHING);
  /** Whether what was kept before has come: it is not gone over. */
  readonly isLoaded = signal(false);
  private loaded = '';
  private keeping: Promise<boolean> = Promise.resolve(true);

  constructor(keeper: JobDesk) {
    this.keeper = keeper;
    effect(() => void this.load(keeper.work.value, keeper.aside.value));
  }

  change(its: Partial<Kept>): void {
    this.put({ ...this.kept.value, ...its });
  }

  /** Goes back to all that is measured. */
  leave(): void {
    const { at: _, ...others } = this.kept.value;
    this.put(others);
  }

  /** Keeps what is told while no job is open; true when the browser has it. */
  async tell(told: Told): Promise<boolean> {
    const id = `${Date.now()}-${this.loose.value.length}`;
    this.putLoose([...this.loose.value, { id, at: Date.now(), told }]);
    return this.keeping;
  }

  strike(id: string, because: string): void {
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

  private putLoose(loose: readonly Loose[]): void {
    if (!this.keeper.open.value) return this.change({ loose });
    this.aside.value = { ...this.aside.value, loose };
    void keep(this.keeper.aside.value, this.aside.value);
  }

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
      this.isLoaded.value = true;
    });
    if (!begun) return;
    this.aside.value = { ...NOTHING, loose: loose.loose };
    await Promise.all([keep(this.loaded, this.kept.value), keep(aside, this.aside.value)]);
  }
}
