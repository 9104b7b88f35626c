import type { Concept } from './concept.ts';

/** How a train turns and what it carries. */
export const MOTION = {
  'under power': {
    en: 'under power',
    es: 'en tracción',
    both: { en: /\bunder power\b/i, es: /en tracción/i },
  },
  coast: {
    en: 'coast',
    es: 'retención',
    once: ['over-run'],
    stands: ['over-run'], // as one-way clutches do
    not: { en: /\b(?:on |by |in )?the over-?run\b|\bon over-?run\b/i },
    both: { en: /\bon coast\b/i, es: /retención/i },
  },
  'over-run': {
    en: 'over-run',
    es: 'girar libre',
    not: { en: /\boverrun/i },
    both: { en: /\bover-run/i, es: /gira[rn]? libre/i },
  },
  released: {
    en: 'released',
    es: 'suelto',
    not: { en: /\blet(?:s|ting)? (?:\w+ ){0,3}go\b/i },
  },
  'slips first': { en: 'slips first', es: 'patina primero', not: { es: /\bcede primero\b/i } },
  held: { en: 'held', es: 'retenido', not: { es: /\b(?:sost(?:ien|eng|en)|sujet)/i } },
  'tied up': {
    en: 'tied up',
    es: 'bloqueado',
    not: { en: /\b(?:locked|bound)[- ]up\b|\bbind-?up\b/i },
    both: { en: /\btied[- ]up\b/i, es: /bloque/i },
  },
  neutral: {
    en: 'neutral',
    es: 'punto muerto',
    not: { es: /\bneutro\b/i },
    both: { en: /\bneutral\b/i, es: /punto muerto/i },
  },
  'engine braking': {
    en: 'engine braking',
    es: 'freno motor',
    both: { en: /engine braking/i, es: /freno motor/i },
  },
  clockwise: {
    en: 'clockwise',
    es: 'en sentido horario',
    not: { es: /(?:manecillas|agujas) del reloj/i },
  },
  anticlockwise: {
    en: 'anticlockwise',
    es: 'en sentido antihorario',
    not: { en: /counter-?clockwise/i },
  },
  'off-going': { en: 'off-going', es: 'saliente', not: { en: /\bboth (?:on|off)\b/i } },
  'on-coming': { en: 'on-coming', es: 'entrante', not: { es: /ambos (?:puestos|sueltos)/i } },
  'lever diagram': {
    en: 'lever diagram',
    es: 'diagrama de palancas',
    file: 'lever',
    once: ['scale'],
    stands: ['scale'],
    not: { en: /speed scale/i, es: /escala de velocidades/i },
    both: { en: /lever diagram/i, es: /diagrama de palancas/i },
  },
  'stick diagram': {
    en: 'stick diagram',
    es: 'esquema cinemático',
    not: { en: /half-section/i, es: /media sección|semicorte/i },
    both: { en: /stick diagram/i, es: /esquema cinemático/i },
  },
  'torque capacity': {
    en: 'torque capacity',
    es: 'capacidad de par',
    file: 'capacity',
    once: ['margins', 'margin'],
    stands: ['margin'], // by how much it is more than what is asked
    both: { en: /torque capacity/i, es: /capacidad de par/i },
  },
} as const satisfies Record<string, Concept>;
