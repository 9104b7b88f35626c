import { spoken } from '../words/index.ts';

const time = (language: string, at: Date) =>
  at.toLocaleString(language, { dateStyle: 'medium', timeStyle: 'medium' });

interface About {
  readonly train: string;
  readonly lines: number;
}

export const words = spoken({
  en: {
    ours: 'Trains of ours',
    file: 'File',
    open: 'Open…',
    empty: 'New, from nothing',
    untitled: 'new.train.yaml',
    save: 'Save',
    changed: 'not saved yet',
    link: 'Make a link',
    undo: 'Undo',
    redo: 'Redo',
    over: 'Save over it',
    elsewhere: 'Save under another name',
    away: 'Dismiss',
    newer: 'A newer version of this page has come. What is unsaved is kept.',
    takeNewer: 'Take it',
    takeUp: 'Restore',
    throwAway: (name: string) => `Discard ${name}`,
    left: (name: string, { train, lines }: About, at: Date) =>
      `Unsaved work on ${name} (${train && `${train}, `}${lines === 1 ? 'one line' : `${lines} lines`}), of ${time('en', at)}, is kept.`,
    saved: (name: string) => `Saved as ${name}.`,
    failed: (why: string) => `That could not be done (${why}). The text here is as it was.`,
    word: {
      'not kept': 'This browser keeps nothing for this page: save to disk before you close it.',
      'link copied': 'This link holds the whole train; whoever opens it sends nothing to anybody.',
      'damaged link':
        'The link is damaged: part of it is missing. Ask for it again, or for the file.',
      'command gone':
        'The command that handed a file to this page has ended: open the file here, or start it again.',
      'too large': 'That file has more than 16 MB: no train has. Open another.',
      'not text': 'That file is no text in UTF-8. Save it as UTF-8 and open it again.',
      'changed on disk': 'Somebody else has written this file since it was opened here.',
      'open elsewhere': 'A file of this name is open in another tab too. Each keeps its own text.',
      'saved elsewhere':
        'Another tab has saved a file of this name. The text here is kept as it is.',
    },
  },
  es: {
    ours: 'Trenes nuestros',
    file: 'Archivo',
    open: 'Abrir…',
    empty: 'Nuevo, desde cero',
    untitled: 'nuevo.train.yaml',
    save: 'Guardar',
    changed: 'sin guardar',
    link: 'Hacer un enlace',
    undo: 'Deshacer',
    redo: 'Rehacer',
    over: 'Guardar encima',
    elsewhere: 'Guardar con otro nombre',
    away: 'Cerrar',
    newer: 'Ha llegado una versión más nueva de esta página. Lo no guardado se conserva.',
    takeNewer: 'Usarla',
    takeUp: 'Recuperar',
    throwAway: (name: string) => `Descartar ${name}`,
    left: (name: string, { train, lines }: About, at: Date) =>
      `Se conserva trabajo sin guardar de ${name} (${train && `${train}, `}${lines === 1 ? 'una línea' : `${lines} líneas`}), del ${time('es', at)}.`,
    saved: (name: string) => `Guardado como ${name}.`,
    failed: (why: string) => `No se pudo (${why}). El texto de aquí sigue como estaba.`,
    word: {
      'not kept':
        'Este navegador no conserva nada de esta página: guarde en disco antes de cerrar.',
      'link copied': 'Este enlace lleva el tren entero; quien lo abre no envía nada a nadie.',
      'damaged link': 'El enlace está dañado: falta una parte. Pídalo otra vez, o pida el archivo.',
      'command gone':
        'El programa que pasó un archivo a esta página terminó: ábralo aquí, o inícielo otra vez.',
      'too large': 'Ese archivo tiene más de 16 MB: ningún tren los tiene. Abra otro.',
      'not text': 'Ese archivo no es texto en UTF-8. Guárdelo en UTF-8 y ábralo otra vez.',
      'changed on disk': 'Alguien ha escrito este archivo desde que se abrió aquí.',
      'open elsewhere':
        'Otra pestaña tiene abierto un archivo con este nombre. Cada una guarda lo suyo.',
      'saved elsewhere':
        'Otra pestaña guardó un archivo con este nombre. Aquí el texto sigue igual.',
    },
  },
});
