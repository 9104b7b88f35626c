import type { Inquiry } from '../cause/index.ts';
import type { Test } from '../sight/index.ts';
import type { Manual, Place } from './words.ts';

/** What a driver's gears and places of the lever are in a train's file. */
export class Places {
  private readonly tests: readonly Test[];
  private readonly ranges: Inquiry['train']['ranges'];
  private readonly main: string;

  constructor({ tests, train }: Inquiry) {
    this.tests = tests;
    this.ranges = train.ranges;
    const most = Math.max(...train.ranges.map(({ gears }) => gears.length));
    const long = train.ranges.filter(({ gears }) => gears.length === most);
    this.main = (long.find(({ name }) => name === 'D') ?? long[0])?.name ?? '';
  }

  /** The gears under power that are meant: of a place of the lever, the first. */
  gears(place: Place): Test[] {
    return this.of('under power', place);
  }

  /** The same, listened to. */
  heard(place: Place): Test[] {
    return this.of('noise', place);
  }

  /** The engagement of a place of the lever. */
  engaged(place: Place): Test[] {
    const names = place === 'all' ? [this.main, 'R'] : [this.rangeOf(place)];
    return this.tests.filter((test) => test.test === 'engagement' && names.includes(test.range));
  }

  /** The shift up into a gear of the main range. */
  into(place: Place): Test[] {
    const name = this.numbered(place);
    return this.shifts().filter((test) => name !== undefined && gearOf(test) === name);
  }

  /** The shift up out of a gear. */
  outOf(place: Place): Test[] {
    const name = this.numbered(place);
    return this.shifts().filter((test) => test.test === 'shift' && test.from === name);
  }

  between(from: Place, to: Place): Test[] {
    const [a, b] = [this.numbered(from), this.numbered(to)];
    return this.shifts().filter((test) => {
      return test.test === 'shift' && test.from === a && gearOf(test) === b;
    });
  }

  /** The gears, of any range, that a place may name. */
  named(place: Place): string[] {
    const driven = this.tests.flatMap((test) => (test.test === 'under power' ? gearOf(test) : []));
    const range = this.rangeOf(place);
    return driven.filter((gear) => {
      const [its, name = its] = gear.split(' ');
      if (typeof place === 'number') return name === `${place}`;
      if (isManual(place)) return gear === this.manual(place);
      if (place === 'top') return gear === this.top();
      return place === 'all' || (place === 'L' ? gear === this.firstOf(range) : its === range);
    });
  }

  /** The gear of a number in the range in which people drive. */
  inMain(place: Place): string[] {
    return this.named(place).filter((gear) => gear.split(' ')[0] === this.main);
  }

  private of(word: 'under power' | 'noise', place: Place): Test[] {
    const all = place === 'all' ? this.ranges.find(({ name }) => name === this.main) : undefined;
    const names = all
      ? [...all.gears.map(({ name }) => textOf(all.name, name)), this.firstOf('R')]
      : [
          isManual(place)
            ? this.manual(place)
            : (this.numbered(place) ?? this.firstOf(this.rangeOf(place))),
        ];
    return this.tests.filter((test) => test.test === word && names.includes(gearOf(test)));
  }

  private shifts(): Test[] {
    return this.tests.filter((test) => test.test === 'shift');
  }

  // "2" in the main range, or in the first that has it.
  private numbered(place: Place): string | undefined {
    if (place === 'top') return this.top();
    if (typeof place !== 'number') return undefined;
    const having = this.ranges.filter(({ gears }) => gears.some(({ name }) => name === `${place}`));
    const range = having.find(({ name }) => name === this.main) ?? having[0];
    return range && textOf(range.name, `${place}`);
  }

  // A gear by the lever is never one of the main range: of the low range, of any other that has it,
  // or the range that is called so.
  private manual(place: Manual): string | undefined {
    const number = place.slice(1);
    const others = this.ranges.filter(({ name }) => name !== this.main);
    const having = others.filter(({ gears }) => gears.some(({ name }) => name === number));
    const low = this.rangeOf('L');
    const range = having.find(({ name }) => name === low) ?? having[0];
    return range ? textOf(range.name, number) : this.firstOf(number);
  }

  private top(): string | undefined {
    const last = this.ranges.find(({ name }) => name === this.main)?.gears.at(-1);
    return last && textOf(this.main, last.name);
  }

  private rangeOf(place: Place): string {
    if (place === 'D') return this.main;
    if (isManual(place)) return this.manual(place)?.split(' ')[0] ?? '';
    if (place !== 'L') return `${place}`;
    return this.ranges.find(({ name }) => /^(?:L|low|1|L1)$/iu.test(name))?.name ?? 'L';
  }

  // N stands in no file of some trains.
  private firstOf(range: string): string | undefined {
    if (range === 'N') return 'N';
    const first = this.ranges.find(({ name }) => name === range)?.gears[0];
    return first && textOf(range, first.name);
  }
}

function isManual(place: Place): place is Manual {
  return typeof place === 'string' && /^L\d/u.test(place);
}

function gearOf(test: Test): string {
  return 'gear' in test ? (test.gear ?? '') : '';
}

function textOf(range: string, gear: string): string {
  return range === gear ? range : `${range} ${gear}`;
}
