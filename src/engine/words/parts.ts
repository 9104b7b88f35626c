import type { Concept } from './concept.ts';

/** What a train is made of. */
export const PARTS = {
  sun: {
    en: 'sun',
    es: 'planetario',
    read: ['sun gear', 'centre gear', 'center gear', 'planetario', 'solar'],
    stands: ['planetario'],
    both: { en: /\bsuns?\b/i, es: /planetarios?\b/i },
  },
  ring: {
    en: 'ring',
    es: 'corona',
    read: ['ring gear', 'ring wheel', 'annulus', 'annular', 'internal gear', 'corona'],
    stands: ['corona', 'ring gear'], // a final drive has a ring gear
  },
  planet: {
    en: 'planet',
    es: 'satélite',
    read: ['satellite', 'planet pinion', 'pinion', 'satélite'],
    stands: ['pinion', 'satélite'], // a bevel set has pinions
    both: { en: /\bplanets?\b/i, es: /satélite/i },
  },
  planets: {
    en: 'planets',
    es: 'satélites',
    read: ['satellites', 'planet pinions', 'pinions', 'satélites'],
    stands: ['pinions', 'satélites'],
  },
  carrier: {
    en: 'carrier',
    es: 'portasatélites',
    read: ['planet carrier', 'arm', 'spider', 'cage', 'portasatélites', 'portaplanetarios'],
    stands: ['portasatélites'],
    both: { en: /\bcarriers?\b/i, es: /portasatélites/i },
  },
  set: {
    en: 'planetary set',
    es: 'juego planetario',
    not: { en: /epicyclic|gear ?sets?\b/i, es: /epicicloidal|tren planetario/i },
  },
  'gear pair': {
    en: 'gear pair',
    es: 'par de engranajes',
    not: { es: /pares? de ruedas/i },
    both: { en: /gear pairs?/i, es: /par(?:es)? de engranajes/i },
  },
  case: { en: 'case', es: 'carcasa', read: ['carcasa'], stands: ['carcasa'] },
  member: { en: 'member', es: 'miembro', both: { en: /\bmembers?\b/i, es: /miembro/i } },
  device: { en: 'device', es: 'elemento', not: { es: /\bdispositivos?\b/i } },
  friction: {
    en: 'friction disc',
    es: 'disco de fricción',
    file: 'friction',
    read: ['friction plate', 'friction disc', 'fibre', 'lined plate', 'composition plate'],
    stands: ['friction disc'],
  },
  steel: {
    en: 'steel plate',
    es: 'disco de acero',
    file: 'steel',
    read: ['steel plate', 'separator', 'separator plate', 'reaction plate', 'drive plate'],
    stands: ['steel plate'],
  },
  cushion: {
    en: 'cushion plate',
    es: 'disco ondulado',
    file: 'cushion',
    read: ['cushion plate', 'wave plate', 'dished plate'],
    stands: ['cushion plate'],
    both: { en: /cushion plate/i, es: /discos? ondulados?/i },
  },
  backing: {
    en: 'backing plate',
    es: 'disco de apoyo',
    read: ['pressure plate', 'end plate', 'retaining plate'],
    once: ['flange'],
    not: { es: /\bbridas?\b/i },
    both: { en: /backing plate/i, es: /discos? de apoyo/i },
  },
  'snap ring': {
    en: 'snap ring',
    es: 'anillo elástico',
    read: ['circlip', 'retaining ring'],
    not: { es: /seeger|anillo de retención/i },
    both: { en: /snap rings?/i, es: /anillos? elásticos?/i },
  },
  splines: { en: 'splines', es: 'estriado', not: { es: /\bestrías\b/i } },
  lug: { en: 'lug', es: 'orejeta', not: { es: /lengüeta/i } },
} as const satisfies Record<string, Concept>;
