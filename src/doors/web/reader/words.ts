import { spoken } from '../words.ts';

export const words = spoken({
  en: {
    view: 'View',
    language: 'Language',
    languages: { en: 'English', es: 'Español' },
    seenFrom: 'Where you look from',
    fromInput: 'seen from the input end',
    fromOutput: 'seen from the output end',
    theme: 'Light or dark',
    themes: { 'as the machine': 'as the machine', light: 'light', dark: 'dark' },
    print: 'Print',
  },
  es: {
    view: 'Vista',
    language: 'Idioma',
    languages: { en: 'English', es: 'Español' },
    seenFrom: 'Desde dónde mira',
    fromInput: 'visto desde el lado de entrada',
    fromOutput: 'visto desde el lado de salida',
    theme: 'Claro u oscuro',
    themes: { 'as the machine': 'como la máquina', light: 'claro', dark: 'oscuro' },
    print: 'Imprimir',
  },
});
