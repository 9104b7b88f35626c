import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    handsFree: 'Hands-free',
    does: 'Larger buttons, the screen kept awake, steps read aloud',
    readAloud: 'Read aloud',
    listen: 'Answer by voice',
    fetch: 'Fetch the words of English into this device',
    again: 'Read it again',
    waits: 'The browser speaks once you have pressed: press “Read it again”.',
    noVoice:
      'Nothing is read aloud: this device has no English voice of its own, and no other is used.',
    mayBeSaid: (all: string) => `Say one word alone: ${all}. A stop is passed by a press only.`,
    heard: (word: string) => `Heard: ${word}`,
    nothingHere: (word: string) => `Heard: ${word}. Here it takes a press.`,
    hearing: {
      absent: 'Words are not heard: this browser cannot.',
      elsewhere:
        'Words are not heard: this browser would send what it hears to somebody else, and nothing leaves this page.',
      fetchable:
        'This browser can hear words on the device itself once its own words are fetched, which takes a network. What is said is sent to nobody.',
      fetching: 'The words of English are being fetched.',
      refused: 'Words are not heard: the microphone was refused, or is not there.',
    },
    stands: {
      awake: 'The screen stays awake.',
      absent: 'This browser cannot keep the screen awake: set the device so.',
      refused: 'The browser did not keep the screen awake: the battery may be low.',
    },
  },
  es: {
    handsFree: 'Manos libres',
    does: 'Botones más grandes, la pantalla despierta, los pasos en voz alta',
    readAloud: 'Leer en voz alta',
    listen: 'Contestar de voz',
    fetch: 'Traer a este aparato las palabras del español',
    again: 'Leerlo otra vez',
    waits: 'El navegador habla cuando usted ha pulsado: pulse «Leerlo otra vez».',
    noVoice:
      'No se lee nada en voz alta: este aparato no tiene voz española propia, y no se usa otra.',
    mayBeSaid: (all: string) => `Diga una palabra sola: ${all}. Un alto se pasa solo pulsando.`,
    heard: (word: string) => `Oído: ${word}`,
    nothingHere: (word: string) => `Oído: ${word}. Aquí hay que pulsar.`,
    hearing: {
      absent: 'No se oyen palabras: este navegador no puede.',
      elsewhere:
        'No se oyen palabras: este navegador mandaría a otro lo que oye, y de esta página no sale nada.',
      fetchable:
        'Este navegador puede oír palabras en el propio aparato cuando haya traído las suyas, para lo que hace falta red. Lo que se dice no se manda a nadie.',
      fetching: 'Se están trayendo las palabras del español.',
      refused: 'No se oyen palabras: se negó el micrófono, o no lo hay.',
    },
    stands: {
      awake: 'La pantalla sigue despierta.',
      absent: 'Este navegador no puede tener la pantalla despierta: ajuste así el aparato.',
      refused: 'El navegador no tuvo la pantalla despierta: quizá queda poca batería.',
    },
  },
});
