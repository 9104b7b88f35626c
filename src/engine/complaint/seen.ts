import { toNumber } from '../linear/index.ts';
import type { OutcomeWord } from '../experience/index.ts';
import type { Inquiry } from '../cause/index.ts';
import type { Observation } from '../suspects/index.ts';
import type { Sight, Test } from '../sight/index.ts';
import { type Claim, complaintOf } from './claim.ts';
import { Places } from './places.ts';
import { BETWEEN, COASTING, INTO, type Place, plainWords } from './words.ts';

/** A complaint as what was seen, by somebody who is not sure. */
export interface ComplaintSeen {
  readonly observations: readonly Observation[];
  /** From which words each of them was read, in their order. */
  readonly said: readonly string[];
  /** What was said and says nothing of a test of this train. */
  readonly unused: readonly string[];
}

/**
 * What a driver's words mean on this train: gears by their numbers, the range from which people
 * start, the shift into a gear that "never comes". Nothing of it is taken as surely seen; what
 * is said twice is seen once.
 */
export function complaintSeen(text: string, inquiry: Inquiry): ComplaintSeen {
  const { claims, unknown } = complaintOf(text);
  const meaning = new Meaning(inquiry);
  const observations: Observation[] = [];
  const from: string[] = [];
  const unused = [...unknown];
  for (const claim of claims) {
    const its = meaning.of(claim);
    const { symptom, places, said } = claim;
    // "It ran away from me": where, has been said.
    const again =
      places.length === 0 && claims.find((other) => other.symptom === symptom) !== claim;
    if (again) continue;
    if (its.length === 0) unused.push(said);
    for (const { test, sight } of its) {
      const under = { ...test, ...conditionsFor(test, claim) };
      const known = observations.some((other) => same(other.test, under));
      if (known) continue;
      observations.push({ test: under, sight, sure: 'not sure' });
      from.push(said);
    }
  }
  return { observations, said: from, unused };
}

type Meant = Pick<Observation, 'test' | 'sight'>;

class Meaning {
  private readonly inquiry: Inquiry;
  private readonly places: Places;

  constructor(inquiry: Inquiry) {
    this.inquiry = inquiry;
    this.places = new Places(inquiry);
  }

  /** Without the gears that were taken out. */
  of(claim: Claim): Meant[] {
    const out = new Set(claim.except.flatMap((place) => this.places.named(place)));
    return this.all(claim).filter(({ test }) => {
      return !('gear' in test && test.gear !== undefined && out.has(test.gear));
    });
  }

  private all(told: Claim): Meant[] {
    // "No second, not in D": of gears with a number the lever says no more.
    const numbered = told.places.filter((place) => typeof place === 'number');
    const claim = numbered.length > 0 ? { ...told, places: told.places.filter(isGear) } : told;
    switch (claim.symptom) {
      case 'no drive':
        return this.noDrive(claim);
      case 'no gear':
        return this.noGear(claim);
      case 'no shift':
        return this.shifts(claim, 'none');
      case 'stays':
        return claim.places.flatMap((place) => saying(this.places.outOf(place), 'none'));
      case 'starts in':
        return this.startsIn(claim);
      case 'slips':
        return claim.shift ? this.shifts(claim, 'flares') : this.driven(claim, 'slips');
      case 'flares':
        // In a gear it slips; on the way into one it flares.
        return claim.shift || BETWEEN.test(claim.said) || INTO.test(claim.said)
          ? this.shifts(claim, 'flares')
          : this.driven(claim, 'slips');
      case 'harsh':
      case 'late':
        return this.engaging(claim, claim.symptom);
      case 'no braking':
        return saying(this.braking(claim), 'runs free');
      case 'brakes':
        return saying(this.holdingBack(told), 'brakes');
      case 'noise':
        return this.listening(claim, 'growls');
      case 'quiet':
        return this.listening(claim, 'quiet');
      case 'ties up':
        return this.driven(claim, 'ties up');
      case 'creeps':
        return saying(this.places.gears('N'), 'drives');
      case 'good':
        return COASTING.test(plainWords(told.said))
          ? this.onCoast(told).flatMap((test) => this.asItShould(test))
          : this.driven(claim, 'drives');
      case 'poor launch':
        return [];
    }
  }

