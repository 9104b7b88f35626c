import type { Observation } from '../../engine/suspects/index.ts';
import { ownName, type Train } from '../../engine/train/index.ts';

/** What wear and damage leave behind on a thing, and what is found of the whole unit. */
export const SIGNS_OF_THINGS = [
  'burnt',
  'hot spots',
  'bad seal',
  'worn rings',
  'broken',
  'blued',
  'worn bushing',
  'worn thrust face',
  'worn splines',
] as const;
export const SIGNS_OF_UNITS = [
  'burnt fluid',
  'water',
  'metal',
  'lining dust',
  'blocked filter',
  'worn pump',
  'stuck valve',
  'worn converter',
  'blocked cooler',
] as const;
export type FoundSign = (typeof SIGNS_OF_THINGS | typeof SIGNS_OF_UNITS)[number];

/** One thing that was found, and of which device, set or member; of the whole unit where none is named. */
export interface Finding {
  readonly sign: FoundSign;
  readonly of?: string;
  /** As it was written, or the test that showed it. */
  readonly said: string;
}

/**
 * What was found as a unit came apart: in notes such as "second brake: burnt", English or Spanish,
 * and in what tests showed. A note that says nothing of this kind is passed over.
 */
export function findingsIn(
  train: Train,
  notes: readonly string[],
  observations: readonly Observation[],
): Finding[] {
  const all = [
    ...observations.flatMap((one) => shownBy(one)),
    ...notes.flatMap((note) => notedIn(train, note)),
  ];
  const known = new Set<string>();
  return all.filter(({ sign, of }) => {
    const key = `${sign} ${of ?? ''}`;
    return !known.has(key) && known.add(key);
  });
}

function shownBy({ test, sight }: Observation): Finding[] {
  const sign = SHOWN[`${test.test}: ${sight.saw}`];
  if (!sign) return [];
  const of = 'device' in test ? test.device : 'set' in test ? test.set : undefined;
  return [{ sign, ...(of !== undefined && { of }), said: `${test.test}: ${sight.saw}` }];
}

const SHOWN: Readonly<Record<string, FoundSign>> = {
  'fluid: burnt': 'burnt fluid',
  'fluid: milky': 'water',
  'fluid: metal': 'metal',
  'pan: metal': 'metal',
  'pan: friction': 'lining dust',
  'filter: blocked': 'blocked filter',
  'valve body: sticks': 'stuck valve',
  'seal rings: worn': 'worn rings',
  'air check: hiss': 'bad seal',
  'converter: worn': 'worn converter',
  'end play: too big': 'worn thrust face',
  'inspection: broken': 'broken',
};

// "second pack: burnt": of the thing before the colon, else of the whole unit.
function notedIn(train: Train, note: string): Finding[] {
  const [, before = '', after = note] = /^([^:]+): (.*)$/su.exec(note) ?? [];
  const words = plain(`${before} ${after}`);
  const told = plain(after);
  const thing =
    before === '' ? undefined : thingNamed(train, before.replaceAll(/[«»“”"]/gu, '').trim());
  return SIGNS.flatMap(([sign, form, unit]): Finding[] => {
    const said = unit ? form.test(words) : thing !== undefined && form.test(told);
    return said ? [{ sign, ...(!unit && thing !== undefined && { of: thing }), said: note }] : [];
  });
}

// The device that a part of the teardown carries says more than the part.
function thingNamed(train: Train, name: string): string | undefined {
  const same = (one: string) => plain(one) === plain(name);
  const { devices, sets, joins, teardown = [] } = train;
  const own = [...devices, ...sets, ...joins].find((one) => same(one.name));
  if (own) return own.name;
  const part = teardown.find((one) => same(one.name));
  if (!part) return undefined;
  const device = devices.find((one) => part.carries.includes(one.name));
  const [first = part.name] = part.carries;
  const set = sets.find((one) => first.startsWith(`${one.name}.`));
  return device?.name ?? set?.name ?? ownName(train)(first);
}

function plain(text: string): string {
  return text
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[.\s]+/gu, ' ')
    .trim();
}

// The words of a bench, and whether they are of the whole unit whatever stands before them.
const SIGNS: readonly (readonly [sign: FoundSign, form: RegExp, unit?: true])[] = [
  ['burnt', any('burn(?:t|ed)|charred|worn linings?|glazed|quemad[oa]s?|forros? gastados?')],
  ['hot spots', any('hot spots?|warped|coned|puntos? calientes?|manchas? de calor|alabead[oa]s?')],
  [
    'bad seal',
    any(
      'hard or cut|(?:cut|hard|torn) (?:seals?|lips?)|(?:retenes|reten) (?:duros?|cortados?|duro o)',
    ),
  ],
  [
    'worn rings',
    any('worn ring grooves?|worn rings?|anillos? (?:o su ranura )?gastados?|ranuras? de anillo'),
  ],
  ['broken', any('broken|chipped|cracked|slips both ways|marked (?:rollers?|track|sprags?)')],
  ['broken', any('rot[oa]s?|mellad[oa]s?|agrietad[oa]s?|rodillos? marcados?')],
  ['blued', any('blued?|loose (?:pins?|planets?)|azulad[oa]s?|pernos? flojos?')],
  ['worn bushing', any('worn bushings?|bushing worn|casquillos? gastados?')],
  ['worn thrust face', any('worn thin|scored face|broken tangs?|washer worn|worn thrust face')],
  ['worn thrust face', any('arandela gastada|cara rayada|cara de empuje gastada')],
  ['worn splines', any('worn splines?|notched|estriado gastado|estrias? gastadas?')],
  ['burnt fluid', both('fluid|aceite', 'burnt|quemado'), true],
  ['water', any('milky|water|lechos[oa]|agua'), true],
  ['metal', any('metal|slivers|virutas?|limaduras?'), true],
  ['lining dust', any('lining dust|friction dust|black flakes|polvo de forro'), true],
  ['blocked filter', both('filter|filtro', 'blocked|clogged|tapado|obstruido'), true],
  ['worn pump', both('pump|bomba', 'worn|scored|gastad[oa]s?|rayad[oa]s?'), true],
  ['stuck valve', both('valves?|valvulas?', 'stuck|sticks|pegada|atascada'), true],
  [
    'worn converter',
    both('converter|convertidor', 'worn|blued?|burnt|gastado|azulado|quemado'),
    true,
  ],
  ['blocked cooler', both('cooler|enfriador|radiador', 'blocked|clogged|tapado|obstruido'), true],
];

function any(words: string): RegExp {
  return new RegExp(`\\b(?:${words})\\b`, 'u');
}

function both(one: string, other: string): RegExp {
  return new RegExp(`^(?=.*\\b(?:${one})\\b)(?=.*\\b(?:${other})\\b)`, 'u');
}
