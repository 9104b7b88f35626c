import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    why: 'Why',
    whyWrong: 'Why, with the fault',
    proof: 'Open the proof',
    noProof: {
      nothing: 'Nothing pushes on what this speaks of: there is no torque to balance.',
      whole: 'This speaks of the train as a whole; the other sentences open to what is pushed.',
      unlisted:
        'This answer was checked like every other, but who pushes whom is not listed for a train that rolls on a hill.',
    },
    on: (member: string) => `Torques on the ${member}`,
    together: 'together',
    mesh: (set: string) => `${set}, teeth × speed:`,
    unsettled: 'nothing settles all its speeds, so none is written down.',
    signs:
      'Plus is clockwise, seen from the input end; speeds are turns for one turn of what is turned.',
    bySet: (set: string) => `the ${set} gears`,
    byEnd: (member: string) => `from outside, at the ${member}`,
    byGround: 'what the case stands on',
  },
  es: {
    why: 'Por qué',
    whyWrong: 'Por qué, con la avería',
    proof: 'Abrir la prueba',
    noProof: {
      nothing: 'Nada empuja aquello de lo que habla esta frase: no hay par que equilibrar.',
      whole: 'Esto habla del tren entero; las otras frases se abren a lo que se empuja.',
      unlisted:
        'Esta respuesta se comprobó como las demás, pero quién empuja a quién no se enumera cuando el tren rueda en cuesta.',
    },
    on: (member: string) => `Pares sobre: ${member}`,
    together: 'juntos',
    mesh: (set: string) => `${set}, dientes × velocidad:`,
    unsettled: 'nada determina todas sus velocidades, y no se anota ninguna.',
    signs:
      'Más es en sentido horario, visto desde el lado de entrada; las velocidades son vueltas por una vuelta de lo que se gira.',
    bySet: (set: string) => `los engranajes del juego ${set}`,
    byEnd: (member: string) => `desde fuera, en ${member}`,
    byGround: 'lo que retiene la carcasa',
  },
});
