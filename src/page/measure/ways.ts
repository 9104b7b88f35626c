import type { MeasuredThing } from '../../asking/build/index.ts';
import type { FileLimit } from '../../engine/train/index.ts';
import { quantityFrom } from '../../engine/quantity/index.ts';

/** One number, or a row of them, that a way to measure asks for. */
export interface Field {
  /** Its key in the text of a reading; '' where the way itself is the key. */
  readonly field: string;
  readonly of: 'length' | 'torque' | 'force' | 'pressure' | 'turns';
  /** Several readings, or just one. */
  readonly many: boolean;
  readonly optional?: true;
}

/** A way to get at what is measured: by feeler, on air, again with the chosen part in. */
export interface ReadingWay {
  readonly way: string;
  readonly fields: readonly Field[];
}

/** A number as it was typed, with its unit; struck ones stay until what stands is written down. */
export interface Typed {
  readonly field: string;
  readonly text: string;
  readonly struck?: true;
}

/** The ways of a thing, the usual one first; `again` is one where a part of a shelf was exchanged. */
export function waysOf({ kind, judgement }: MeasuredThing): readonly ReadingWay[] {
  switch (kind) {
    case 'pack':
      return judgement.pack.shelf ? [...PACK, AGAIN] : PACK;
    case 'endplay':
      return judgement.endPlay.shelf ? [row('play'), AGAIN] : [row('play')];
    case 'preload':
      return [row('turning', 'torque'), PULL, row('gap')];
    case 'band':
      return judgement.band.pitch === undefined ? [row('travel')] : [TURNS, row('travel')];
    case 'wear':
      return judgement.check.measure === 'bushing' ? [BORE, row('read')] : [row('read')];
  }
}

function row(way: string, of: Field['of'] = 'length'): ReadingWay {
  return { way, fields: [{ field: '', of, many: true }] };
}

const one = (field: string, of: Field['of'] = 'length'): Field => ({ field, of, many: false });
const several = (field: string, of: Field['of'] = 'length'): Field => ({ field, of, many: true });

const AGAIN: ReadingWay = { way: 'again', fields: [one('fitted'), several('read')] };
const PULL: ReadingWay = { way: 'pull', fields: [one('radius'), several('force', 'force')] };
const TURNS: ReadingWay = { way: 'turns', fields: [one('', 'turns')] };
const BORE: ReadingWay = { way: 'bore', fields: [several('bore'), several('shaft')] };
const PACK: readonly ReadingWay[] = [
  row('feeler'),
  row('lifted'),
  { way: 'on air', fields: [one('pressure', 'pressure'), several('strokes')] },
  {
    way: 'depth gauge',
    fields: [one('depth'), { ...one('edge'), optional: true }, one('stack')],
  },
  {
    way: 'step gauge',
    fields: [
      { ...one('fits'), optional: true },
      { ...one('does not fit'), optional: true },
    ],
  },
  row('friction'),
  row('steel'),
  row('cone'),
];

/** The two ends of a limit, of what it is a limit. */
export function limitWay(which: string): ReadingWay {
  const of = which === 'turning' || which === 'used' ? 'torque' : 'length';
  const end = (field: string): Field => ({ field, of, many: false, optional: true });
  return { way: which, fields: [end('least'), end('most')] };
}

/** The sizes of a row of parts. */
export const SHELF: ReadingWay = { way: 'shelf', fields: [several('sizes')] };

/** Of what a thing may have limits: those that the file tells come first. */
export function limitKindsOf(thing: MeasuredThing): readonly string[] {
  const told = (kind: string) => (limitIn(thing, kind) ? 0 : 1);
  return LIMIT_KINDS[thing.kind].toSorted((a, b) => told(a) - told(b));
}

const LIMIT_KINDS: Readonly<Record<MeasuredThing['kind'], readonly string[]>> = {
  pack: ['clearance', 'each friction', 'friction', 'steel', 'cone'],
  endplay: ['limit'],
  preload: ['turning', 'used', 'squeeze'],
  band: ['clearance', 'travel'],
  wear: ['limit'],
};

