import type { PartKind } from '../train/index.ts';

/**
 * What a part is, by the words of its name: in English the last that says it ("pump gasket" is a
 * gasket), in Spanish the first ("junta de la bomba"). Undefined where no word does.
 */
export function partKindSaid(name: string): PartKind | undefined {
  let rest = name.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, ' ');
  const found: { readonly kind: PartKind; readonly at: number; readonly english: boolean }[] = [];
  for (const { phrase, kind, english } of PHRASES) {
    rest = rest.replace(phrase, (said, at: number) => {
      found.push({ kind, at, english });
      return '\0'.repeat(said.length);
    });
  }
  const inOrder = found.toSorted((a, b) => a.at - b.at);
  return (inOrder.findLast(({ english }) => english) ?? inOrder[0])?.kind;
}

// English words, then Spanish ones. From the trade's use; no source.
const WORDS: Readonly<Record<PartKind, readonly [english: string, spanish: string]>> = {
  shaft: ['shaft|tube|stub|spindle', 'eje|árbol|tubo'],
  drum: ['drum|basket', 'tambor|canasta'],
  shell: ['shell|bell', 'campana'],
  hub: ['hub|flange|yoke', 'cubo|brida|maza'],
  sun: ['sun gear|sun|suns', 'planetario|piñón central|solar'],
  ring: ['ring gear|ring|annulus', 'corona'],
  carrier: ['carrier|spider|differential case|differential', 'portasatélites|diferencial'],
  gear: ['gear|pinion|sprocket|wheel', 'rueda|engranaje|piñón'],
  pack: ['pack|plates|discs|frictions|steels', 'paquete|discos'],
  band: ['strap|band', 'banda|cinta'],
  'one-way clutch': [
    'one way clutch|sprag cage|roller cage|sprag|roller|rollers|freewheel',
    'rueda libre|jaula de rodillos',
  ],
  race: ['race|races|cam', 'pista|leva'],
  washer: ['thrust washer|washer|shim|spacer', 'arandela|calce|separador'],
  bearing: ['thrust bearing|needle bearing|needle cage|bearing', 'rodamiento|cojinete'],
  'snap ring': ['snap ring|retaining ring|circlip', 'anillo elástico|seeger'],
  gasket: ['gasket', 'junta'],
  seal: ['seal ring|oil ring|seal', 'retén|anillo de sellado'],
  piston: ['piston', 'pistón|émbolo'],
  spring: ['return spring|springs|spring', 'muelle|muelles|resorte'],
  servo: ['servo piston|servo|accumulator', 'servo|acumulador'],
  pawl: ['park pawl|parking pawl|pawl', 'trinquete'],
  pump: ['oil pump|pump', 'bomba'],
  support: ['support|wall|centre support|center support', 'soporte|pared'],
  cover: ['cover|pan|housing|bell housing', 'tapa|cárter|carcasa'],
  'valve body': ['valve body|control plate', 'cuerpo de válvulas'],
};

interface Phrase {
  readonly phrase: RegExp;
  readonly kind: PartKind;
  readonly english: boolean;
  readonly length: number;
}

// The longest first, so that a snap ring is no ring.
const PHRASES: readonly Phrase[] = Object.entries(WORDS)
  .flatMap(([kind, languages]) => {
    return languages.flatMap((words, k) => {
      return words.split('|').map((word): Phrase => {
        const phrase = new RegExp(`(?<![\\p{L}\\p{N}])${word}(?![\\p{L}\\p{N}])`, 'gu');
        return { phrase, kind: kind as PartKind, english: k === 0, length: word.length };
      });
    });
  })
  .toSorted((a, b) => b.length - a.length);
