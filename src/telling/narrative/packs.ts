import { fraction, type Rational } from '../../engine/linear/index.ts';
import type { PlateKind } from '../../engine/train/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import { digitsIn, type Length, type LengthUnit } from '../../shop/length/index.ts';
import type { BandRemark } from '../../shop/bands/index.ts';
import type { Bounds } from '../../shop/limits/index.ts';
import type { PreloadRemark } from '../../shop/preload/index.ts';
import type { ClearanceWay, PackRemark } from '../../shop/packs/index.ts';
import { torqueText } from './preload.ts';
import { keyOf, visible, type Voice } from '../voice/index.ts';

/** "0.42 mm (0.0165 in)", or the inches first. */
export function lengthText(length: Length, voice: Voice, first: LengthUnit = 'mm'): string {
  const said = (unit: LengthUnit) => {
    // A blank at which no line is broken.
    return `${voice.written(digitsIn(length, unit))}\u00A0${unit}`;
  };
  const second = first === 'mm' ? 'in' : 'mm';
  return voice.say('length', { first: said(first), second: said(second) });
}

/** A length that was drawn, as fine as the coarser of the tool and of what draws can tell. */
export function drawnLength(um: number, giveUm: number, { stepUm }: Length): Length {
  const give = fraction(Math.ceil(giveUm));
  const coarser = give.num > 0 && Number(stepUm.num) / Number(stepUm.den) < giveUm;
  return { um: fraction(Math.round(um)), stepUm: coarser ? give : stepUm };
}

/** A length of micrometres, told as finely as another. */
export function asFineAs(um: Rational | number, { stepUm }: Length): Length {
  return { um: typeof um === 'number' ? fraction(Math.round(um)) : um, stepUm };
}

/** "0.80 mm (…) to 1.20 mm (…), from the manual, p. 12 (HT)"; "unsourced" where it has none. */
export function boundsText(bounds: Bounds, voice: Voice, first: LengthUnit = 'mm'): string {
  const { least, most, source, by } = bounds;
  return voice.say('limit', {
    kind: least && most ? 'both' : least ? 'least' : 'most',
    least: least ? lengthText(least, voice, first) : '',
    most: most ? lengthText(most, voice, first) : '',
    sourced: source === undefined ? 'no' : 'yes',
    source: visible(source ?? ''),
    signed: by === undefined ? 'no' : 'yes',
    by: visible(by ?? ''),
  });
}

/**
 * That a limit is asked about before it is written down, and how it is told to be meant: in the file,
 * or to whoever has just `asked`.
 */
export function limitDoubtedText(
  { of, by, job, file }: Extract<Problem, { readonly problem: 'limit doubted' }>,
  voice: Voice,
  way: 'file' | 'asked' = 'file',
): string {
  const [itsJob, itsFile] = [job, file].map(({ least, most }) =>
    voice.say('limit.ends', {
      kind: least && most ? 'both' : least ? 'least' : 'most',
      least: visible(least ?? ''),
      most: visible(most ?? ''),
    }),
  );
  const values = { way, of: voice.called(of), by, job: itsJob ?? '', file: itsFile ?? '' };
  return voice.say('problem.limit doubted', values);
}

/** "feeler gauge". */
export function clearanceWayText(way: ClearanceWay, voice: Voice): string {
  return voice.say('clearance way', { way: keyOf(way) });
}

/** Whatever must be told before the numbers of a reading are believed. */
export type Remark = PackRemark | BandRemark | PreloadRemark;

/**
 * What a builder must be told before the numbers are believed, and what to do about it: to whoever
 * writes a `file`, or to whoever is `asked`.
 */
