import { spoken } from '../words.ts';

export const words = spoken({
  en: { why: 'Why' },
  es: { why: 'Por qué' },
});
