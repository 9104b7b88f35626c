import { PLACE } from './words.ts';

// What drivers say is wrong, in English and in Spanish, in small letters without accents. Common
// practice, no source. An order matters: the first form that fits takes its words from the others.

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

// Who runs away at a change flares; on coast, and anywhere else, nothing holds the car back.
const LATER = '.*';
const AWAY = String.raw`\b(?:runs?|ran) away\b`;
const CHANGE =
  String.raw`\b(?:changes?|changing|(?:up)?shift\w*|between` +
  String.raw`|(?:${PLACE}) ?(?:to|into|->|-|>) ?(?:${PLACE}))\b`;
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

/** What is well; beside what is wrong it only says when: "slips in second when it pulls". */
export const WELL: ReadonlySet<Symptom> = new Set(['good', 'brakes']);
