import type { PartKind } from '../../engine/train/index.ts';

/**
 * What each kind of part is looked over for: what wear and damage leave on it. Common practice, no
 * source; the unit's own manual has its limits.
 */
const FINDINGS = {
  shaft: ['worn splines', 'scored', 'worn ring groove', 'bent'],
  drum: ['notched', 'worn bushing', 'scored bore', 'glazed'],
  shell: ['notched', 'worn splines', 'cracked'],
  hub: ['notched', 'worn splines', 'blocked hole'],
  sun: ['chipped', 'worn splines', 'worn bushing', 'scored face'],
  ring: ['chipped', 'worn splines', 'cracked'],
  carrier: ['loose pins', 'loose planets', 'blued', 'chipped', 'scored face'],
  gear: ['chipped', 'scored face', 'worn splines'],
  pack: ['burnt', 'worn linings', 'hot spots', 'warped', 'notched'],
  band: ['burnt', 'worn linings', 'worn ends'],
  'one-way clutch': ['slips both ways', 'locks both ways', 'marked rollers', 'broken springs'],
  race: ['marked track', 'blued', 'notched'],
  washer: ['worn thin', 'scored face', 'broken tangs'],
  bearing: ['rough', 'marked rollers', 'falls apart'],
  'snap ring': ['bent', 'worn groove'],
  gasket: ['torn'],
  seal: ['hard or cut', 'worn ring groove'],
  piston: ['cut seals', 'stuck ball', 'cracked'],
  spring: ['broken springs', 'sagged'],
  servo: ['cut seals', 'scored bore', 'worn rod', 'broken springs'],
  pawl: ['rounded', 'broken springs'],
  pump: ['scored gears', 'worn bushing', 'scored face', 'cut seals'],
  support: ['worn bushing', 'worn ring groove', 'blocked hole'],
  cover: ['cracked', 'worn bushing', 'cut seals'],
  'valve body': ['stuck valve', 'scored bore', 'metal in it', 'torn'],
} as const satisfies Record<PartKind, readonly string[]>;

/**
 * How a note of a part begins that finds nothing wrong with it, in each language in which a job may
 * have been written; a test holds them against the voices.
 */
export const NOTHING_WRONG = ['Sound', 'En buen estado', 'Counted: ', 'Contados: '] as const;

/** Whether what a part was found to be speaks against putting it on again. */
export function isFault(found: string): boolean {
  return !NOTHING_WRONG.some((its) => (its.endsWith(' ') ? found.startsWith(its) : found === its));
}

export type PartFinding = (typeof FINDINGS)[PartKind][number];

/**
 * What a part of a kind may be found to be, the commonest first; of no kind, what any may. A drum
 * that comes out with its plates in it is looked over as a pack too.
 */
export function findingsOf(kind: PartKind | undefined, hasPlates = false): readonly PartFinding[] {
  const its = kind ? FINDINGS[kind] : (['scored', 'cracked', 'bent'] as const);
  return hasPlates ? [...new Set([...its, ...FINDINGS.pack])] : its;
}
