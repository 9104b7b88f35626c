import * as v from 'valibot';
import type { Train } from '../../engine/train/index.ts';
import { length, pressure, readNamed } from '../../engine/form/index.ts';
import type { Expected, Problem } from '../../engine/yaml/index.ts';
import { AGAIN, againOf, readLength } from '../limits/index.ts';
import type { PackReadings } from './readings.ts';

/** What a file of readings says; none of it where it has a mistake. */
export interface ReadingsReading {
  readonly readings: readonly PackReadings[];
  readonly problems: readonly Problem[];
}

/** Reads readings of packs, by device: the train's, or of any device where none is given. Never throws. */
export function readReadings(text: string, train?: Train): ReadingsReading {
  const packs = train && (train.packs ?? []).map(({ device }) => device);
  const { things, problems } = readNamed<Entry>(
    text,
    READINGS,
    packs,
    (device, near) => {
      return { problem: 'no pack', device, ...near };
    },
    train,
  );
  return { readings: [...things].map(readingsOf), problems };
}

const or = (what: Expected) => what;
const lengths = v.exactOptional(
  v.pipe(v.array(length('A reading.'), or('lengths')), v.minLength(1, or('lengths'))),
);
const one = v.exactOptional(length('A reading.'));

const READINGS = v.nullish(
  v.record(
    v.string(or('name')),
    v.strictObject(
      {
        feeler: lengths,
        lifted: lengths,
        'on air': v.exactOptional(
          v.strictObject(
            {
              pressure: pressure('Of the air.'),
              strokes: v.pipe(v.array(length('A stroke.'), or('lengths')), v.minLength(1)),
            },
            or('on air'),
          ),
        ),
        'depth gauge': v.exactOptional(
          v.strictObject(
            { depth: length('A reading.'), edge: one, stack: length('A reading.') },
            or('depth gauge'),
          ),
        ),
        'step gauge': v.exactOptional(
          v.strictObject({ fits: one, 'does not fit': one }, or('step gauge')),
        ),
        again: v.exactOptional(AGAIN),
        friction: lengths,
        steel: lengths,
        cone: lengths,
      },
      or('readings'),
    ),
    or('section'),
  ),
);

type Entry =
  v.InferOutput<typeof READINGS> extends (infer Read) | null | undefined
    ? Read extends Record<string, infer Its>
      ? Its
      : never
    : never;

function readingsOf([device, entry]: [string, Entry]): PackReadings {
  const { feeler, lifted, friction, steel, cone, again } = entry;
  const { 'on air': air, 'depth gauge': depth, 'step gauge': step } = entry;
  const all = (key: string, texts: readonly string[] | undefined) =>
    texts && { [key]: texts.map(readLength) };
  const single = (key: string, text: string | undefined) =>
    text !== undefined && { [key]: readLength(text) };
  return {
    device,
    ...all('feeler', feeler),
    ...all('lifted', lifted),
    ...(air && { onAir: { pressure: air.pressure, strokes: air.strokes.map(readLength) } }),
    ...(depth && {
      depthGauge: {
        depth: readLength(depth.depth),
        ...single('edge', depth.edge),
        stack: readLength(depth.stack),
      },
    }),
    ...(step && {
      stepGauge: { ...single('fits', step.fits), ...single('doesNotFit', step['does not fit']) },
    }),
    ...(again && { again: againOf(again) }),
    ...all('friction', friction),
    ...all('steel', steel),
    ...all('cone', cone),
  };
}
