import { spoken } from '../words.ts';

export const words = spoken({
  en: { ours: 'A train of ours', undo: 'Undo', redo: 'Redo' },
  es: { ours: 'Un tren nuestro', undo: 'Deshacer', redo: 'Rehacer' },
});