export function remarkText(
  remark: Remark,
  voice: Voice,
  first: LengthUnit = 'mm',
  way: 'file' | 'asked' = 'file',
): string {
  switch (remark.remark) {
    case 'no gap':
      return voice.say('remark.no gap', { way: clearanceWayText(remark.way, voice) });
    case 'plate missing':
    case 'plate doubled': {
      const kinds = remark.kinds.map((kind) => plateText(kind, voice));
      const last = kinds.at(-1) ?? '';
      const either =
        kinds.length < 2
          ? last
          : voice.say('list.either', { a: kinds.slice(0, -1).join(', '), b: last });
      return voice.say(`remark.${remark.remark}`, { kinds: either });
    }
    case 'other unit':
      return voice.say('remark.other unit', {
        of: remark.place === undefined ? 'all' : 'place',
        place: remark.place ?? 0,
        meant: remark.meant,
      });
    case 'other unit of a plate':
      return voice.say('remark.other unit', {
        of: remark.what,
        place: remark.place,
        meant: remark.meant,
      });
    case 'other torque unit':
      return voice.say('remark.other torque unit', { meant: keyOf(remark.meant) });
    case 'point slipped':
      return voice.say('remark.point slipped', {
        read: lengthText(remark.read, voice, first),
        meant: lengthText(remark.meant, voice, first),
      });
    case 'digits swapped':
      return voice.say('remark.digits swapped', {
        place: remark.place,
        read: lengthText(remark.read, voice, first),
        meant: lengthText(remark.meant, voice, first),
      });
    case 'torque slipped':
      return voice.say('remark.point slipped', {
        read: torqueText(remark.read, voice),
        meant: torqueText(remark.meant, voice),
      });
    case 'sizes apart':
      return voice.say('remark.sizes apart', {
        bore: lengthText(remark.bore, voice, first),
        shaft: lengthText(remark.shaft, voice, first),
      });
    case 'uneven torque':
      return voice.say('remark.uneven torque', {
        least: torqueText(remark.least, voice),
        most: torqueText(remark.most, voice),
      });
    case 'uneven':
      return voice.say('remark.uneven', {
        where: remark.where,
        spread: lengthText(remark.spread, voice, first),
        width: lengthText(remark.width, voice, first),
        beyond: remark.beyond ? 'yes' : 'no',
      });
    case 'limit doubted':
      return voice.say('remark.limit doubted', { way, by: remark.by });
    case 'few places':
      return voice.say('remark.few places', { places: remark.places });
    case 'other pressure':
      return voice.say('remark.other pressure', {
        given: visible(remark.given),
        read: visible(remark.read),
      });
    case 'ways differ': {
      const [a, b] = remark.ways.map((its) => clearanceWayText(its, voice)) as [string, string];
      return voice.say('remark.ways differ', { a, b });
    }
    case 'not on the shelf':
      return voice.say('remark.not on the shelf', { size: lengthText(remark.size, voice, first) });
    case 'place outside':
      return voice.say('remark.place outside', { place: remark.place });
    case 'coned on purpose':
      return voice.say('remark.coned on purpose', { by: lengthText(remark.by, voice, first) });
    case 'not possible': {
      const { place, read, limit } = remark;
      const told = (length: Length) => lengthText(length, voice, first);
      return voice.say('remark.not possible', { place, read: told(read), limit: told(limit) });
    }
    case 'not as predicted':
      return voice.say('remark.not as predicted', {
        like: remark.like ? lengthText(remark.like, voice, first) : 'none',
      });
    case 'worn':
      return voice.say('remark.worn', { what: remark.what });
    case 'plates spent':
    case 'squash unknown':
    case 'no limit':
    case 'one limit':
    case 'limits turned round':
    case 'gauge turned round':
    case 'coned or warped':
    case 'shelf too short':
    case 'nothing read':
    case 'gap hidden':
    case 'wrench and pull differ':
    case 'no pitch':
    case 'no slack':
    case 'turns and travel differ':
      return voice.say(`remark.${remark.remark}`);
  }
}

function plateText(kind: PlateKind, voice: Voice): string {
  return voice.say('plate', { kind });
}
