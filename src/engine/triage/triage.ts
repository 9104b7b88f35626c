import type { TestWord } from '../experience/index.ts';
import { type Account, expectedBits, type Belief, type Observation } from '../suspects/index.ts';
import { type Inquiry } from '../cause/index.ts';
import { type Test } from '../sight/index.ts';
import type { Bar, Stopped } from './bar.ts';
import { Suspected } from './suspected.ts';
import { goesForward, Made } from './made.ts';
import { isOfParts, placeOf } from './place.ts';
import { Sights } from './sights.ts';

/** What is looked at first, and what may not be done as things stand. */
export interface Triage {
  /** In the order of the trade; nothing that was made. */
  readonly first: readonly Test[];
  /** Why each kind of test stops; nothing where it may be made. */
  readonly stops: ReadonlyMap<Stopped, readonly Bar[]>;
  /** Why a test may not be made at all now, be it for the first time or again. */
  stopOf(test: Test): Bar | undefined;
  /** Why a test may not be proposed now; undefined where it may. */
  barOf(test: Test): Bar | undefined;
}

/**
 * The order in which the trade comes to a sick car (common practice, no source): fluid, codes,
 * pressure, engagement standing still, and only then the road. What was seen may stop the road,
 * a hard pull, a stall, or opening the unit.
 */
export function triageOf(inquiry: Inquiry, accounts: readonly Account[], belief: Belief): Triage {
  const sights = new Sights(accounts);
  const suspected = new Suspected(inquiry, belief);
  // Third alone takes no car across a junction: what goes forward must pull away as well.
  const starts = new Set(
    inquiry.tests.flatMap((test) => (test.test === 'engagement' ? test.on.join() : [])),
  );
  const goes = sights.goes((on) => starts.has(on.join()) && goesForward(inquiry, on) === true);
  const apart = inquiry.at === 'in pieces';
  const stops = apart ? new Map<Stopped, Bar[]>() : stopsOf(sights, suspected, goes);
  const made = new Made(inquiry, accounts, sights.weak());
  const stopOf = (test: Test): Bar | undefined => {
    if (apart) return isOfParts(test.test) ? undefined : { why: 'in pieces' };
    if (test.test === 'coast' && goesForward(inquiry, test.on) === false)
      return { why: 'backwards' };
    const stopped = stopsFor(test, inquiry).flatMap((stop) => stops.get(stop) ?? []);
    if (stopped[0]) return stopped[0];
    // What growls is no more driven by a light foot than by a heavy one.
    const growls = test.test === 'slip log' && stops.get('pulling hard')?.find(isGrowl);
    if (growls) return growls;
    const unreached = unreachedBy(test, inquiry, sights);
    if (unreached.length > 0) return { why: 'no drive', because: unreached };
    const bound = test.test === 'stray pressure' ? sights.bound(test.gear) : [];
    if (bound.length > 0) return { why: 'ties up', because: bound };
    const starved = test.test === 'slip log' ? sights.starved(test.on) : [];
    return starved.length > 0 ? { why: 'low pressure', because: starved } : undefined;
  };
  const barOf = (test: Test): Bar | undefined => {
    if (made.has(test)) return { why: 'made' };
    const stopped = stopOf(test);
    if (stopped) return stopped;
    return isAsked(test, suspected, made) ? undefined : { why: 'not in question' };
  };
  const told = (test: Test | undefined) =>
    test !== undefined && expectedBits(inquiry, test, undefined, belief) >= WORTH_BITS;
  const first = firstOf(inquiry, sights, accounts, suspected, told).filter((test) => !barOf(test));
  return { first, stops, stopOf, barOf };
}

// Whoever cannot pull away in a range comes to its further gears through what slips, if at all.
function unreachedBy(test: Test, { tests }: Inquiry, sights: Sights): Observation[] {
  if (test.test !== 'coast' && test.test !== 'noise' && test.test !== 'slip log') return [];
  const [range] = test.gear.split(' ');
  const first = tests.find((its) => {
    return its.test === 'under power' && its.gear.split(' ')[0] === range;
  });
  if (first?.test !== 'under power' || first.gear === test.gear) return [];
  return sights.moves(test.gear) ? [] : sights.lost(first.gear);
}

// Whether it asks after something that may be at fault; of a range that drives, how soon it does.
function isAsked(test: Test, suspected: Suspected, made: Made): boolean {
  if ('device' in test) return suspected.of(test.device) >= IN_QUESTION;
  if (test.test !== 'engagement' || !made.drives(test)) return true;
  return test.on.some((device) => suspected.of(device) >= LATE) || suspected.ofLine() >= LATE;
}

function isGrowl({ why }: Bar): boolean {
  return why === 'growls';
}

/** A device with a smaller chance to be at fault is not opened for it. */
const IN_QUESTION = 0.02;

/** With a smaller chance that something is weak, nobody takes the time in which a gear comes. */
const LATE = 0.1;

