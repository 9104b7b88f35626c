import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    open: 'The open job',
    all: 'Jobs in this browser',
    complaint: (its: string) => `Complaint: ${its}`,
    entries: 'What was written down, in the order of time',
    nothing: 'Nothing has been written down yet.',
    pending: 'on the screen alone, not kept by the browser',
    strike: 'Strike',
    strikeIt: (told: string) => `Strike: ${told}`,
    because: 'Why is it struck? It stays, with the reason.',
    strikes: (id: string, because: string) => `strikes ${id}: ${because}`,
    struck: (who: string, because: string) => `struck by ${who}: ${because}`,
    cancel: 'Cancel',
    note: 'A note',
    addNote: 'Write it down',
    typedOnly: (names: string) => `Typed in “Measure”, and not written down: ${names}.`,
    signWhat: 'What do you sign?',
    signExample: 'build sheet',
    sign: (who: string) => (who === '' ? 'Sign' : `Sign as ${who}`),
    photographOf: 'What does the photograph show? A part, if you like',
    photograph: { camera: 'Take a photograph', file: 'Photograph from a file' },
    photographs: 'Photographs',
    stripped: 'It is kept smaller, and without the place and the time that a camera puts in.',
    elsewhere: (name: string) =>
      `${name} is not in this browser: open the job with its photographs.`,
    unnamed: (name: string) => `${name}: no entry names it`,
    undrawn: (name: string) => `${name} is kept as it came: this browser cannot show it.`,
    saveIt: 'Save it to disk',
    another: 'Begin another job…',
    openFile: 'Open a job from disk…',
    unite: 'Take in a colleague’s copy…',
    save: 'Save the job to disk',
    saveAll: 'Save it with its photographs',
    discardAsk: 'Discard this job…',
    discardTold: 'It goes from this browser, with its photographs. Save it first, if it is wanted.',
    discard: (name: string) => `Discard ${name}`,
    count: (entries: number) =>
      entries === 0 ? 'nothing written yet' : entries === 1 ? 'one entry' : `${entries} entries`,
    stillOpen: (open: string) => `stands open: ${open}`,
    signed: (what: string, who: string) => `signed by ${who}: ${what}`,
    notSaved: 'in this browser alone',
    savedAs: (name: string, since: number) =>
      since === 0 ? `saved as ${name}` : `saved as ${name}; since then ${since} more here`,
    saved: (name: string) => `Saved as ${name}.`,
    opened: (name: string, unread: number) =>
      unread === 0
        ? `${name} is open.`
        : `${name} is open. Lines of it that cannot be read, and are kept as they are: ${unread}.`,
    united: (name: string, came: number) =>
      came === 0
        ? `${name} is a copy of this job, and has nothing that is not here.`
        : `${name} is a copy of this job. Lines that came in: ${came}.`,
    asCame: (names: string) =>
      `This browser cannot draw these pictures, and keeps them as they came, with whatever a camera put in: ${names}.`,
    leftOut: (names: string) => `Left out, for the file holds more than a job does: ${names}.`,
    otherPicture: (name: string, kept: string) =>
      `${name} is another picture in that copy: theirs is kept as ${kept}.`,
    severalJobs: (name: string) =>
      `That file holds several jobs: ${name}. Unpack it, and open the one that is wanted. Nothing was changed.`,
    noJob: (name: string, why: string) => `${name} is no job (${why}). Nothing was changed.`,
    failed: (why: string) => `That could not be done (${why}). The job here is as it was.`,
    word: {
      'not text': 'That file is neither a job nor a zip with one. Nothing was changed.',
      'too large': 'That file is larger than any job. Nothing was changed.',
    },
    keepsAWhile:
      'This job is in this browser alone, and a browser may forget a page that is not opened for seven days. Save the job to disk, or install this page.',
    install: 'Install this page',
    known: 'I know',
    diskAsks: (name: string) => `Entries are not written to ${name} yet: the browser asks first.`,
    allow: 'Write to it',
    diskWritten: (name: string) => `${name} on disk has all of it.`,
    diskAnother:
      'The file on disk holds something else now, and was left alone. Save the job under another name.',
    diskFailed: (why: string) =>
      `The file on disk could not be written (${why}). All is in this browser: save the job again.`,
    away: 'Dismiss',
  },
  es: {
    open: 'El trabajo abierto',
    all: 'Trabajos en este navegador',
    complaint: (its: string) => `Queja: ${its}`,
    entries: 'Lo anotado, por orden de tiempo',
    nothing: 'Aún no se ha anotado nada.',
    pending: 'solo en pantalla: el navegador no lo conserva',
    strike: 'Tachar',
    strikeIt: (told: string) => `Tachar: ${told}`,
    because: '¿Por qué se tacha? Queda, con el motivo.',
    strikes: (id: string, because: string) => `tacha ${id}: ${because}`,
    struck: (who: string, because: string) => `tachado por ${who}: ${because}`,
    cancel: 'Cancelar',
    note: 'Una nota',
    addNote: 'Anotarla',
    typedOnly: (names: string) => `Escrito en «Medir» y sin anotar: ${names}.`,
    signWhat: '¿Qué firma?',
    signExample: 'hoja de montaje',
    sign: (who: string) => (who === '' ? 'Firmar' : `Firmar como ${who}`),
    photographOf: '¿Qué muestra la fotografía? Una pieza, si quiere',
    photograph: { camera: 'Hacer una fotografía', file: 'Fotografía de un archivo' },
    photographs: 'Fotografías',
    stripped: 'Se conserva más pequeña, y sin el lugar ni la hora que pone la cámara.',
    elsewhere: (name: string) =>
      `${name} no está en este navegador: abra el trabajo con sus fotografías.`,
    unnamed: (name: string) => `${name}: ninguna anotación la nombra`,
    undrawn: (name: string) => `${name} se conserva como vino: este navegador no puede mostrarla.`,
    saveIt: 'Guardarla en disco',
    another: 'Empezar otro trabajo…',
    openFile: 'Abrir un trabajo del disco…',
    unite: 'Incorporar la copia de un colega…',
    save: 'Guardar el trabajo en disco',
    saveAll: 'Guardarlo con sus fotografías',
    discardAsk: 'Descartar este trabajo…',
    discardTold:
      'Desaparece de este navegador, con sus fotografías. Guárdelo antes, si hace falta.',
    discard: (name: string) => `Descartar ${name}`,
    count: (entries: number) =>
      entries === 0
        ? 'nada anotado aún'
        : entries === 1
          ? 'una anotación'
          : `${entries} anotaciones`,
    stillOpen: (open: string) => `queda abierto: ${open}`,
    signed: (what: string, who: string) => `firmado por ${who}: ${what}`,
    notSaved: 'solo en este navegador',
    savedAs: (name: string, since: number) =>
      since === 0
        ? `guardado como ${name}`
        : `guardado como ${name}; desde entonces ${since} más aquí`,
    saved: (name: string) => `Guardado como ${name}.`,
    opened: (name: string, unread: number) =>
      unread === 0
        ? `${name} está abierto.`
        : `${name} está abierto. Líneas que no se pueden leer, y se conservan como están: ${unread}.`,
    united: (name: string, came: number) =>
      came === 0
        ? `${name} es una copia de este trabajo y no tiene nada que no esté aquí.`
        : `${name} es una copia de este trabajo. Líneas que entraron: ${came}.`,
    asCame: (names: string) =>
      `Este navegador no puede dibujar estas imágenes, y las conserva como vinieron, con lo que puso la cámara: ${names}.`,
    leftOut: (names: string) =>
      `Quedaron fuera, pues el archivo tiene más que un trabajo: ${names}.`,
    otherPicture: (name: string, kept: string) =>
      `${name} es otra imagen en esa copia: la suya se conserva como ${kept}.`,
    severalJobs: (name: string) =>
      `Ese archivo contiene varios trabajos: ${name}. Descomprímalo y abra el que quiera. Nada ha cambiado.`,
    noJob: (name: string, why: string) => `${name} no es un trabajo (${why}). Nada ha cambiado.`,
    failed: (why: string) => `No se pudo (${why}). El trabajo de aquí sigue como estaba.`,
    word: {
      'not text': 'Ese archivo no es un trabajo ni un zip con uno. Nada ha cambiado.',
      'too large': 'Ese archivo es mayor que cualquier trabajo. Nada ha cambiado.',
    },
    keepsAWhile:
      'Este trabajo está solo en este navegador, y un navegador puede olvidar una página que no se abre en siete días. Guarde el trabajo en disco, o instale esta página.',
    install: 'Instalar esta página',
    known: 'Lo sé',
    diskAsks: (name: string) => `Aún no se escribe en ${name}: el navegador pregunta antes.`,
    allow: 'Escribir en él',
    diskWritten: (name: string) => `${name}, en disco, lo tiene todo.`,
    diskAnother:
      'El archivo en disco contiene ahora otra cosa, y no se ha tocado. Guarde el trabajo con otro nombre.',
    diskFailed: (why: string) =>
      `No se pudo escribir el archivo en disco (${why}). Todo está en este navegador: guarde el trabajo otra vez.`,
    away: 'Cerrar',
  },
});
