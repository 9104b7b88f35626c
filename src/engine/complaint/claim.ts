import { type Part, partsOf } from './part.ts';
import type { Symptom } from './symptoms.ts';
import type { Place } from './words.ts';

/** One thing that a driver says, and of where. */
export interface Claim {
  readonly symptom: Symptom;
  /** Gears as the driver counts them; none: nothing was said of where. */
  readonly places: readonly Place[];
  /** Gears that are taken out of it. */
  readonly except: readonly Place[];
  /** From one gear into another. */
  readonly shift?: readonly [from: Place, to: Place];
  readonly heat?: 'cold' | 'hot';
  readonly load?: 'light' | 'heavy';
  /** The words that it was read from. */
  readonly said: string;
}

/** What a complaint claims; the parts of it that say nothing that is known, as they were said. */
export interface Complaint {
  readonly claims: readonly Claim[];
  readonly unknown: readonly string[];
}

/**
 * Reads a complaint in the driver's own words, English or Spanish: "no reverse, and it flares
 * two to three when hot". Never throws. A part of a sentence with a symptom and no gear is of
 * the gears of the part before it; a list of gears belongs to the symptom beside it.
 */
export function complaintOf(text: string): Complaint {
  const claims: Claim[] = [];
  const unknown: string[] = [];
  for (const sentence of text.slice(0, LONGEST).split(/[.;:!?\n]+(?!\d)/u)) {
    const reading = new Sentence();
    for (const part of partsOf(sentence)) reading.take(part);
    claims.push(...reading.claims);
    unknown.push(...reading.unknown);
  }
  return { claims, unknown };
}

const LONGEST = 2000;

const LACKS: ReadonlySet<Symptom> = new Set(['no drive', 'no gear', 'no shift']);

// Who revs and does not move has no drive, and says no more than that.
const REVS: ReadonlySet<Symptom> = new Set(['slips', 'flares']);

class Sentence {
  readonly claims: Claim[] = [];
  readonly unknown: string[] = [];
  private when: Pick<Claim, 'heat' | 'load'> = {};
  private waiting: Place[] = [];
  private last: Claim[] = [];

  take(part: Part): void {
    const { symptoms, places, shift, when, whenFirst, said, link, denies } = part;
    if (denies) this.unknown.push(said);
    if (symptoms.length === 0) {
      if (!denies) this.withoutSymptom(part);
    } else {
      const under = { ...this.when, ...when };
      if (whenFirst) this.when = under;
      const named = [...this.waiting, ...places];
      const [before] = this.last;
      const stuck = before && named.length === 0 && symptoms.includes('no drive');
      const same = stuck && REVS.has(before.symptom) && before.places.length > 0;
      const inherits =
        named.length === 0 && !shift && (link === 'and' || link === 'comma' || same) && before;
      if (same) for (const claim of this.last) this.claims.splice(this.claims.indexOf(claim), 1);
      const where = inherits
        ? { places: before.places, except: before.except, ...shiftOf(before) }
        : { places: named, except: [], ...(shift && { shift }) };
      this.last = symptoms.map((symptom) => ({ symptom, ...where, ...under, said }));
      this.claims.push(...this.last);
      this.waiting = [];
    }
  }

  // A bare list of gears belongs to what was said before it, or waits for what comes.
  private withoutSymptom(part: Part): void {
    const { places, bare, when, said, leads } = part;
    if (bare && places.length > 0) {
      if (this.takesOut(part)) this.extend({ except: places });
      else if (this.last.length > 0 && !leads) this.extend({ places });
      else this.waiting.push(...places);
    } else if (when.heat || when.load) this.when = { ...this.when, ...when };
    else this.unknown.push(said);
  }

  // "In every gear but second", "in third, not in second"; but "no second, not in D" says it again.
  private takesOut({ link, not }: Part): boolean {
    const [before] = this.last;
    if (!before || link === 'except') return link === 'except';
    if (link === 'but' && before.places.includes('all')) return true;
    return not && !LACKS.has(before.symptom);
  }

  private extend({ places = [], except = [] }: Partial<Pick<Claim, 'places' | 'except'>>): void {
    this.last = this.last.map((claim) => {
      const its = {
        ...claim,
        places: [...new Set([...claim.places, ...places])],
        except: [...claim.except, ...except],
      };
      this.claims[this.claims.indexOf(claim)] = its;
      return its;
    });
  }
}

function shiftOf({ shift }: Claim): Pick<Claim, 'shift'> {
  return shift ? { shift } : {};
}
