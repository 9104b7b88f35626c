import type { PackReadings } from '../../shop/packs/index.ts';
import { judgePack, readReadings } from '../../shop/packs/index.ts';
import type { Pack, Train } from '../../engine/train/index.ts';
import { speakAgainst } from '../../shop/limits/index.ts';
import { packJson, packText } from '../../telling/report/index.ts';
import { trialsAsked } from './trials.ts';
import { noted, openJob } from './openjob.ts';
import { Refusal } from './refusal.ts';
import { json, type Reply, type Session } from './session.ts';
import { refuseFile, textOf, trainOf } from './source.ts';

/** The packs that a file of readings or a job tells of; exit code 1 where something is outside. */
export function pack(file: string, readings: string | undefined, session: Session): Reply {
  const { options, page, world } = session;
  if (file === '-' && readings === '-') throw new Refusal('bad.stdin twice');
  const job = openJob(session);
  const told = readings ?? options.job;
  if (told === undefined) throw new Refusal('bad.missing readings', { verb: 'pack' });
  const train = job?.withLimits(trainOf(file, session)) ?? trainOf(file, session);
  const read = readReadings(readings === undefined ? '' : textOf(readings, world), train);
  if (read.problems.length > 0) refuseFile(told, read.problems, session);
  const listed = new Set(read.readings.map(({ device }) => device));
  const known = job?.readings(train).filter(({ device }) => !listed.has(device)) ?? [];
  const all = [...read.readings, ...known];
  if (all.length === 0) throw new Refusal('no.readings', { file: told });
  const asked = trialsAsked(options);
  const judged = all.map((its) => judgePack(packOf(train, its), its, asked));
  const wrong = judged.some(({ verdict = 'inside', again, gauge, wear, remarks }) => {
    const others = [gauge, ...wear].map((its) => its?.verdict ?? 'inside');
    // What was measured again with the chosen part is the last word.
    const last = again?.agrees === false ? undefined : (again?.verdict ?? verdict);
    return speakAgainst(remarks) || [last, ...others].some((its) => its !== 'inside');
  });
  const unit = options.inch ? 'in' : 'mm';
  const { text } = options.json
    ? json(packJson(judged))
    : { text: noted(packText(train, judged, { ...page, unit }), job, file, session) };
  return { text, exit: wrong ? 1 : 0 };
}

// Readings are of packs that the train tells.
function packOf(train: Train, { device }: PackReadings): Pack {
  return train.packs?.find((its) => its.device === device) as Pack;
}
