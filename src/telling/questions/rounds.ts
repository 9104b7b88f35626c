import type { Countable, Inquiry, Prompt, Wrong } from '../../asking/describe/index.ts';
import { type Language, problemText, voiceOf } from '../narrative/index.ts';
import { labelOf } from './wording.ts';

// What stands round a question: what the round is about, whether there is another, what was wrong.

const ROUNDS = {
  en: {
    topics: {
      name: 'name',
      input: 'shaft that comes in',
      output: 'shaft that goes out',
      outputs: 'several shafts that go out',
      set: 'planetary set',
      'gear pair': 'gear pair',
      join: 'what is splined to what',
      device: 'clutch, brake, band, park pawl or one-way clutch',
      gear: 'gear',
    },
    anotherOne: {
      set: 'Is there another planetary set?',
      device: 'Does anything else hold or join parts?',
      gear: 'Is there another gear?',
    },
    nothing: 'Nothing',
    none: 'Nothing is applied',
    nothingMore: 'Nothing more',
    notCounted: 'I cannot count it',
    mistake: (text: string) =>
      `The file would be wrong by this: ${text}. Answer anew, or take back an answer.`,
    doubt: (most: number) =>
      `As common practice this is hardly ever over ${most}. Is it counted right, and the unit right? If it is so, give it once more.`,
    samePiece: (name: string) => `It cannot be ${name} here. Pick another.`,
    refused: {
      unreadable: 'The text cannot be read: mend it first.',
      'no such place': 'There is no place for this in the text: change it there.',
      'laid out by hand':
        'The text is laid out by hand here: change it there, or a comment is lost.',
      'not a name': 'A name is 1 to 80 characters, with no comma, colon or dot in it.',
      'name taken': 'Something else has this name. Give it another.',
      'cannot alternate':
        'So many do not lie in turn: of frictions and steels there is one more at most, and the one at the piston begins. Count again, or take back an answer; what lies otherwise is written in the text.',
      'must be said': 'This must be said. Leave the question if you do not know it.',
    },
  },
  es: {
    topics: {
      name: 'nombre',
      input: 'eje que entra',
      output: 'eje que sale',
      outputs: 'varios ejes que salen',
      set: 'juego planetario',
      'gear pair': 'par de engranajes',
      join: 'qué está estriado a qué',
      device: 'embrague, freno, banda, trinquete o rueda libre',
      gear: 'marcha',
    },
    anotherOne: {
      set: '¿Hay otro juego planetario?',
      device: '¿Hay algo más que retenga o una piezas?',
      gear: '¿Hay otra marcha?',
    },
    nothing: 'A nada',
    none: 'Nada está aplicado',
    nothingMore: 'Nada más',
    notCounted: 'No lo puedo contar',
    mistake: (text: string) =>
      `El archivo quedaría mal: ${text}. Responda de nuevo, o retire una respuesta.`,
    doubt: (most: number) =>
      `Como práctica común casi nunca pasa de ${most}. ¿Está bien contado, y bien la unidad? Si es así, dígalo otra vez.`,
    samePiece: (name: string) => `Aquí no puede ser ${name}. Elija otra pieza.`,
    refused: {
      unreadable: 'El texto no se puede leer: arréglelo primero.',
      'no such place': 'En el texto no hay lugar para esto: cámbielo ahí.',
      'laid out by hand':
        'Aquí el texto está ordenado a mano: cámbielo ahí, o se pierde un comentario.',
      'not a name': 'Un nombre tiene de 1 a 80 caracteres, sin coma, dos puntos ni punto.',
      'name taken': 'Otra cosa lleva ese nombre. Dele otro.',
      'cannot alternate':
        'Tantos no van alternados: de fricción y de acero hay a lo más uno de diferencia, y empieza el que va al pistón. Cuente otra vez, o retire una respuesta; lo que va de otro modo se escribe en el texto.',
      'must be said': 'Esto hay que decirlo. Deje la pregunta si no lo sabe.',
    },
  },
} as const;

/** What is wrong with an answer, and the way out. */
export function wrongText(its: Wrong, language: Language): string {
  const say = ROUNDS[language];
  switch (its.wrong) {
    case 'expected': {
      const { what, found } = its;
      const place = { line: 1, column: 1, length: found.length };
      const problem = { problem: 'expected', severity: 'error', what, found, place } as const;
      return problemText(problem, voiceOf(language));
    }
    case 'mistake':
      return say.mistake(problemText(its.problem, voiceOf(language)));
    case 'doubt':
      return say.doubt(its.most);
    case 'same piece':
      return say.samePiece(its.name);
    default:
      return say.refused[its.wrong];
  }
}

/** What a round is about. */
export function topicText(
  { topic, section = '' }: Pick<Inquiry, 'topic' | 'section'>,
  language: Language,
): string {
  return topic === 'entry' ? labelOf(section, language) : ROUNDS[language].topics[topic];
}

/** The question whether there is another. */
export function anotherText(of: Countable, language: Language): string {
  return ROUNDS[language].anotherOne[of];
}

/** What giving no answer means. */
export function noneText({ topic }: Inquiry, prompt: Prompt, language: Language): string {
  const say = ROUNDS[language];
  if (prompt.kind === 'number') return say.notCounted;
  if (topic === 'join') return say.nothing;
  return topic === 'gear' ? say.none : say.nothingMore;
}
