import { Bench, everyFault, faultMatrix } from '../../engine/faults/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { AT_THE_INPUT, faultsOf, raceHeld } from '../../asking/request/index.ts';
import {
  faultsCsv,
  faultsJson,
  type FaultsReport,
  faultsText,
} from '../../telling/report/index.ts';
import { patiently } from './patiently.ts';
import { Refusal } from './refusal.ts';
import { done, json, type Reply, type Session } from './session.ts';
import { trainOf } from './source.ts';
import { lookingAt } from './stand.ts';

/** Every fault against every gear; two at once with --pairs, and then no hand checks. */
export function faults(file: string, session: Session): Reply {
  const { options, language } = session;
  if (options.json && options.csv) throw new Refusal('bad.csv');
  const train = trainOf(file, session);
  const seen = lookingAt(train, session).page;
  const page = { ...seen, stand: raceHeld(seen.stand ?? AT_THE_INPUT, options.hold) };
  const pairs = options.pairs ?? false;
  const only = options.only === undefined ? everyFault(train) : faultsOf(train, options.only);
  refuseEndless(train, pairs ? (only.length * (only.length + 1)) / 2 : only.length);
  const report = patiently(session, (tell): FaultsReport => {
    const matrix = faultMatrix(train, { pairs, spins: !pairs, only, tell });
    const bench = pairs ? undefined : new Bench(train);
    const signs = bench && matrix.rows.map((row) => bench.sign(row.faults));
    return { train, matrix, ...(signs && { bench: signs }) };
  });
  if (options.json) return json(faultsJson(report, language, page.stand));
  return done(options.csv ? faultsCsv(report, page) : faultsText(report, page));
}

// Some minutes' work on the largest train that is read, and more rows than anybody reads.
const MOST_CELLS = 250_000;

function refuseEndless({ ranges }: Train, rows: number): void {
  const gears = ranges.reduce((sum, range) => sum + range.gears.length, 0);
  if (rows * gears > MOST_CELLS) throw new Refusal('bad.many faults', { rows, gears });
}
