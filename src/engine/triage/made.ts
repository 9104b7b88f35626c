import { vehicleOf } from '../flow/index.ts';
import { signOf } from '../linear/index.ts';
import { type Account } from '../suspects/index.ts';
import { baseText, type Test } from '../sight/index.ts';
import { type Inquiry } from '../cause/index.ts';

/** Which tests have been made, or would show only what is known from another. */
export class Made {
  private readonly texts: ReadonlySet<string>;
  private readonly kinds: ReadonlySet<string>;
  private readonly lame: ReadonlySet<string>;
  private readonly slipping: ReadonlySet<string>;
  private readonly well: ReadonlySet<string>;
  private readonly weak: boolean;
  private readonly inquiry: Inquiry;

  constructor(inquiry: Inquiry, accounts: readonly Account[], weak: boolean) {
    this.inquiry = inquiry;
    this.weak = weak;
    const made = accounts.filter((account) => !asksAgain(inquiry, account));
    this.texts = new Set(made.map(({ test }) => baseText(test)));
    this.kinds = new Set(made.map(({ test }) => test.test));
    this.lame = gearsOf(accounts.filter(isLame));
    this.slipping = gearsOf(accounts.filter(isSlipping));
    this.well = gearsOf(accounts.filter(isWell));
  }

  has(test: Test): boolean {
    if (this.texts.has(baseText(test))) return true;
    switch (test.test) {
      case 'pressure':
        return this.kinds.has('pressure');
      // A gear that was not there when it was driven does not come by a shift either.
      case 'shift':
        return this.lame.has(test.gear) || this.lame.has(test.from);
      // What was seen to slip is not pulled again to see it by a logger.
      case 'slip log':
        return this.lame.has(test.gear) || this.slipping.has(test.gear);
      case 'engagement':
        return this.engaged(test);
      default:
        return false;
    }
  }

  /** Whether the first gear of a range has surely been itself. */
  drives(test: Test & { readonly test: 'engagement' }): boolean {
    return this.well.has(this.firstOf(test));
  }

  // A range whose first gear was driven has engaged or not; how soon, matters where something is
  // weak. Only the ranges from which drivers start are timed.
  private engaged(engagement: Test & { readonly test: 'engagement' }): boolean {
    const gear = this.firstOf(engagement);
    const known = this.lame.has(gear) || (this.well.has(gear) && !this.weak);
    return known || !startsOf(this.inquiry).includes(engagement.range);
  }

  private firstOf({ on }: Test & { readonly test: 'engagement' }): string {
    const first = this.inquiry.tests.find((test) => test.test === 'under power' && test.on === on);
    return first && 'gear' in first ? (first.gear as string) : '';
  }
}

// The ranges from which drivers start: of those that go one way, the one with most gears.
function startsOf(inquiry: Inquiry): string[] {
  const { ranges } = inquiry.train;
  const engaging = inquiry.tests.flatMap((test) => (test.test === 'engagement' ? test : []));
  return [true, false].flatMap((forward) => {
    const its = ranges.filter(({ name }) => {
      const engaged = engaging.find(({ range }) => range === name);
      return engaged && goesForward(inquiry, engaged.on) === forward;
    });
    const most = Math.max(...its.map(({ gears }) => gears.length));
    return its
      .filter(({ gears }) => gears.length === most)
      .map(({ name }) => name)
      .slice(0, 1);
  });
}

/** Whether a gear takes the vehicle forward; undefined for one that takes it nowhere. */
export function goesForward(inquiry: Inquiry, on: readonly string[]): boolean | undefined {
  const driven = inquiry.tests.flatMap((test) => (test.test === 'under power' ? test : []));
  const its = driven.find((test) => test.on === on);
  const { outcomes, own } = its ? inquiry.predict(its) : { outcomes: [] };
  const ratio = own === undefined ? undefined : outcomes[own]?.ratio;
  const clockwise = vehicleOf(inquiry.train).forward === 'clockwise';
  return ratio && signOf(ratio) > 0 === clockwise;
}

// What was found wrong and put right is looked at again; a light pull tries no gear.
function asksAgain(
  { experience }: Inquiry,
  { test, said, prediction: { whole } }: Account,
): boolean {
  const asItShould = said.every(({ means }) => means.includes(whole));
  const light = 'load' in test && test.load === 'light';
  return asItShould ? light : experience.tests[test.test].mends === true;
}

function gearsOf(accounts: readonly Account[]): Set<string> {
  return new Set(accounts.flatMap(({ test }) => ('gear' in test && test.gear ? [test.gear] : [])));
}

// A gear that was seen to be none, or another; one that was seen to be itself.
function isLame({ test, said, prediction: { outcomes, own } }: Account): boolean {
  if (test.test !== 'under power') return false;
  return said.some(({ means }) => {
    return means.length > 0 && means.every((o) => o !== own && outcomes[o]?.word !== 'slips');
  });
}

function isSlipping({ test, said, prediction: { outcomes } }: Account): boolean {
  if (test.test !== 'under power') return false;
  return said.some(({ observation, means }) => {
    return observation.sure === 'sure' && means.every((o) => outcomes[o]?.word === 'slips');
  });
}

function isWell({ test, said, prediction: { own } }: Account): boolean {
  if (test.test !== 'under power' || own === undefined) return false;
  return said.some(({ means }) => means.length === 1 && means[0] === own);
}
