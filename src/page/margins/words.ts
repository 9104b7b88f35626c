import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    title: 'What slips first',
    caution:
      'From the sizes in the file; your unit’s own data wins. A stall test is short, with the wheels chocked and nobody before or behind, as the unit’s maker allows.',
    pressure: 'Pressure',
    kpa: (kpa: number) => `${kpa} kPa = ${(kpa / 6.894757).toFixed(0)} psi`,
    gear: 'gear',
    side: 'the load',
    drive: 'under power',
    coast: 'on coast',
    inReverse: 'on coast in reverse',
    asked: 'asked at the input, N·m',
    most: 'can pass, N·m',
    first: 'slips first',
    least: 'least pressure that holds, kPa',
    slips: 'slips',
    unlimited: 'not known',
    never: 'none holds',
  },
  es: {
    title: 'Qué patina primero',
    caution:
      'Según las medidas del archivo; mandan los datos de su unidad. La prueba de calado es corta, con calzos y sin nadie delante ni detrás, como permita el fabricante.',
    pressure: 'Presión',
    kpa: (kpa: number) => `${kpa} kPa = ${(kpa / 6.894757).toFixed(0)} psi`,
    gear: 'marcha',
    side: 'la carga',
    drive: 'en tracción',
    coast: 'en retención',
    inReverse: 'en retención marcha atrás',
    asked: 'pedido a la entrada, N·m',
    most: 'puede pasar, N·m',
    first: 'patina primero',
    least: 'presión mínima que aguanta, kPa',
    slips: 'patina',
    unlimited: 'no se sabe',
    never: 'ninguna aguanta',
  },
});
