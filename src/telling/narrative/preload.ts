import { over, type Rational } from '../../engine/linear/index.ts';
import { quantityFrom } from '../../engine/quantity/index.ts';
import { digitsOf } from '../../shop/length/index.ts';
import type { Torque, TorqueBounds } from '../../shop/preload/index.ts';
import { visible, type Voice } from '../voice/index.ts';

/** "1.20 N·m (10.6 lb·in)", as finely as it was told. */
export function torqueText({ nm, stepNm }: Torque, voice: Voice): string {
  const inches = (its: Rational) => over(its, POUND_INCH_NM);
  const said = (value: Rational, step: Rational, unit: string) => {
    // A blank at which no line is broken.
    return `${voice.written(digitsOf(value, step))}\u00A0${unit}`;
  };
  return voice.say('length', {
    first: said(nm, stepNm, 'N·m'),
    second: said(inches(nm), inches(stepNm), 'lb·in'),
  });
}

const POUND_INCH_NM = quantityFrom('1 lbf in', 'torque')?.size as Rational;

/** "0.56 N·m (…) to 5.08 N·m (…); source: manual p. 12, HT". */
export function torqueBoundsText({ least, most, source, by }: TorqueBounds, voice: Voice): string {
  return voice.say('limit', {
    kind: least && most ? 'both' : least ? 'least' : 'most',
    least: least ? torqueText(least, voice) : '',
    most: most ? torqueText(most, voice) : '',
    sourced: source === undefined ? 'no' : 'yes',
    source: visible(source ?? ''),
    signed: by === undefined ? 'no' : 'yes',
    by: visible(by ?? ''),
  });
}
