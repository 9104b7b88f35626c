import { spoken } from '../words.ts';

export const words = spoken({
  en: { beside: 'A wrong build beside: none', another: 'and another fault: none' },
  es: { beside: 'Un montaje mal hecho al lado: ninguno', another: 'y otra avería: ninguna' },
});