  private noDrive({ places }: Claim): Meant[] {
    const where = places.length > 0 ? places : (['D', 'R'] as const);
    return where.flatMap((place) => saying(this.places.gears(place), 'no drive'));
  }

  // "No second": the change into it never comes; what no change leads into has no drive.
  private noGear(claim: Claim): Meant[] {
    if (claim.places.length === 0) return this.noDrive(claim);
    return claim.places.flatMap((place) => {
      const into = this.places.into(place);
      return into.length > 0 ? saying(into, 'none') : saying(this.places.gears(place), 'no drive');
    });
  }

  private driven({ places }: Claim, word: OutcomeWord): Meant[] {
    return places.flatMap((place) => saying(this.places.gears(place), word));
  }

  private shifts({ said, places, ...claim }: Claim, word: OutcomeWord): Meant[] {
    const [from, to, more] = BETWEEN.test(said) ? places : [];
    const shift = from && to && !more ? ([from, to] as const) : claim.shift;
    if (shift) return saying(this.places.between(...shift), word);
    return places.flatMap((place) => saying(this.places.into(place), word));
  }

  private engaging(claim: Claim, word: 'harsh' | 'late'): Meant[] {
    if (claim.shift) return this.shifts(claim, word);
    return claim.places.flatMap((place) => {
      const engaged = this.places.engaged(place);
      return saying(engaged.length > 0 ? engaged : this.places.into(place), word);
    });
  }

  // Only where it should brake; of no gear in particular, in all of them.
  private braking(claim: Claim): Test[] {
    const tests = claim.places.length > 0 ? this.onCoast(claim) : this.inquiry.tests;
    return tests.filter((test) => {
      const { outcomes, whole } = this.inquiry.predict(test);
      return test.test === 'coast' && outcomes[whole]?.word === 'brakes';
    });
  }

  // A gear that is said to be of D brakes there, whatever it should do; one with no more than its
  // number brakes where it may. Of no gear, nothing is told.
  private holdingBack(claim: Claim): Test[] {
    if (claim.places.length === 0) return [];
    return claim.places.includes('D') ? this.onCoast(claim) : this.braking(claim);
  }

  private onCoast({ places }: Claim): Test[] {
    const numbered = places.filter((place) => typeof place === 'number');
    const inMain = numbered.length > 0 && places.includes('D');
    const meant = numbered.length > 0 ? numbered : places;
    const named = new Set(
      meant.flatMap((place) => (inMain ? this.places.inMain(place) : this.places.named(place))),
    );
    return this.inquiry.tests.filter((test) => {
      return test.test === 'coast' && named.has(test.gear);
    });
  }

  private asItShould(test: Test): Meant[] {
    const { outcomes, whole } = this.inquiry.predict(test);
    const word = outcomes[whole]?.word;
    return word === undefined ? [] : saying([test], word);
  }

  private listening({ places }: Claim, word: 'growls' | 'quiet'): Meant[] {
    const heard = places.flatMap((place) => this.places.heard(place));
    return saying(heard, word);
  }

  // First gear at the ratio of another.
  private startsIn({ places: [place] }: Claim): Meant[] {
    const [first] = this.places.gears('D');
    const [other] = place === undefined ? [] : this.places.gears(place);
    const { outcomes, own } = other ? this.inquiry.predict(other) : { outcomes: [] };
    const ratio = own === undefined ? undefined : outcomes[own]?.ratio;
    if (!first || !ratio) return [];
    const sight: Sight = { saw: 'ratio', ratio: Number(toNumber(ratio).toPrecision(4)) };
    return [{ test: first, sight }];
  }
}

function isGear(place: Place): boolean {
  return place !== 'D' && place !== 'L';
}

function saying(tests: readonly Test[], word: OutcomeWord): Meant[] {
  return tests.map((test) => ({ test, sight: { saw: word } }));
}

function conditionsFor({ test }: Test, { heat, load }: Claim): Pick<Claim, 'heat' | 'load'> {
  const driven = ['under power', 'coast', 'shift', 'noise'].includes(test);
  const warmed = driven || test === 'engagement';
  return { ...(heat && warmed && { heat }), ...(load && driven && { load }) };
}

function same(a: Test, b: Test): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