/** With a smaller chance that a stall would show what is wrong, or that it would not, nobody stalls. */
const STALL_SHOWS = 0.1;

function isOpen(chance: number): boolean {
  return chance >= STALL_SHOWS && chance <= 1 - STALL_SHOWS;
}

const LEVER_FIRST = 0.05;

/** Once something was seen, what comes first is made only where so many bits are expected of it. */
const WORTH_BITS = 0.01;

// What a test is, for a stop.
function stopsFor(test: Test, { experience }: Inquiry): Stopped[] {
  if (test.test === 'stall') return ['stall test'];
  const opens = experience.tests[test.test].at !== 'in the car';
  const pulls = test.test === 'under power' || test.test === 'shift';
  return [
    ...(placeOf(test.test) === 'on the road' ? ['road test' as const] : []),
    ...(pulls ? ['pulling hard' as const] : []),
    ...(opens ? ['opening' as const] : []),
  ];
}

function stopsOf(sights: Sights, suspected: Suspected, goes: boolean): Map<Stopped, Bar[]> {
  const seen = (why: SeenBar, ...[tests, words]: Parameters<Sights['saying']>): Bar[] => {
    const because = sights.saying(tests, words);
    return because.length === 0 ? [] : [{ why, because }];
  };
  const creeping = sights.creeping();
  // Where another gear pulls away forward the car is not stranded: it is driven lightly, not pulled.
  const lost = [
    ...seen('no drive', ['under power'], ['no drive']),
    ...seen('no drive', ['engagement'], ['none']),
  ];
  const road = [
    ...seen('low pressure', ['pressure'], ['low']),
    ...seen('bad fluid', ['fluid', 'pan'], ['milky', 'metal']),
    ...seen('ties up', ['under power', 'coast'], ['ties up']),
    ...(goes ? [] : lost),
    ...(creeping.length === 0 ? [] : [{ why: 'drives in neutral', because: creeping } as const]),
    ...seen('end play', ['end play'], ['too big']),
  ];
  const pulling = [
    ...(goes ? lost : []),
    ...seen('slips', ['under power', 'coast', 'slip log'], ['slips']),
    ...seen('slips', ['shift'], ['flares']),
    ...seen('low pressure', ['device pressure'], ['low']),
    ...seen('growls', ['noise'], ['growls']),
    ...seen('burnt fluid', ['fluid'], ['burnt']),
  ];
  const stall: Bar[] = [
    ...road,
    ...pulling,
    ...seen('high pressure', ['pressure', 'device pressure'], ['high']),
    ...(sights.pressureIsRead() ? [] : [{ why: 'pressure unknown' } as const]),
    ...(isOpen(suspected.ofConverter()) ? [] : [{ why: 'shows nothing' } as const]),
  ];
  const lever = leverFirst(sights, suspected);
  const opening: Bar[] = [
    ...(lever ? [{ why: 'lever first' } as const] : []),
    ...(sights.knows('fluid') ? [] : [{ why: 'outside first' } as const]),
  ];
  const all = { 'road test': road, 'pulling hard': pulling, 'stall test': stall, opening };
  return new Map(Object.entries(all).filter(([, bars]) => bars.length > 0) as [Stopped, Bar[]][]);
}

// What is looked at before anything is driven.
const OUTSIDE: ReadonlySet<string> = new Set(['fluid', 'codes', 'selector', 'build record']);

type SeenBar = Extract<Bar, { readonly because: unknown }>['why'];

// Fluid, the lever where it is in doubt, codes, pressure where it may be weak, and engagement
// of ranges in which nothing is known of a gear.
function firstOf(
  inquiry: Inquiry,
  sights: Sights,
  accounts: readonly Account[],
  suspected: Suspected,
  told: (test: Test | undefined) => boolean,
): Test[] {
  const one = (word: TestWord) => inquiry.tests.filter(({ test }) => test === word).slice(0, 1);
  const nothing = accounts.every(({ test }) => OUTSIDE.has(test.test));
  const lever = leverFirst(sights, suspected);
  const line = one('pressure');
  const pressure = (nothing || (sights.weak() && told(line[0]))) && !sights.pressureIsKnown();
  const driven = new Set(
    accounts.flatMap(({ test }) => ('gear' in test && test.gear ? [test.gear.split(' ')[0]] : [])),
  );
  const engaging = inquiry.tests.filter((test) => {
    return test.test === 'engagement' && !driven.has(test.range);
  });
  return [
    ...one('fluid'),
    ...(lever ? one('selector') : []),
    ...(nothing || told(one('codes')[0]) ? one('codes') : []),
    ...(pressure ? line : []),
    ...(nothing ? engaging : engaging.filter(told)),
  ];
}

// A lever that was found out of its place is set, and looked at again.
function leverFirst(sights: Sights, suspected: Suspected): boolean {
  if (sights.saying(['selector'], ['out of place']).length > 0) return true;
  return suspected.kind('selector linkage') >= LEVER_FIRST && !sights.knows('selector');
}
