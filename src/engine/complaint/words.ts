// What drivers say, in English and in Spanish, in small letters without accents. Common practice,
// no source. An order matters: the first form that fits takes its words away from the others.

/** What is wrong, in the driver's eyes. */
export type Symptom =
  | 'no drive'
  | 'no gear'
  | 'no shift'
  | 'stays'
  | 'starts in'
  | 'slips'
  | 'flares'
  | 'harsh'
  | 'late'
  | 'no braking'
  | 'brakes'
  | 'noise'
  | 'quiet'
  | 'ties up'
  | 'creeps'
  | 'poor launch'
  | 'good';

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

const PLACE = PLACES.map(([, words]) => words).join('|');

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

const LATER = '.*';
const AWAY = String.raw`\b(?:runs?|ran) away\b`;
const CHANGE = String.raw`\b(?:changes?|changing|(?:up)?shift\w*|between|(?:${PLACE}) ?(?:to|into|->|-|>) ?(?:${PLACE}))\b`;
const ROLLING = String.raw`\b(?:on (?:the )?coast|coasting|downhill|foot off|off the gas)\b`;

/** The forms of each symptom, the more particular first. */
export const SYMPTOMS: readonly (readonly [Symptom, readonly RegExp[]])[] = [
  [
    'no braking',
    [
      /\bno engine brak\w*/u,
      new RegExp(String.raw`${AWAY}(?!${LATER}${CHANGE})(?<!${CHANGE}${LATER}${AWAY})`, 'u'),
      new RegExp(String.raw`${AWAY}(?=${LATER}${ROLLING})|(?<=${ROLLING}${LATER})${AWAY}`, 'u'),
      /\b(?:does ?nt|does not|wont|will not) (?:hold|brake) (?:back|downhill|on coast)/u,
      /\bcoasts\b/u,
      /\b(?:no retiene|sin freno motor|no hay freno motor|se embala cuesta abajo)\b/u,
    ],
  ],
  [
    'creeps',
    [
      /\b(?:creeps?|crawls?|pulls forward|moves) (?:\w+ )?in (?:neutral|n)\b/u,
      /\b(?:se mueve|avanza|tira) en (?:neutro|punto muerto|n)\b/u,
    ],
  ],
  [
    'poor launch',
    [
      /\bno (?:go|pull|power) off the line\b/u,
      /\b(?:slow|weak|sluggish|poor) (?:off the line|to pull away|launch|take ?off)\b/u,
      /\b(?:sale sin fuerza|no tiene fuerza al salir|perezoso al salir)\b/u,
    ],
  ],
  ['starts in', [/\b(?:starts?|pulls away|sets off|arranca|sale) (?:off )?(?:in|en)\b/u]],
  ['stays', [/\b(?:stays?|stuck|se queda) (?:in|en)\b/u]],
  [
    'no shift',
    [
      /\b(?:never|wont|will not|does ?nt|does not|no) (?:changes?|shifts?|goes?|go|upshifts?)\b/u,
      /\b(?:nunca|no) (?:cambia|mete|pasa)\b/u,
    ],
  ],
  [
    'no drive',
    [
      /\b(?:(?:no|lost|loses|without)(?: any| all)? drive|no move|just revs|will not do)\b/u,
      /\b(?:wont|will not|does ?nt|does not) move\b/u,
      /\b(?:no hay|sin|no tiene) (?:traccion|arrastre)\b/u,
      /\bno (?:anda|se mueve|avanza|tira)\b/u,
    ],
  ],
  [
    'no gear',
    [
      new RegExp(
        String.raw`\b(?:lost|loses|no|without|there is no|there are no)` +
          String.raw`(?= (?:(?:forward|any) )?(?:reverse|r|first|second|third|fourth|fifth|sixth` +
          String.raw`|top|overdrive|drive|d|low|gears?|forward|\d\w*)\b)`,
        'u',
      ),
      new RegExp(
        String.raw`\b(?:no hay|sin|no tiene)(?= (?:marcha atras|reversa|primera|segunda|tercera` +
          String.raw`|cuarta|quinta|sexta|directa|sobremarcha|marchas?)\b)`,
        'u',
      ),
    ],
  ],
  [
    'flares',
    [
      /\b(?:flares?(?: up)?|flaring|runs? up between|revs? (?:up )?between|neutrals? out)\b/u,
      /\b(?:revs? (?:up|high|freely)|(?:engine|motor|it) revs(?! without)|races(?: up)?)\b/u,
      new RegExp(AWAY, 'u'),
      /\b(?:se revoluciona|se dispara|se embala|se acelera|sube de vueltas)\b/u,
    ],
  ],
  [
    'ties up',
    [
      /\b(?:binds?|binding|ties? up|tied up|locks? up|drags to a stop)\b/u,
      /\bstalls?(?: it| the engine)?\b/u,
      /\b(?:se bloquea|se traba|se cala|se agarra)\b/u,
    ],
  ],
  [
    'slips',
    [
      /\b(?:slips?|slipping|revs? without pulling|shudders?|patina\w*|resbala\w*)\b/u,
      /(?<!\bbrak.*)\bweak\b(?!.*\bbrak)/u,
      /(?<!\bfren.*)\b(?:debil|floj[oa]|sin fuerza|le falta fuerza)\b(?!.*\bfren)/u,
    ],
  ],
  [
    'harsh',
    [
      /\b(?:harsh(?:ly)?|bangs?|slams?|thumps?|jerks?|kicks?|rough)\b/u,
      /\b(?:brusc[oa]s?|golpea|da un golpe|patada|tiron)\b/u,
    ],
  ],
  [
    'late',
    [
      /\b(?:late|slow to (?:come in|engage|go in|take up)|delay(?:ed|s)?|long wait)\b/u,
      /\btakes (?:ages|long|a while|forever)\b/u,
      /\b(?:tarda|tarde|demora|se retrasa|lento en entrar)\b/u,
    ],
  ],
  [
    'brakes',
    [
      new RegExp(
        String.raw`\bengine brak(?:es|ing)\b(?! (?:is |are |was |feels )?(?:weak|poor|bad|late))` +
          String.raw`(?: is| works?)?(?: (?:fine|good|ok|okay|normal|well|there))?\b`,
        'u',
      ),
      new RegExp(
        String.raw`(?<!\b(?:the|with|on|my|hit|press) )\bbrakes\b` +
          String.raw`(?! (?:are|were|badly|poorly|weakly|too|late))`,
        'u',
      ),
      /\bholds? (?:it |the car )?(?:back|downhill|on (?:the )?coast)\b(?! (?:badly|poorly|weakly))/u,
      /\b(?:frena|retiene)\b(?! (?:mal|poco|tarde|demasiado))/u,
      /\b(?:hay )?freno motor(?: (?:va|esta|funciona))?(?: (?:bien|normal))?\b/u,
    ],
  ],
  ['quiet', [/\b(?:silent|quiet|no noise|silencios[oa]s?|sin ruido)\b/u]],
  [
    'noise',
    [
      /\b(?:nois[ey]|noises|growls?|growling|whines?|whining|howls?|grinds?|grinding|rumbles?)\b/u,
      /\b(?:ruido|ruidos[oa]|zumba|aulla|grune|chilla)\b/u,
    ],
  ],
  [
    'good',
    [
      /\b(?:fine|good|perfect(?:ly)?|normal(?:ly)?|pulls? well|all right|ok|okay|like normal)\b/u,
      /\b(?:bien|perfect[oa]s?)\b/u,
      /\bpulls\b(?! (?:away|to|up|over|off|left|right|badly|poorly|weakly|out))/u,
      /\btira\b(?! (?:mal|poco|hacia|a la))/u,
    ],
  ],
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

/** What is well; beside what is wrong it only says when: "slips in second when it pulls". */
export const WELL: ReadonlySet<Symptom> = new Set(['good', 'brakes']);
