import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    none: 'There is nothing to ask about this train yet: describe its sets and its gears first.',
    before: 'Previous question',
    next: 'Next question',
    place: (place: number, all: number) => `Question ${place} of ${all}`,
    seed: 'Question set',
    right: 'Right.',
    votes: (votes: number) => (votes === 1 ? '1 vote' : `${votes} votes`),
    less: 'One vote less',
    share: 'Share of the votes',
    reveal: 'Reveal',
    large: 'Full screen',
    keys: (last: string) =>
      `Keys: A to ${last} vote, with Shift a vote less; space reveals; arrows go on and back.`,
    again: 'Vote again',
    total: (total: number) => (total === 1 ? '1 vote in all' : `${total} votes in all`),
  },
  es: {
    none: 'Aún no hay nada que preguntar de este tren: describa antes sus juegos y sus marchas.',
    before: 'Pregunta anterior',
    next: 'Pregunta siguiente',
    place: (place: number, all: number) => `Pregunta ${place} de ${all}`,
    seed: 'Serie de preguntas',
    right: 'Correcto.',
    votes: (votes: number) => (votes === 1 ? '1 voto' : `${votes} votos`),
    less: 'Un voto menos',
    share: 'Parte de los votos',
    reveal: 'Descubrir',
    large: 'Pantalla completa',
    keys: (last: string) =>
      `Teclas: A a ${last} votan, con Mayús un voto menos; espacio descubre; flechas pasan de pregunta.`,
    again: 'Votar otra vez',
    total: (total: number) => (total === 1 ? '1 voto en total' : `${total} votos en total`),
  },
});
