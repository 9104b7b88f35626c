import type { Fault, FrictionFault, OneWayFault } from '../../engine/faults/index.ts';
import { assemble, type Part, type PartKind, type Train } from '../../engine/train/index.ts';
import { kindOfPart } from './kind.ts';

/**
 * What each kind of part is looked over for: what wear and damage leave on it. Common practice, no
 * source; the unit's own manual has its limits.
 */
const FINDINGS = {
  shaft: ['worn splines', 'scored', 'worn ring groove', 'bent'],
  drum: ['notched', 'worn bushing', 'scored bore'],
  shell: ['notched', 'worn splines', 'cracked'],
  hub: ['notched', 'worn splines', 'blocked hole'],
  sun: ['chipped', 'worn splines', 'worn bushing', 'scored face'],
  ring: ['chipped', 'worn splines', 'cracked'],
  carrier: ['loose pins', 'loose planets', 'blued', 'chipped', 'scored face'],
  gear: ['chipped', 'scored face', 'worn splines'],
  pack: ['burnt', 'worn linings', 'hot spots', 'warped', 'notched', 'wrong order'],
  band: ['burnt', 'worn linings', 'worn ends', 'strut out'],
  'one-way clutch': [
    'slips both ways',
    'locks both ways',
    'marked rollers',
    'broken springs',
    'backwards',
  ],
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

export type PartFinding = (typeof FINDINGS)[PartKind][number] | 'glazed';

/**
 * What a part of a train may be found to be, the commonest first; of no kind, what any may. A drum
 * that comes out with its plates is looked over as a pack too, and its piston’s seals; one that a
 * band goes round, where the band runs.
 */
export function findingsOf(train: Train, part: Part): readonly PartFinding[] {
  const kind = kindOfPart(train, part);
  const its = kind ? FINDINGS[kind] : (['scored', 'cracked', 'bent'] as const);
  const carried = train.devices.filter(({ name }) => part.carries.includes(name));
  const hasPlates =
    (part.frictions ?? part.steels) !== undefined ||
    carried.some(({ kind: is }) => is === 'clutch' || is === 'brake');
  const { bodies, bodyOf } = assemble(train);
  const ofPart = new Set(
    part.carries.flatMap((name) => bodies[bodyOf(name) ?? -1]?.names ?? [name]),
  );
  const hasBand = train.devices.some((device) => {
    return device.kind === 'band' && ofPart.has(device.first);
  });
  return [
    ...new Set([
      ...its,
      ...(hasBand && (kind === 'drum' || kind === 'shell') ? (['glazed'] as const) : []),
      ...(hasPlates ? FINDINGS.pack : []),
      ...(hasPlates && kind === 'drum' ? (['cut seals'] as const) : []),
    ]),
  ];
}

/**
 * How a train with such a part in it would have run: the fault that the finding leads to, of the
 * device that the part carries. What is out of place is common practice, no source. Undefined where
 * it leads to none that is known.
 */
export function faultFrom(train: Train, part: Part, is: PartFinding): Fault | undefined {
  const device = train.devices.find(({ name }) => part.carries.includes(name));
  if (!device) return undefined;
  if (device.kind === 'one-way') {
    const its = ONE_WAY[is];
    return its && { what: 'one-way', device: device.name, is: its };
  }
  const its = device.kind === 'pawl' ? undefined : FRICTION[is];
  return its && { what: 'device', device: device.name, is: its };
}

const ONE_WAY: Readonly<Partial<Record<PartFinding, OneWayFault>>> = {
  backwards: 'backwards',
  'slips both ways': 'slips',
  'locks both ways': 'seized',
};
const FRICTION: Readonly<Partial<Record<PartFinding, FrictionFault>>> = {
  'wrong order': 'slips',
  'strut out': 'will not apply',
};
