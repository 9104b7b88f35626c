import type { Room } from '../rooms/index.ts';
import { spoken } from '../words/index.ts';

type Does = Readonly<Record<Exclude<Room, 'begin'>, string>>;

const en: Does = {
  turn: 'Explain how it works: turn it, shift it, see why; its chart, and what slips first.',
  symptoms: 'From a complaint to what is wrong, one question a screen.',
  strip: 'Take it apart on the bench, part by part.',
  measure: 'Clearances, end play, bands, wear: and which part sets them right.',
  build: 'Put it together by its plan, step by step; then the first start.',
  ask: 'A question in large type, votes by a tap, then the train shows why.',
  describe: 'A train of your own, by questions or as text.',
  job: 'Write down what was done and found, by whom.',
  print: 'Every sheet on paper, blank or filled in.',
};

const es: Does = {
  turn: 'Explicar cómo funciona: gírelo, cambie de marcha, vea por qué; su tabla y qué patina antes.',
  symptoms: 'De la queja a lo que está mal, una pregunta por pantalla.',
  strip: 'Desarmarlo en el banco, pieza por pieza.',
  measure: 'Holguras, juegos axiales, bandas, desgaste: y qué pieza los corrige.',
  build: 'Armarlo según su plan, paso a paso; después, el primer arranque.',
  ask: 'Una pregunta en letra grande, votos con un toque, y el tren muestra por qué.',
  describe: 'Un tren propio, con preguntas o como texto.',
  job: 'Apuntar lo que se hizo y se encontró, y quién.',
  print: 'Cada hoja en papel, en blanco o rellena.',
};

export const words = spoken({
  en: {
    what: 'How a planetary gear train turns, what carries the load, and which fault a symptom means: worked out from its teeth, with the reason and the proof.',
    touch: (input: string) => `Touch it: drag the ringed dial, the ${input}, round.`,
    touched: (member: string) =>
      `The ${member} turns in your hand, and the others as it makes them. Tap a dial to hold it.`,
    loose: (member: string, output: string) =>
      `The ${member} turns in your hand. Nothing resists at the ${output}, so it stays loose: tap a dial to hold it, or in Turn it take your hands off, and it is loaded.`,
    want: 'What do you want to do?',
    does: en,
    trains: 'Pick a train, the simplest first',
    size: (meshes: number, devices: number) =>
      `${meshes === 1 ? '1 set' : `${meshes} sets and pairs`}, ${devices === 1 ? '1 device' : `${devices} devices`}`,
    about: 'What it is about',
    own: 'Start on your own',
    ownDoes: 'Describe what lies on your bench.',
    file: 'Open a file',
    fileDoes: 'A train file from your disk.',
  },
  es: {
    what: 'Cómo gira un tren de juegos planetarios, qué lleva la carga y qué avería indica un síntoma: calculado a partir de sus dientes, con el motivo y la prueba.',
    touch: (input: string) => `Tóquelo: arrastre en círculo el dial con anillo, ${input}.`,
    touched: (member: string) =>
      `${member} gira en su mano, y los demás como los mueve. Toque un dial para retenerlo.`,
    loose: (member: string, output: string) =>
      `${member} gira en su mano. En ${output} nada resiste, así que queda libre: toque un dial para retenerlo, o suelte en Girarlo, y tendrá carga.`,
    want: '¿Qué quiere hacer?',
    does: es,
    trains: 'Elija un tren, primero el más sencillo',
    size: (meshes: number, devices: number) =>
      `${meshes === 1 ? '1 juego' : `${meshes} juegos y pares`}, ${devices === 1 ? '1 elemento' : `${devices} elementos`}`,
    about: 'De qué trata',
    own: 'Empezar por su cuenta',
    ownDoes: 'Describa lo que tiene en el banco.',
    file: 'Abrir un archivo',
    fileDoes: 'Un archivo de tren de su disco.',
  },
});
