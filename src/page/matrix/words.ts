import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    title: 'Every fault, gear by gear',
    working: 'Working it out …',
    fell: 'It could not be worked out:',
    fault: 'Fault',
    healthy: 'healthy',
    drive: 'under power',
    coast: 'on coast',
    more: (count: number) => `and ${count} more that no road test tells apart`,
    parts: 'Splines, teeth, planets and parts',
    silent: (count: number) => `${count} that change nothing in any gear`,
    cell: (fault: string, gear: string, drive: string, coast: string) =>
      `${fault}, ${gear}: under power ${drive}, on coast ${coast}. Show the train`,
    same: 'as it should',
    shown: (fault: string, gear: string) => `${fault}, in ${gear}`,
    close: 'Close',
    how: 'Touch a cell: the train shows it, right and wrong, in that gear.',
    none: 'The file names no gears.',
  },
  es: {
    title: 'Cada avería, marcha por marcha',
    working: 'Calculando …',
    fell: 'No se pudo calcular:',
    fault: 'Avería',
    healthy: 'sano',
    drive: 'en tracción',
    coast: 'en retención',
    more: (count: number) => `y ${count} más que ninguna prueba en carretera separa`,
    parts: 'Estrías, dientes, planetas y piezas',
    silent: (count: number) => `${count} que no cambian nada en ninguna marcha`,
    cell: (fault: string, gear: string, drive: string, coast: string) =>
      `${fault}, ${gear}: en tracción ${drive}, en retención ${coast}. Mostrar el tren`,
    same: 'como debe',
    shown: (fault: string, gear: string) => `${fault}, en ${gear}`,
    close: 'Cerrar',
    how: 'Toque una celda: el tren lo muestra, bien y mal, en esa marcha.',
    none: 'El archivo no nombra marchas.',
  },
});
