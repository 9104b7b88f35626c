import * as v from 'valibot';
import type { Train } from '../../engine/train/index.ts';
import {
  type Expected,
  find,
  Findings,
  length,
  Lines,
  nearest,
  parseTree,
  pressure,
  type Problem,
  Walker,
} from '../../engine/trainfile/index.ts';
import { readLength } from './bounds.ts';
import type { PackReadings } from './readings.ts';

/** What a file of readings says; none of it where it has a mistake. */
export interface ReadingsReading {
  readonly readings: readonly PackReadings[];
  readonly problems: readonly Problem[];
}

/** Reads the readings of a train's packs, by device. Never throws. */
export function readReadings(text: string, train: Train): ReadingsReading {
  const findings = new Findings(new Lines(text));
  const root = parseTree(text, findings);
  if (!root) return { readings: [], problems: findings.list() };
  const walker = new Walker(text, findings, (name) => name);
  const start = { from: root.at.from, to: root.at.from };
  const read = walker.value(root, READINGS as never, [], start) as ReadonlyMap<string, Entry>;
  if (findings.errorCount === 0) {
    const packs = (train.packs ?? []).map(({ device }) => device);
    for (const device of read.keys()) {
      if (packs.includes(device)) continue;
      findings.error(find(root, [device]), () => {
        const near = nearest(device, packs);
        return { problem: 'no pack', device, ...(near !== undefined && { near }) };
      });
    }
  }
  const problems = findings.list();
  return { readings: problems.length > 0 ? [] : [...read].map(readingsOf), problems };
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
  const { feeler, lifted, friction, steel, cone } = entry;
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
    ...all('friction', friction),
    ...all('steel', steel),
    ...all('cone', cone),
  };
}
