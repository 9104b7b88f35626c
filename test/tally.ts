/**
 * How many cases met the condition of a law, by a name for each condition. A law that hardly any case
 * comes to is empty, and passes: so each condition has a floor, and `enough` throws where fewer cases
 * met it. Floors are about half of what was counted with the usual seed, so that other seeds pass too;
 * with TALLY in the environment every law fails and tells its counts.
 */
export class Tally<Condition extends string> {
  private readonly floors: Readonly<Record<Condition, number>>;
  private readonly counts = new Map<Condition, number>();

  constructor(floors: Readonly<Record<Condition, number>>) {
    this.floors = floors;
  }

  /** A case, or several, met this condition. */
  met(condition: Condition, cases = 1): void {
    this.counts.set(condition, this.count(condition) + cases);
  }

  count(condition: Condition): number {
    return this.counts.get(condition) ?? 0;
  }

  // Other dice than the usual may roll far fewer of what is rare: half as many are enough.
  private floorOf(condition: Condition): number {
    const floor = this.floors[condition];
    return process.env['SEED'] === undefined ? floor : Math.floor(floor / 2);
  }

  enough(): void {
    const few = (Object.keys(this.floors) as Condition[]).filter((condition) => {
      return this.count(condition) < this.floorOf(condition) || process.env['TALLY'];
    });
    if (few.length === 0) return;
    const said = few.map((condition) => {
      return `${condition}: ${this.count(condition)} cases, at least ${this.floorOf(condition)}`;
    });
    throw new Error(`a law that few cases meet says little: ${said.join('; ')}`);
  }
}
