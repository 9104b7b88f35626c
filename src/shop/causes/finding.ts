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
  'turns both ways',
  'locks both ways',
  'wrong way round',
  'sound',
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
  'inspection: sound': 'sound',
  'seals: cut': 'bad seal',
  'pump: worn': 'worn pump',
  'one-way check: turns both ways': 'turns both ways',
  'one-way check: locks both ways': 'locks both ways',
  'one-way check: wrong way': 'wrong way round',
};

// "second pack: burnt": of the thing before the colon, else of the whole unit.
function notedIn(train: Train, note: string): Finding[] {
  const [, before = '', after = note] = /^([^:]+): (.*)$/su.exec(note) ?? [];
  const told = ` ${plain(after.replaceAll(DENIED, ''))}`;
  const words = plain(before) + told;
  const thing =
    before === '' ? undefined : thingNamed(train, before.replaceAll(/[«»“”"]/gu, '').trim());
  return SIGNS.flatMap(([sign, form, unit]): Finding[] => {
    const said = unit ? form.test(words) : thing !== undefined && form.test(told);
    return said ? [{ sign, ...(!unit && thing !== undefined && { of: thing }), said: note }] : [];
  });
}

// "no metal in the pan", "not burnt": what was not found, as far as the next comma.
const DENIED = /\b(?:no|not|never|without|sin|ni|ningun[ao]?|ningún)\b[^,;:.]*/giu;

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

// The words of a bench, the thing before what it is or after it, and whether they are of the whole
// unit whatever stands before them.
const SIGNS: readonly (readonly [sign: FoundSign, form: RegExp, unit?: true])[] = [
  ['burnt', any('burn(?:t|ed)|charred|glazed|quemad[oa]s?|cristalizada')],
  ['burnt', either('linings?|forros?', 'worn|gastados?')],
  ['hot spots', any('hot spots?|warped|coned|(?:puntos?|manchas?) (?:calientes?|de calor)')],
  ['hot spots', any('alabead[oa]s?')],
  ['bad seal', any('hard or cut|cut or hard|(?:duros?|cortados?) o (?:duros?|cortados?)')],
  ['bad seal', either('seals?|lips?|reten(?:es)?|labios?', 'cut|hard|torn|split|duros?|cortados?')],
  ['worn rings', either('rings?|ring grooves?|anillos?(?: o su ranura)?', 'worn|gastad[oa]s?')],
  ['worn rings', any('ranuras? del? anillos? gastadas?')],
  ['broken', any('broken|chipped|cracked|marked (?:rollers?|track|sprags?)|falls apart')],
  ['broken', any('(?:rollers?|sprags?|track) marked|se deshace|pista marcada')],
  ['broken', any('rot[oa]s?|mellad[oa]s?|saltados|agrietad[oa]s?|(?:rodillos?|calzos) marcados?')],
  ['turns both ways', any('(?:turns|slips) both ways|gira en ambos sentidos')],
  ['locks both ways', any('locks both ways|seized|se bloquea en ambos sentidos|gripad[oa]')],
  ['wrong way round', any('wrong way round|backwards|upside down|al reves')],
  ['sound', /^ (?:sound|en buen estado)$/u],
  ['blued', any('blued?|azul(?:ad[oa]s?)?')],
  ['blued', either('pins?|planets?|pernos?|pasadores|satelites', 'loose|flojos?')],
  ['worn bushing', either('bushings?|casquillos?', 'worn|gastados?')],
  ['worn thrust face', any('worn thin|thrust face scored|scored face|broken tangs?|tangs? broken')],
  ['worn thrust face', any('washer worn|worn thrust face|adelgazada|unas? rotas?')],
  ['worn thrust face', any('arandela gastada|cara (?:de empuje )?rayada|cara de empuje gastada')],
  ['worn splines', either('splines?|estriado|estrias?', 'worn|gastad[oa]s?')],
  ['worn splines', any('notched|con muescas')],
  ['burnt fluid', both('fluid|aceite', 'burnt|quemado'), true],
  ['water', any('milky|water|lechos[oa]|agua'), true],
  ['metal', any('metal|slivers|virutas?|limaduras?'), true],
  ['lining dust', any('lining dust|friction dust|black flakes|polvo de forro'), true],
  ['blocked filter', both('filter|filtro', 'blocked|clogged|tapado|obstruido'), true],
  ['worn pump', both('pump|bomba', 'worn|scored|gastad[oa]s?|rayad[oa]s?'), true],
  ['stuck valve', both('valves?|valvulas?', 'stuck|sticks|(?:se )?pega(?:da)?|atascada'), true],
  [
    'worn converter',
    both('converter|convertidor', 'worn|blued?|burnt|gastado|azulado|quemado'),
    true,
  ],
  ['blocked cooler', both('cooler|enfriador|radiador', 'blocked|clogged|tapado|obstruido'), true],
];

function any(words: string): RegExp {
  return new RegExp(`(?<![\\p{L}])(?:${words})(?![\\p{L}])`, 'u');
}

// "worn splines", "splines worn".
function either(thing: string, is: string): RegExp {
  return any(`(?:${thing}) (?:o |or )?(?:${is})|(?:${is}) (?:${thing})`);
}

function both(one: string, other: string): RegExp {
  return new RegExp(`^(?=.*\\b(?:${one})\\b)(?=.*\\b(?:${other})\\b)`, 'u');
}
