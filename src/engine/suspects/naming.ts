import { appliedIn, gearsOf, type Gear } from '../train/index.ts';
import { ourWord } from '../words/index.ts';
import type { Inquiry } from '../cause/index.ts';
import { baseText, gearText, rangesOf, shiftText, type Test } from '../sight/index.ts';

/** Tests that are never proposed, and may be seen: line pressure gear by gear, and shifts down. */
export function moreTests({ train, tests }: Inquiry): Test[] {
  const pressures = rangesOf(train).flatMap(({ name, gears }): Test[] => {
    const pressureIn = (called: string, gear: Gear): Test => {
      return { test: 'pressure', gear: called, on: appliedIn(train, gear) };
    };
    const its = gears.map((gear) => pressureIn(gearText(name, gear.name), gear));
    const [first] = gears;
    const whole = first && gearText(name, first.name) !== name;
    return whole ? [...its, pressureIn(name, first)] : its;
  });
  const park = { test: 'pressure', gear: 'P', on: [] } as const;
  const down = tests.flatMap((test): Test[] => {
    if (test.test !== 'shift') return [];
    return [{ ...test, from: test.gear, before: test.on, gear: test.from, on: test.before }];
  });
  const tapped = tests.flatMap((test): Test[] => {
    if (test.test !== 'device pressure') return [];
    const on = gearsOf(train).filter((gear) => gear.on.includes(test.device));
    return on.map(({ range, gear, on: its }) => ({
      ...test,
      gear: gearText(range, gear),
      on: its,
    }));
  });
  return [...pressures, park, ...tapped, ...down];
}

/** The names that a person may give a test. */
export function namesOf(test: Test): string[] {
  const text = baseText(test);
  switch (test.test) {
    case 'under power':
      return [text, `${text} under power`, ...twice(test.gear)];
    case 'coast':
      return [test.gear, ...twice(test.gear)].flatMap((gear) => {
        return [`${gear} coast`, `${gear} on coast`];
      });
    case 'noise':
      return [text, ...twice(test.gear).map((gear) => `noise ${gear}`)];
    case 'shift': {
      const its = shiftText(test);
      const short = its.slice(its.lastIndexOf(' ') + 1);
      return [text, `${its} shift`, `shift ${short}`, `${short} shift`];
    }
    case 'engagement':
      return [text, `N-${test.range}`, `engagement ${test.range}`, `P to ${test.range}`];
    case 'stall':
      return [text, `stall in ${test.range}`, `${test.range} stall`];
    case 'air check':
      return [text, `air check ${test.device}`];
    case 'band check':
      return [text, `band check ${test.device}`, `adjustment ${test.device}`];
    case 'device pressure':
      return test.gear === undefined
        ? [text, `pressure ${test.device}`]
        : [text, `pressure at ${test.device} ${test.gear}`];
    case 'stray pressure':
      return [text, `pressure at ${test.device} ${test.gear}`];
    case 'fluid':
      return [text, 'debris', 'fluid and debris'];
    case 'pressure':
      return [text, `line ${text}`, text.replace('pressure', 'pressure in')];
    case 'selector':
      return [text, 'lever', 'linkage'];
    case 'slip log':
      return [text, `${test.gear} log`, `slip log ${test.gear}`];
    case 'seal rings':
      return [text, `seal rings ${test.device}`];
    case 'seals':
      return [text, `piston seals ${test.device}`];
    case 'one-way check':
      return [text, `one-way check ${test.device}`];
    case 'inspection':
      return [text, `teardown ${test.device}`];
    case 'pan':
      return [text, 'magnet', 'pan and magnet'];
    case 'manual shift':
    case 'valve body':
    case 'build record':
    case 'engine':
    case 'converter':
    case 'pump':
    case 'codes':
    case 'filter':
    case 'end play':
    case 'hand check':
      return [text];
  }
}

// Other verbs say "R R" where the range and its gear have one name.
function twice(gear: string): string[] {
  return gear.includes(' ') ? [] : [`${gear} ${gear}`];
}

/** Small letters, single blanks, a blank for the dot, our word for a part of a set. */
export function plain(name: string): string {
  const words = name
    .normalize('NFC')
    .trim()
    .toLowerCase()
    .split(/[\s.]+/);
  return words.map((word) => ourWord(word)).join(' ');
}
