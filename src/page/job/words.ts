import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    job: 'Job',
    of: (unit: string) => `Job: ${unit}`,
    none: 'No job is open: what you find here is not kept.',
    begin: 'Begin a job',
    beginHere: 'Begin a job…',
    unit: 'The unit, and how it is marked',
    complaint: 'What the driver says, if anything',
    takeTrain: 'Bring its train',
    putAway: 'Put the job away: nothing is lost',
    initials: 'Your initials',
    otherTrain: (file: string) =>
      `This job is of ${file}; another train is on the page. Nothing is judged or written here until the job’s own is.`,
    anotherText: (file: string) =>
      `This job is of ${file}. The train on the page is called so too, and is another text than the job was begun with: another unit’s, or edited since. Nothing is judged or written here until it is the job’s.`,
    isIts: 'It is this unit’s, edited since: go on with it',
    trainGone: (file: string) =>
      `${file} is not in this browser: open it from its file, under “File”.`,
    keepsNothing:
      'This browser keeps nothing for this page: what you write is on the screen alone. Save the job to disk before you close it.',
    nearlyFull: 'The browser has little room left: save the job to disk, and discard old ones.',
    unkept: {
      'other train':
        'Not written down: another train than the job’s is on the page. Bring its own first.',
      'no job': 'Not written down: no job is open. Begin one, and do it again.',
      'no initials': 'Not written down: type your initials first, 1 to 8 letters.',
      forbidden:
        'This browser keeps nothing for this page. What you wrote is on the screen alone: save the job to disk now.',
      full: 'The browser has no room left. What you wrote last is on the screen alone: save the job to disk now, then make room.',
      gone: 'The job was discarded in another tab. Open it again from its file.',
    },
    noPicture: (name: string) =>
      `Not written down: ${name || 'that'} is no picture that this browser can read. Take it as JPEG, PNG or WebP.`,
    failed: (why: string) =>
      `The browser did not keep it (${why}). It is on the screen alone: save the job to disk now.`,
  },
  es: {
    job: 'Trabajo',
    of: (unit: string) => `Trabajo: ${unit}`,
    none: 'No hay ningún trabajo abierto: lo que encuentre aquí no se conserva.',
    begin: 'Empezar un trabajo',
    beginHere: 'Empezar un trabajo…',
    unit: 'La unidad, y cómo está marcada',
    complaint: 'Lo que dice el conductor, si dice algo',
    takeTrain: 'Traer su tren',
    putAway: 'Guardar aparte el trabajo: nada se pierde',
    initials: 'Sus iniciales',
    otherTrain: (file: string) =>
      `Este trabajo es de ${file}; en la página hay otro tren. Aquí no se juzga ni se anota nada hasta que esté el suyo.`,
    anotherText: (file: string) =>
      `Este trabajo es de ${file}. El tren de la página se llama igual y es otro texto que el del comienzo del trabajo: de otra unidad, o cambiado desde entonces. Aquí no se juzga ni se anota nada hasta que sea el del trabajo.`,
    isIts: 'Es el de esta unidad, cambiado desde entonces: seguir con él',
    trainGone: (file: string) =>
      `${file} no está en este navegador: ábralo desde su archivo, en «Archivo».`,
    keepsNothing:
      'Este navegador no conserva nada de esta página: lo que escribe está solo en pantalla. Guarde el trabajo en disco antes de cerrar.',
    nearlyFull:
      'Al navegador le queda poco sitio: guarde el trabajo en disco y descarte los viejos.',
    unkept: {
      'other train':
        'No se anotó: en la página hay otro tren que el del trabajo. Traiga antes el suyo.',
      'no job': 'No se anotó: no hay ningún trabajo abierto. Empiece uno y repítalo.',
      'no initials': 'No se anotó: escriba antes sus iniciales, de 1 a 8 letras.',
      forbidden:
        'Este navegador no conserva nada de esta página. Lo que escribió está solo en pantalla: guarde el trabajo en disco ahora.',
      full: 'Al navegador no le queda sitio. Lo último que escribió está solo en pantalla: guarde el trabajo en disco ahora y haga sitio.',
      gone: 'El trabajo se descartó en otra pestaña. Ábralo otra vez desde su archivo.',
    },
    noPicture: (name: string) =>
      `No se anotó: ${name || 'eso'} no es una imagen que este navegador pueda leer. Hágala en JPEG, PNG o WebP.`,
    failed: (why: string) =>
      `El navegador no lo conservó (${why}). Está solo en pantalla: guarde el trabajo en disco ahora.`,
  },
});
