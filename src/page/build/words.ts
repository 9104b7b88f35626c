import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    noTrain: 'There is no train in this file yet: describe it first, or open another.',
    tellStrip: 'Tell how it comes apart',
    noJob: 'No job is open: how far the build is, only this browser remembers.',
    handOver: (count: number) => `Write these ${count} into the job`,
    another: 'Another unit is on the bench',
    forget: 'Begin the build anew, and forget this one',
    count: (step: number, all: number) => `Step ${step} of ${all}`,
    startCount: (step: number, all: number) => `First start, ${step} of ${all}`,
    startTitle: (title: string) => `First start: ${title}`,
    experience:
      'Common practice, with no source: the unit’s maker has the last word on every line, and where the maker says otherwise, do that.',
    what: { sound: 'what was heard', check: 'check by hand', stop: 'stop' },
    done: 'Done',
    before: 'Before',
    after: 'After',
    all: 'All steps, in order',
    isDone: 'done',
    isNext: 'next',
    notYet: 'This comes later: nothing is answered ahead of its turn.',
    written: (outcome: 'done' | 'right' | 'wrong', said: string, who: string) => {
      const as = {
        done: 'Written down',
        right: 'Written down as right',
        wrong: 'Written down as wrong',
      }[outcome];
      return `${as}${who === '' ? '' : ` by ${who}`}: ${said}`;
    },
    toNext: 'Go on where the build stands',
    takeOff: (step: number) => `Take everything off again from step ${step} on`,
    asked: 'taken off again',
    right: 'Right',
    wrong: 'Wrong',
    rightNow: 'Right now',
    rightAfterAll: 'It was right after all',
    whatDidIt: 'What did it do?',
    it: 'It',
    felt: (felt: string) => `Wrong: it ${felt}.`,
    mayBe: 'It may be one of these. Look for it, then take off what is over it:',
    nothingKnown:
      'No single mistake of this build feels so: do it again slowly, then look at what went on last.',
    picture: (felt: string) => `The unit as far as it is built; what is turned ${felt}`,
    pictureKey:
      'Drawn faintly: not on yet. A hand lies on what is held; arrows are round what is turned.',
    again: 'Show it again',
    heard: 'With the air on: what was heard?',
    measure: 'Measure it',
    leaveOpen: 'Go on, left open',
    stands: {
      nothing: 'Not measured yet.',
      asked: 'Measured, and to be measured again.',
      unjudged: 'Measured; the file has no limit that judges it.',
      outside: 'Outside its limits.',
      inside: 'Inside; another part of the shelf would be nearer to the middle.',
      closed: 'Measured, and closed.',
    },
    lookNow:
      'Stop. The next step covers these: after it they are put right by stripping alone. Look for each now:',
    passStop: 'I have looked at each: cover them',
    foundOne: 'One of them is wrong',
    built: 'The unit is built, and has run.',
    signNext: 'What was measured and what stands open is told where it is signed.',
    sign: 'To the job, to sign',
  },
  es: {
    noTrain: 'Aún no hay tren en este archivo: descríbalo antes, o abra otro.',
    tellStrip: 'Decir cómo se desarma',
    noJob:
      'No hay ningún trabajo abierto: hasta dónde llega el armado solo lo recuerda este navegador.',
    handOver: (count: number) => `Pasar ${count} anotaciones al trabajo`,
    another: 'Hay otra unidad en el banco',
    forget: 'Empezar el armado de nuevo y olvidar este',
    count: (step: number, all: number) => `Paso ${step} de ${all}`,
    startCount: (step: number, all: number) => `Primer arranque, ${step} de ${all}`,
    startTitle: (title: string) => `Primer arranque: ${title}`,
    experience:
      'Práctica común, sin fuente: el fabricante de la unidad tiene la última palabra en cada línea, y donde diga otra cosa, haga lo que dice.',
    what: { sound: 'qué se oyó', check: 'comprobación a mano', stop: 'alto' },
    done: 'Hecho',
    before: 'Anterior',
    after: 'Siguiente',
    all: 'Todos los pasos, en orden',
    isDone: 'hecho',
    isNext: 'ahora',
    notYet: 'Esto viene más tarde: nada se contesta antes de su turno.',
    written: (outcome: 'done' | 'right' | 'wrong', said: string, who: string) => {
      const as = { done: 'Anotado', right: 'Anotado como bien', wrong: 'Anotado como mal' }[
        outcome
      ];
      return `${as}${who === '' ? '' : ` por ${who}`}: ${said}`;
    },
    toNext: 'Seguir donde está el armado',
    takeOff: (step: number) => `Quitar otra vez todo desde el paso ${step}`,
    asked: 'se quitó otra vez',
    right: 'Bien',
    wrong: 'Mal',
    rightNow: 'Ahora bien',
    rightAfterAll: 'Al final estaba bien',
    whatDidIt: '¿Qué hizo?',
    it: 'Esa pieza',
    felt: (felt: string) => `Mal: ${felt}.`,
    mayBe: 'Puede ser uno de estos. Búsquelo y quite lo que tiene encima:',
    nothingKnown:
      'Ningún error por sí solo se siente así: repítalo despacio y mire lo último que se puso.',
    picture: (felt: string) => `La unidad hasta donde está armada; lo que se gira: ${felt}`,
    pictureKey:
      'En trazo débil: aún no puesto. Hay una mano en lo que está retenido y flechas en lo que se gira.',
    again: 'Mostrarlo otra vez',
    heard: 'Con el aire puesto: ¿qué se oyó?',
    measure: 'Medirlo',
    leaveOpen: 'Seguir y dejarlo abierto',
    stands: {
      nothing: 'Aún sin medir.',
      asked: 'Medido, y hay que medirlo otra vez.',
      unjudged: 'Medido; el archivo no tiene límite con que juzgarlo.',
      outside: 'Fuera de sus límites.',
      inside: 'Dentro; otra pieza del surtido quedaría más cerca del medio.',
      closed: 'Medido y cerrado.',
    },
    lookNow:
      'Alto. El paso siguiente los tapa: después solo se corrigen desmontando. Busque ahora cada uno:',
    passStop: 'He mirado cada uno: taparlos',
    foundOne: 'Uno de ellos está mal',
    built: 'La unidad está armada y ha funcionado.',
    signNext: 'Lo medido y lo que queda abierto se dice donde se firma.',
    sign: 'Al trabajo, a firmar',
  },
});
