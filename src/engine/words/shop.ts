import type { Concept } from './concept.ts';

/** What is done in a shop, in a class, and on the page. */
export const SHOP = {
  'hand check': {
    en: 'hand check',
    es: 'comprobación a mano',
    not: { es: /pruebas? (?:de|a) mano/i },
    both: { en: /hand checks?/i, es: /comprobaci(?:ón|ones) a mano/i },
  },
  'road test': { en: 'on the road', es: 'en carretera', not: { es: /en la calle/i } },
  'end play': {
    en: 'end play',
    es: 'juego axial',
    file: 'endplay',
    read: ['end play', 'end float', 'thrust clearance', 'axial play'],
    stands: ['end play'],
    both: { en: /end plays?/i, es: /juegos? axial/i },
  },
  stall: { en: 'stall', es: 'calado', both: { en: /\bstall\b/i, es: /cal(?:ado|ando)/i } },
  seized: { en: 'seized', es: 'gripado', not: { es: /agarrotad/i } },
  experience: {
    en: 'shop’s experience',
    es: 'experiencia del taller',
    file: 'experience',
    once: ['practice'],
    stands: ['practice'],
    not: { en: /(?<!common |licensed )\bpractice\b/i },
  },
  trials: { en: 'trials', es: 'ensayos', once: ['draws'], stands: ['draws'] },
  'question set': {
    en: 'question set',
    es: 'serie de preguntas',
    file: 'series',
    once: ['seed'],
    not: { en: /xoshiro/i, es: /xoshiro|semilla/i },
  },
  'engages inside': {
    en: 'engages inside',
    es: 'engrana por dentro',
    not: { en: /(?:inner|outer) edge/i, es: /borde (?:interior|exterior)/i },
  },
  faces: {
    en: 'faces input',
    es: 'mira a la entrada',
    not: {
      en: /\bto(?:wards)? the (?:in|out)put end\b/i,
      es: /hacia el lado de (?:entrada|salida)/i,
    },
  },
  vote: { en: 'vote', es: 'voto', not: { en: /\b1 hand\b|\{?total\}? hands\b/i } },
  page: {
    en: 'the page',
    es: 'la página',
    not: {
      en: /bench (?:is (?:open|closed)|in a browser|at another)|a bench for|opens? the bench/i,
      es: /el banco (?:está|en (?:un navegador|otro puerto))|texto del banco|un banco para|abrir el banco/i,
    },
  },
  dismiss: { en: 'dismiss', es: 'cerrar', not: { en: /put away/i } },
  restore: { en: 'restore', es: 'recuperar', not: { en: /take it up/i, es: /retomarlo/i } },
  discard: { en: 'discard', es: 'descartar', not: { en: /throw it away/i, es: /tirarlo/i } },
  'reset marks': {
    en: 'reset marks',
    es: 'poner marcas a cero',
    not: { en: /marks to the start/i, es: /marcas al principio/i },
  },
  'full screen': { en: 'full screen', es: 'pantalla completa' },
  previous: { en: 'previous', es: 'anterior', not: { en: /the one before/i } },
  'compare with a fault': {
    en: 'compare with a fault',
    es: 'comparar con una avería',
    not: { en: /wrong build beside/i, es: /montaje mal hecho/i },
  },
} as const satisfies Record<string, Concept>;
