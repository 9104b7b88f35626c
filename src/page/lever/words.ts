import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    title: 'The lever diagram',
    of: (train: string) => `Lever diagram of ${train}`,
    caption: 'Heights are speeds, per turn of what is turned; dots are free. Pull a node.',
    pulled: (member: string, speed: string) => `The ${member} is pulled to ${speed}.`,
    stops: (member: string, by: string) => `The ${member} goes no further: ${by}.`,
  },
  es: {
    title: 'El diagrama de palancas',
    of: (train: string) => `Diagrama de palancas de ${train}`,
    caption: 'Alturas: velocidades por vuelta de lo que gira; a puntos: libre. Tire de un nodo.',
    pulled: (member: string, speed: string) => `${member}: tirado hasta ${speed}.`,
    stops: (member: string, by: string) => `${member} no va más allá: ${by}.`,
  },
});
