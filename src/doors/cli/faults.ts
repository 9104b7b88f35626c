import { Bench, faultMatrix } from '../../engine/faults/index.ts';
import { AT_THE_INPUT } from '../../telling/narrative/index.ts';
import {
  faultsCsv,
  faultsJson,
  type FaultsReport,
  faultsText,
} from '../../telling/report/index.ts';
import { Refusal } from './refusal.ts';
import { done, json, type Reply, type Session } from './session.ts';
import { trainOf } from './source.ts';
import { raceHeld } from './stand.ts';
import { faultsOf } from './wrong.ts';

/** Every fault against every gear; two at once with --pairs, and then no hand checks. */
export function faults(file: string, session: Session): Reply {
  const { options, language } = session;
  if (options.json && options.csv) throw new Refusal('bad.csv');
  const train = trainOf(file, session);
  const page = { ...session.page, stand: raceHeld(session.page.stand ?? AT_THE_INPUT, options) };
  const pairs = options.pairs ?? false;
  const only = options.only === undefined ? {} : { only: faultsOf(train, options.only) };
  const matrix = faultMatrix(train, { pairs, spins: !pairs, ...only });
  const bench = pairs ? undefined : new Bench(train);
  const report: FaultsReport = {
    train,
    matrix,
    ...(bench && { bench: matrix.rows.map((row) => bench.sign(row.faults)) }),
  };
  if (options.json) return json(faultsJson(report, language, page.stand));
  return done(options.csv ? faultsCsv(report, page) : faultsText(report, page));
}
