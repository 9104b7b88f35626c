import { fromText, type Rational, signOf, times } from '../../engine/linear/index.ts';

/** "900", "900 kPa", "9 bar" or "130 psi" in kilopascals, exactly; undefined for anything else. */
export function pressureKpaOf(text: string): Rational | undefined {
  return measured(text, PRESSURES);
}

/** "220", "220 Nm" or "162 lbft" in newton metres, exactly; undefined for anything else. */
export function torqueNmOf(text: string): Rational | undefined {
  return measured(text, TORQUES);
}

function measured(text: string, units: ReadonlyMap<string, string>): Rational | undefined {
  const [, number = '', unit = ''] = /^\s*([\d.]+)\s*([a-z·.\- ]*)$/iu.exec(text) ?? [];
  const size = units.get(unit.toLowerCase().replaceAll(/[·.\- ]/gu, ''));
  const value = fromText(number);
  if (size === undefined || !value || signOf(value) < 0) return undefined;
  return times(value, fromText(size) as Rational);
}

// One pound-force is 4.448 221 615 260 5 N and one inch 0.0254 m, by definition.
const PRESSURES = new Map([
  ['', '1'],
  ['kpa', '1'],
  ['bar', '100'],
  ['psi', '44482216152605/6451600000000'],
]);
const TORQUES = new Map([
  ['', '1'],
  ['nm', '1'],
  ['lbft', '1.3558179483314004'],
  ['lbin', '0.1129848290276167'],
]);
