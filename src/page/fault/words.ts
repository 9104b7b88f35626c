import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    beside: 'Compare with a fault: none',
    another: 'and another fault: none',
    flip: 'Which build is seen',
    right: 'As it should be',
    wrong: 'With the fault',
  },
  es: {
    beside: 'Comparar con una avería: ninguna',
    another: 'y otra avería: ninguna',
    flip: 'Qué montaje se ve',
    right: 'Como debe ser',
    wrong: 'Con la avería',
  },
});
