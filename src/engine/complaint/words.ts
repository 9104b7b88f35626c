// Gears and what ties words together, as drivers say them, in English and in Spanish, in small letters
// without accents. Common practice, no source. The first form that fits takes its words away.

/** A gear as a driver names it: its number, or a place of the lever. */
export type Place = number | Manual | 'R' | 'N' | 'P' | 'D' | 'L' | 'top' | 'all';

/** A gear in which the lever holds the unit: "manual second", "L2". */
export type Manual = `L${number}`;

/** Small letters, no accents, single blanks; a gear that the lever holds as one word, "l2". */
export function plainWords(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[’']/gu, '')
    .replace(REVVING, 'just revs')
    .replace(/[^\p{L}\p{N}>-]+/gu, ' ')
    .trim()
    .replace(MANUAL, (_, before: string | undefined, behind: string | undefined) => {
      return `l${numberOf(before ?? behind ?? '')}`;
    });
}

/** One thing, though an "and" stands in it. */
export const REVVING = /\bsits (?:there )?and revs\b/iu;

function numberOf(word: string): number {
  return NUMBERS.find(([, words]) => words.split('|').includes(word))?.[0] ?? 0;
}

const NUMBERS: readonly (readonly [number, string])[] = [
  [1, '1|1st|first|one|low gear|primera|uno|1a'],
  [2, '2|2nd|second|two|segunda|dos|2a'],
  [3, '3|3rd|third|three|tercera|tres|3a'],
  [4, '4|4th|fourth|four|cuarta|cuatro|4a'],
  [5, '5|5th|fifth|five|quinta|cinco|5a'],
  [6, '6|6th|sixth|six|sexta|seis|6a'],
  [7, '7|7th|seventh|seven|septima|siete|7a'],
  [8, '8|8th|eighth|eight|octava|ocho|8a'],
  [9, '9|9th|ninth|nine|novena|nueve|9a'],
  [10, '10|10th|tenth|ten|decima|diez|10a'],
];

const MANUALS = NUMBERS.map(([number]) => [`L${number}` as Manual, `l${number}`] as const);

const NUMBER = NUMBERS.flatMap(([, words]) => words.split('|'))
  .filter((word) => word !== 'low gear')
  .join('|');
const MANUAL = new RegExp(
  String.raw`\b(?:(?:manual(?: lever)?|(?:lever|palanca) (?:in|on|at|en)(?: la)?|l)[ -]?(${NUMBER})` +
    String.raw`|(${NUMBER}) (?:manual|a mano|by hand))(?![\p{L}\p{N}])`,
  'gu',
);

const PLACES: readonly (readonly [Place, string])[] = [
  ...NUMBERS,
  ...MANUALS,
  ['R', 'reverse|r|backwards?|reversa|marcha atras|atras'],
  ['N', 'neutral|n|punto muerto|neutro'],
  ['P', 'park|p|estacionamiento'],
  ['L', '(?:manual )?low(?! gear)|l|corta(?: manual)?'],
  ['D', '(?<!the )(?<!no )(?<!not )drive|d|directa|forward|adelante'],
  ['top', 'top|overdrive|od|highest|la mas larga|sobremarcha'],
  [
    'all',
    'everything|every gear|all gears|any gear|anywhere|all ranges|every range|both ways' +
      '|todas?|todo|en ninguna|ninguna marcha',
  ],
];

const NO_GEARS =
  'seconds?|minutes?|hours?|km|miles?|mph|times|thing|gear cable' +
  '|segundos?|minutos?|horas?|veces';

/** Whether a place is named; a number that stands before a word of time or speed is none. */
export const GEARS: readonly (readonly [Place, RegExp])[] = PLACES.map(([place, words]) => [
  place,
  new RegExp(String.raw`(?:^|[ >-])(?:${words})(?= |$|[>-])(?! (?:${NO_GEARS}))`, 'u'),
]);

/** Any of them, as a part of a form. */
export const PLACE = PLACES.map(([, words]) => words).join('|');

/** "two to three", "from 2 into 3", "2-3", "de segunda a tercera". */
export const SHIFT = new RegExp(
  String.raw`(?:^| )(?<from>${PLACE})(?: (?:to|into|a) | ?(?:->|-|>) ?)(?<to>${PLACE})(?= |$)`,
  'u',
);

/** Where one part of a sentence ends, and how the next one is tied to it. */
export const LINKS: readonly (readonly [Link, RegExp])[] = [
  ['except', /^(?:unless|except(?: for)?|but not|salvo|excepto|menos)(?=\s)/iu],
  ['and', /^(?:and then|and|or|nor|y luego|y|o|ni)(?=\s)/iu],
  ['but', /^(?:but|then|once|pero|luego)(?=\s)/iu],
];
export type Link = 'start' | 'comma' | 'and' | 'but' | 'except';

/** Words that may stand in a list of gears and say nothing. */
export const FILLERS = new RegExp(
  String.raw`\b(?:in|into|and|or|nor|the|with|lever|not|too|also|gears?|on` +
    String.raw`|en|la|el|las|los|y|o|ni|tampoco|tambien|con|palanca|de|a)\b`,
  'gu',
);

export const HEATS: readonly (readonly ['cold' | 'hot', RegExp])[] = [
  ['cold', /\b(?:cold|first thing|in the morning|frio|en frio|por la manana)\b/u],
  ['hot', /\b(?:hot|warm(?:ed)?(?: up)?|in traffic|caliente|en caliente|calentado)\b/u],
];

export const LOADS: readonly (readonly ['light' | 'heavy', RegExp])[] = [
  [
    'heavy',
    new RegExp(
      String.raw`\b(?:flat out|full throttle|foot down|uphill|hard|heavy|towing` +
        String.raw`|a fondo|cuesta arriba|cargado|remolque)\b`,
      'u',
    ),
  ],
  ['light', /\b(?:lightly?|gently|gentle|easy|suave(?:mente)?|con poco gas)\b/u],
];

/** What turns the words behind it round. */
export const DENIAL = new RegExp(
  String.raw`\b(?:not|never|no|no longer|no more|without|nor|neither|hardly|barely|scarcely|stopped` +
    String.raw`|(?:do|does|did|is|was|has|have|wo|will|would|ca|could) ?nt` +
    String.raw`|nunca|jamas|tampoco|sin|apenas|dejo de)\b`,
  'u',
);

/** Gears that are taken out of those before: "…, not in second". */
export const NOT = /^(?:not|no) /u;

/** From one gear into another, which are named in a list: "between second and third". */
export const BETWEEN = /\b(?:between|entre)\b/iu;

/** On the way into a gear. */
export const INTO =
  /\b(?:in ?to|going|(?:changes?|shifts?)(?: up)? to|al (?:pasar|entrar|cambiar))\b/iu;

/** Said of the car rolling with the foot off: what is good there is no pull. */
export const COASTING =
  /\b(?:on (?:the )?coast|coasting|downhill|foot off|off the gas|sin gas|cuesta abajo|al soltar)\b/u;
