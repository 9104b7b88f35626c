import { spoken } from '../words.ts';

export const words = spoken({
  en: {
    none: 'There is nothing to ask about this train yet: describe its sets and its gears first.',
    before: 'The one before',
    next: 'Next question',
    place: (place: number, all: number) => `Question ${place} of ${all}`,
    seed: 'Seed',
    right: 'Right.',
    votes: (votes: number) => (votes === 1 ? '1 vote' : `${votes} votes`),
    less: 'One vote less',
    share: 'Share of the votes',
    reveal: 'Reveal',
    again: 'Vote again',
    total: (total: number) => (total === 1 ? '1 hand' : `${total} hands`),
  },
  es: {
    none: 'Aún no hay nada que preguntar de este tren: describa antes sus juegos y sus marchas.',
    before: 'La anterior',
    next: 'Otra pregunta',
    place: (place: number, all: number) => `Pregunta ${place} de ${all}`,
    seed: 'Semilla',
    right: 'Correcto.',
    votes: (votes: number) => (votes === 1 ? '1 voto' : `${votes} votos`),
    less: 'Un voto menos',
    share: 'Parte de los votos',
    reveal: 'Descubrir',
    again: 'Votar otra vez',
    total: (total: number) => (total === 1 ? '1 mano' : `${total} manos`),
  },
});
