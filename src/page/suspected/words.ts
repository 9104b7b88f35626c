import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    takeOver: (count: number) =>
      count === 1
        ? 'Take one answer from before into the job'
        : `Take ${count} answers from before into the job`,
    working: 'Working it out …',
    back: 'Back',
    more: (count: number) => ` and ${count} more`,
    meanwhile: 'What can be done meanwhile',
    why: 'For and against',
    seen: 'Told so far',
    nothingTold: 'Nothing yet.',
    strike: 'Strike',
    strikeIt: (said: string) => `Strike: ${said}`,
    mistaken: 'mistaken',
    restore: 'Restore',
    restoreIt: (said: string) => `Restore: ${said}`,
    meant: 'it was right',
    clear: 'Begin anew',
    sureClear: 'All that was told of this train here is thrown away.',
    suspects: 'Suspects, the likeliest first',
    nothingToldYet: 'nothing told yet',
    anyOf: (count: number) =>
      `Any of ${count} causes. Tell what was seen, and they are ranked here.`,
    leadingGroup: (count: number, chance: string) =>
      `${chance} % ${count} together, not told apart`,
    again: (test: string) => `Look again: ${test}`,
    apart: 'nothing seen so far surely tells these apart',
    otherSuspects: (count: number, chance: string) => `${count} others, together ${chance} %`,
    open: 'Show',
    close: 'Close',
    doubts: 'Not everything fits together',
    growlers: 'What is at work where it growls',
    explains: 'What it would show of all that was seen',
    explainsAll: 'It explains everything that was seen.',
    explainsNot: (count: number) =>
      count === 1
        ? 'One thing that was seen it does not explain.'
        : `${count} things that were seen it does not explain.`,
    columns: { seen: 'Seen', shows: 'It would show', by: 'How that is known' },
    by: {
      train: 'worked out of the train, and proved',
      experience: 'shop’s experience, common practice',
    },
    agrees: { yes: 'explained', no: 'not explained' },
    noGear: 'No gear shows it: it is seen by other tests.',
    beside: 'not in the train: nothing to show on it',
    rightWrong: 'Right and wrong, in the gear where it shows first',
    onRoad: 'Gear by gear',
    foundSoFar: 'Found so far:',
    foundOf: 'Something was found as it came apart: of what?',
    foundWhat: (thing: string) => `${thing}: what was found?`,
    wholeUnit: 'the whole unit',
    for: 'For:',
    against: 'Against:',
  },
  es: {
    takeOver: (count: number) =>
      count === 1
        ? 'Pasar al trabajo una respuesta de antes'
        : `Pasar al trabajo ${count} respuestas de antes`,
    working: 'Calculando …',
    back: 'Atrás',
    more: (count: number) => ` y ${count} más`,
    meanwhile: 'Qué se puede hacer mientras tanto',
    why: 'A favor y en contra',
    seen: 'Dicho hasta ahora',
    nothingTold: 'Nada todavía.',
    strike: 'Tachar',
    strikeIt: (said: string) => `Tachar: ${said}`,
    mistaken: 'equivocado',
    restore: 'Recuperar',
    restoreIt: (said: string) => `Recuperar: ${said}`,
    meant: 'estaba bien',
    clear: 'Empezar de nuevo',
    sureClear: 'Se tira todo lo que se dijo aquí de este tren.',
    suspects: 'Sospechosos, el más probable primero',
    nothingToldYet: 'aún no se dijo nada',
    anyOf: (count: number) => `Cualquiera de ${count} causas. Diga qué se vio, y aquí se ordenan.`,
    leadingGroup: (count: number, chance: string) => `${chance} % ${count} juntos, sin separar`,
    again: (test: string) => `Mirar otra vez: ${test}`,
    apart: 'nada de lo visto los separa con seguridad',
    otherSuspects: (count: number, chance: string) => `${count} más, juntos ${chance} %`,
    open: 'Mostrar',
    close: 'Cerrar',
    doubts: 'No todo encaja',
    growlers: 'Qué trabaja donde hay ruido',
    explains: 'Qué mostraría de todo lo visto',
    explainsAll: 'Explica todo lo que se vio.',
    explainsNot: (count: number) =>
      count === 1
        ? 'Una cosa que se vio no la explica.'
        : `${count} cosas que se vieron no las explica.`,
    columns: { seen: 'Visto', shows: 'Mostraría', by: 'Cómo se sabe' },
    by: {
      train: 'calculado del tren, y demostrado',
      experience: 'experiencia del taller, práctica común',
    },
    agrees: { yes: 'explicado', no: 'no explicado' },
    noGear: 'Ninguna marcha lo muestra: se ve con otras pruebas.',
    beside: 'no está en el tren: no hay nada que mostrar en él',
    rightWrong: 'Bien y mal, en la marcha donde se nota primero',
    onRoad: 'Marcha por marcha',
    foundSoFar: 'Encontrado hasta ahora:',
    foundOf: 'Se encontró algo al desarmarla: ¿en qué?',
    foundWhat: (thing: string) => `${thing}: ¿qué se encontró?`,
    wholeUnit: 'toda la unidad',
    for: 'A favor:',
    against: 'En contra:',
  },
});
