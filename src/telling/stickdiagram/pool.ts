/** Things that are written over, to be made only once. */
export class Pool<T> {
  readonly items: T[] = [];
  count = 0;
  private readonly make: () => T;

  constructor(make: () => T) {
    this.make = make;
  }

  next(): T {
    return (this.items[this.count++] ??= this.make());
  }

  list(): readonly T[] {
    return this.items.slice(0, this.count);
  }
}
