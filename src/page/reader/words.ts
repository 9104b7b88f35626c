import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    view: 'View',
    language: 'Language',
    languages: { en: 'English', es: 'Español' },
    seenFrom: 'Where you look from',
    theme: 'Light or dark',
    themes: { 'as the machine': 'as the machine', light: 'light', dark: 'dark' },
    print: 'Print',
  },
  es: {
    view: 'Vista',
    language: 'Idioma',
    languages: { en: 'English', es: 'Español' },
    seenFrom: 'Desde dónde mira',
    theme: 'Claro u oscuro',
    themes: { 'as the machine': 'como la máquina', light: 'claro', dark: 'oscuro' },
    print: 'Imprimir',
  },
});
