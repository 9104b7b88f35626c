import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    title: 'What is wrong with the file',
    count: (many: number) =>
      many === 1 ? 'The file has a mistake.' : `The file has ${many} mistakes.`,
    before: 'What you see is the last text that was a train.',
    at: (line: number, column: number) => `Line ${line}, column ${column}:`,
    more: (many: number) => `And ${many} more.`,
  },
  es: {
    title: 'Qué está mal en el archivo',
    count: (many: number) =>
      many === 1 ? 'El archivo tiene un error.' : `El archivo tiene ${many} errores.`,
    before: 'Lo que ve es el último texto que fue un tren.',
    at: (line: number, column: number) => `Línea ${line}, columna ${column}:`,
    more: (many: number) => `Y ${many} más.`,
  },
});
