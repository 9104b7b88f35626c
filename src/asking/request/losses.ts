import { type MeshEfficiency, USUAL_EFFICIENCY } from '../../engine/flow/index.ts';
import { compare, fromText, ONE, type Rational, signOf } from '../../engine/linear/index.ts';
import { NoAnswer } from './refused.ts';

/** The efficiencies of "external=0.985,internal=0.99", the usual ones where nothing is said. */
export function lossesOf(text?: string): MeshEfficiency {
  if (text === undefined) return USUAL_EFFICIENCY;
  const losses: { external: Rational; internal: Rational } = { ...USUAL_EFFICIENCY };
  for (const part of text.split(',')) {
    const [, kind = '', value = ''] = /^\s*(external|internal)\s*=(.*)$/i.exec(part) ?? [];
    const efficiency = fromText(value);
    if (!efficiency || signOf(efficiency) <= 0 || compare(efficiency, ONE) > 0) {
      throw new NoAnswer({ refused: 'bad.efficiency', given: text });
    }
    losses[kind.toLowerCase() as 'external' | 'internal'] = efficiency;
  }
  return losses;
}
