import { spoken } from '../words/index.ts';

export const words = spoken({
  en: { warnings: 'Warnings', look: 'Look again:' },
  es: { warnings: 'Avisos', look: 'Revíselo:' },
});
