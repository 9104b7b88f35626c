import { spoken } from '../words/index.ts';

export const words = spoken({
  en: { beside: 'Compare with a fault: none', another: 'and another fault: none' },
  es: { beside: 'Comparar con una avería: ninguna', another: 'y otra avería: ninguna' },
});
