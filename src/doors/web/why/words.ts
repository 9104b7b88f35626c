import { spoken } from '../words.ts';

export const words = spoken({
  en: {
    why: 'Why',
    proof: 'Open the proof',
    noProof: 'Nothing is pushed here, and no mesh is needed to say so.',
    on: (member: string) => `Torques on the ${member}`,
    together: 'together',
    mesh: (set: string) => `${set}:`,
    signs: 'Plus is clockwise, seen from the input end. Teeth times speeds come to nothing too.',
    bySet: (set: string) => `the ${set} gears`,
    byEnd: (member: string) => `from outside, at the ${member}`,
    byGround: 'what the case stands on',
  },
  es: {
    why: 'Por qué',
    proof: 'Abrir la prueba',
    noProof: 'Aquí no empuja nada, y no hace falta ningún engrane para decirlo.',
    on: (member: string) => `Pares sobre: ${member}`,
    together: 'juntos',
    mesh: (set: string) => `${set}:`,
    signs: 'Más es a derechas, visto desde la entrada. Dientes por velocidades también suman cero.',
    bySet: (set: string) => `los engranajes de ${set}`,
    byEnd: (member: string) => `desde fuera, en ${member}`,
    byGround: 'lo que sostiene la caja',
  },
});
