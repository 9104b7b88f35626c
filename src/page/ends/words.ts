import { spoken } from '../words/index.ts';

export const words = spoken({
  en: {
    title: 'From the end',
    of: (set: string, seen: string) => `The ${set}, ${seen}`,
    notCounted: (members: string) =>
      `The teeth of the ${members} are not counted: drawn with as many as fit.`,
    planetsNotCounted: (drawn: number) => `The planets are not counted: ${drawn} are drawn.`,
    leftOut: (counted: number, drawn: number) =>
      `Of ${counted} planets, ${drawn} can be put in with their teeth in mesh.`,
    notEven: (degrees: string) =>
      `The planets stand where their teeth mesh, up to ${degrees}° off even.`,
    tooFine: 'Too many teeth to draw: the wheels are discs.',
    noFit: 'These numbers of teeth do not go together: one wheel is drawn with two modules.',
  },
  es: {
    title: 'Vistas desde un lado',
    of: (set: string, seen: string) => `${set}, ${seen}`,
    notCounted: (members: string) =>
      `Los dientes de ${members} no están contados: se dibujan los que caben.`,
    planetsNotCounted: (drawn: number) => `No están contados los satélites: se dibujan ${drawn}.`,
    leftOut: (counted: number, drawn: number) =>
      `De ${counted} satélites, ${drawn} entran con los dientes engranados.`,
    notEven: (degrees: string) =>
      `Los satélites están donde engranan, hasta ${degrees}° fuera de lo parejo.`,
    tooFine: 'Demasiados dientes para dibujarlos: las ruedas son discos.',
    noFit: 'Estos números de dientes no van juntos: una rueda se dibuja con dos módulos.',
  },
});
