import {
  type Account,
  type Advice,
  awaits,
  type Belief,
  foreseen,
  nextTest,
  type Proposal,
  proposalOf,
} from '../suspects/index.ts';
import { type Inquiry } from '../cause/index.ts';
import { type Test } from '../sight/index.ts';

/** So many tests are proposed. */
const MOST = 3;

/** What confirms the leading suspect is worth so much of what parts it from the others. */
const CONFIRMING = 0.3;

/** A test that tells a suspect from a sound unit no better than this, in bits, confirms nothing. */
const LEAST = 0.2;

/**
 * The tests that are worth most for what they cost: those that part the suspects, and those that
 * confirm the leading one from outside before anything is opened for it.
 */
export function chosen(
  inquiry: Inquiry,
  accounts: readonly Account[],
  belief: Belief,
  may: (test: Test) => boolean,
): Pick<Advice, 'heldBack'> & { readonly proposed: readonly Proposal[] } {
  const { best, others: further, heldBack } = nextTest(inquiry, accounts, belief, may);
  const parting = best ? [best, ...further] : [];
  const known = new Set(parting.map(({ test }) => test));
  const kinds = seenKinds(accounts);
  const confirming = new Confirmation(inquiry, belief);
  const others = inquiry.tests
    .filter((test) => !known.has(test) && test.test !== 'hand check' && may(test))
    .filter((test) => 'device' in test || !kinds.has(test.test))
    .filter((test) => !awaits(inquiry.experience.tests[test.test], accounts))
    .filter((test) => confirming.bits(test) >= LEAST)
    .map((test) => proposalOf(inquiry, accounts, belief, test));
  const worth = ({ test, bits, minutes, opening, practised }: Proposal) => {
    const told = bits + CONFIRMING * confirming.bits(test);
    return told / (opening + minutes * inquiry.experience.risks[practised.risk]);
  };
  const proposed = [...parting, ...others].toSorted((a, b) => worth(b) - worth(a));
  return { proposed: proposed.slice(0, MOST), heldBack };
}

// Another gear or range confirms nothing that one of them has not; it may part the suspects.
function seenKinds(accounts: readonly Account[]): ReadonlySet<string> {
  const sure = accounts.filter(({ said }) => {
    return said.some(({ observation }) => observation.sure === 'sure');
  });
  return new Set(sure.map(({ test }) => test.test));
}

/** What a test would say of what is suspected, all of it together, against a unit in order. */
class Confirmation {
  private readonly inquiry: Inquiry;
  private readonly belief: Belief;
  private readonly chances: readonly number[];
  private readonly sound: number;

  constructor(inquiry: Inquiry, belief: Belief) {
    this.inquiry = inquiry;
    this.belief = belief;
    this.chances = belief.causes;
    this.sound = inquiry.causes.findIndex(({ cause }) => cause === 'nothing wrong');
  }

  /**
   * How far apart the two are (the Jensen–Shannon divergence of what each would show, in bits),
   * times the chance that anything is wrong.
   */
  bits(test: Test): number {
    const prediction = this.inquiry.predict(test);
    const rows = foreseen(this.inquiry, prediction, this.belief);
    const wrong = 1 - (this.chances[this.sound] ?? 0);
    const suspected = prediction.outcomes.map((_, o) => {
      const sum = rows.reduce((all, row, c) => {
        return c === this.sound ? all : all + (row[o] as number) * (this.chances[c] as number);
      }, 0);
      return sum / (wrong || 1);
    });
    const own = prediction.outcomes.map((_, o) => (o === prediction.whole ? 1 : 0));
    const sound = rows[this.sound] ?? own;
    const mean = suspected.map((chance, o) => (chance + (sound[o] as number)) / 2);
    return wrong * (entropy(mean) - (entropy(suspected) + entropy(sound)) / 2);
  }
}

function entropy(chances: readonly number[]): number {
  let bits = 0;
  for (const chance of chances) if (chance > 0) bits -= chance * Math.log2(chance);
  return bits;
}