/** What the file says of one of them. */
export function limitIn(thing: MeasuredThing, kind: string): FileLimit | undefined {
  return limitsOf(thing)[kind];
}

/** What stands of what was typed for a field. */
export function standingIn(typed: readonly Typed[], { field }: Field): readonly Typed[] {
  return typed.filter((its) => its.field === field && !its.struck);
}

/** Whether enough was typed to be written down. */
export function isWhole({ fields }: ReadingWay, typed: readonly Typed[]): boolean {
  const has = (field: Field) => standingIn(typed, field).length > 0;
  return fields.every((its) => its.optional || has(its)) && fields.some(has);
}

/** The field that the next number is for: the first without one, else the row, else the last. */
export function nextField({ fields }: ReadingWay, typed: readonly Typed[]): Field {
  const empty = fields.find((its) => standingIn(typed, its).length === 0);
  return empty ?? fields.find(({ many }) => many) ?? (fields.at(-1) as Field);
}

/**
 * What was typed in the words in which the command is told it: `feeler: [1.42 mm, 1.44 mm]`,
 * or `0.82 mm, 0.84 mm` of a play. `used`: the bearings run again.
 */
export function saidOf({ way, fields }: ReadingWay, typed: readonly Typed[], used = false): string {
  const told = fields.flatMap((field) => {
    const texts = standingIn(typed, field).map(({ text }) => text);
    if (texts.length === 0) return [];
    return [[field.field, field.many ? `[${texts.join(', ')}]` : (texts[0] ?? '')] as const];
  });
  const [first] = told;
  if (way === 'play') return first?.[1].slice(1, -1) ?? '';
  const entries = told.map(([key, its]) => `${key}: ${its}`).join(', ');
  const says =
    way === 'bore' ? entries : `${way}: ${first?.[0] === '' ? first[1] : `{ ${entries} }`}`;
  return used ? `${says}, bearings: used` : says;
}

/** The units in which a field may be told; '' where it has none. */
export function unitsOf({ of }: Field): readonly string[] {
  return UNITS[of];
}

const UNITS: Readonly<Record<Field['of'], readonly string[]>> = {
  length: ['mm', 'in', 'thou'],
  torque: ['Nm', 'lbf in', 'lbf ft', 'kgf cm'],
  force: ['N', 'lbf', 'kgf'],
  pressure: ['kPa', 'bar', 'psi'],
  turns: [''],
};

/** The unit in which the file writes what a field is judged by; undefined where it says nothing. */
export function unitOfFile(thing: MeasuredThing, { of }: Field): string | undefined {
  if (of !== 'length' && of !== 'torque') return undefined;
  const texts = Object.values(limitsOf(thing)).flatMap((its) => (its ? [its.least, its.most] : []));
  const first = [...texts, shelfOf(thing)?.fitted].find((text) => {
    return text !== undefined && quantityFrom(text, of) !== undefined;
  });
  return first === undefined ? undefined : quantityFrom(first, of)?.unit;
}

function limitsOf({
  kind,
  judgement,
}: MeasuredThing): Readonly<Record<string, FileLimit | undefined>> {
  switch (kind) {
    case 'pack':
      return { ...judgement.pack.limits };
    case 'endplay':
      return { limit: judgement.endPlay.limit };
    case 'preload': {
      const { turning, used, squeeze } = judgement.preload;
      return { turning, used, squeeze };
    }
    case 'band':
      return { ...judgement.band.limits };
    case 'wear':
      return { limit: judgement.check.limit };
  }
}

/** The row of parts that sets a thing; of what wears there is none. */
export function shelfOf({ kind, judgement }: MeasuredThing) {
  switch (kind) {
    case 'pack':
      return judgement.pack.shelf;
    case 'endplay':
      return judgement.endPlay.shelf;
    case 'preload':
      return judgement.preload.shelf;
    case 'band':
      return judgement.band.shelf;
    case 'wear':
      return undefined;
  }
}

/** The same digits in another unit. */
export function inUnit(typed: Typed | undefined, unit: string): Typed[] {
  if (!typed) return [];
  const digits = typed.text.replace(/ [^ \d]+.*$/u, '');
  return [{ field: typed.field, text: `${digits} ${unit}` }];
}
