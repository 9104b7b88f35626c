import { spoken } from '../words/index.ts';

/** What each room is called, wherever one is offered. */
export const roomNames = spoken({
  en: {
    begin: 'Begin',
    turn: 'Turn it',
    symptoms: 'Find a fault',
    strip: 'Strip it',
    measure: 'Measure',
    build: 'Build it',
    ask: 'Ask the class',
    describe: 'Describe it',
    job: 'Job',
    print: 'Print',
  },
  es: {
    begin: 'Inicio',
    turn: 'Girarlo',
    symptoms: 'Buscar la avería',
    strip: 'Desarmar',
    measure: 'Medir',
    build: 'Armarlo',
    ask: 'Preguntar',
    describe: 'Describirlo',
    job: 'Trabajo',
    print: 'Imprimir',
  },
});
