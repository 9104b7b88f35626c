export { useRoving } from './roving.ts';
export { DecimalPad } from './decimalpad.tsx';
export { LargeButton } from './largebutton.tsx';
export { firstPictureIsUp, later } from './later.tsx';
export { Menu } from './menu.tsx';
export { NameEntry } from './nameentry.tsx';
export { NumberPad } from './numberpad.tsx';
export { Tiles } from './tiles.tsx';
