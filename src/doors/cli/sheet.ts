import path from 'node:path';
import type { Train } from '../../engine/train/index.ts';
import { AT_THE_INPUT, meant, trainAsFound } from '../../asking/request/index.ts';
import { keyOf, voiceOf } from '../../telling/narrative/index.ts';
import {
  buildSheet,
  chartSheet,
  diagnosisSheet,
  drawingSheet,
  jobCard,
  capacitySheet,
  measureSheet,
  oneWayCard,
  type Sheet,
  stripSheet,
} from '../../telling/sheets/index.ts';
import { askMeasurements, askPlan, type Measurements } from '../../asking/build/index.ts';
import { askCapacity } from '../../asking/gears/index.ts';
import {
  suggestion,
  jobAsked,
  notesOf,
  patiently,
  printed,
  printingOf,
  json,
  type Reply,
  type Session,
  givenIn,
  trainOf,
  lookingAt,
} from '../../command/session/index.ts';
import { type OpenJob } from '../../asking/job/index.ts';
import { Misuse } from '../../command/machine/index.ts';
import { suspicionOfFile } from './suspects.ts';
import { SHEETS } from '../../command/typed/index.ts';

type Kind = Exclude<(typeof SHEETS)[number], 'set'>;

/** Prints a sheet of a train, or all of them, into a file of its own. */
export async function sheet(given: string, file: string, typed: Session): Promise<Reply> {
  const once = readingOnce(typed);
  const kind = SHEETS.find((one) => one === meant(given, SHEETS));
  if (!kind) throw new Misuse('no.kind', suggestion(given, SHEETS));
  const told = trainOf(file, once);
  const train = trainAsFound(told, once.options);
  const session = lookingAt(train, once);
  const job = jobAsked(session);
  const all = SHEETS.filter((one): one is Kind => one !== 'set');
  const kinds = kind === 'set' ? all.filter((one) => isFor(one, train, job)) : [kind];
  const sheets = patiently(session, (tell, within) => {
    return kinds.map((one, k) => {
      const its = made(one, { told, train, session: within, job });
      tell(k + 1, kinds.length);
      return its;
    });
  });
  const printing = printingOf(train, file, kind, sheets, session);
  if (session.options.json) return json(printing);
  // Without a job nobody misses its card.
  const left = all.filter((one) => kind === 'set' && one !== 'job' && !kinds.includes(one));
  const notes = [...leftOut(left, session), ...notesOf(job, printing.stamp.hash, session)];
  return printed(printing, notes, session);
}

function leftOut(kinds: readonly Kind[], { language }: Session): string[] {
  const voice = voiceOf(language);
  const sheets = kinds.map((kind) => voice.say('sheet.title', { sheet: keyOf(kind) }));
  return kinds.length === 0 ? [] : [voice.say('sheet.left out', { sheets: voice.list(sheets) })];
}

// Standard input can be read once, and its hash is wanted too.
function readingOnce(session: Session): Session {
  const { read } = session.world;
  const texts = new Map<string, string>();
  const once = (file: string) => {
    const text = texts.get(file) ?? read(file);
    texts.set(file, text);
    return text;
  };
  return { ...session, world: { ...session.world, read: once } };
}

// Of a set: a sheet that would have to be refused, or would say that there is nothing, is left out.
function isFor(kind: Kind, train: Train, job: OpenJob | undefined): boolean {
  switch (kind) {
    case 'job':
      return job !== undefined;
    case 'build':
      return train.teardown !== undefined;
    case 'capacity':
      return train.capacities !== undefined && train.engine?.['torque Nm'] !== undefined;
    case 'one-way':
      return train.devices.some((device) => device.kind === 'one-way');
    default:
      return true;
  }
}

interface Asked {
  /** As its file tells it, and as it was found. */
  readonly told: Train;
  readonly train: Train;
  readonly session: Session;
  readonly job: OpenJob | undefined;
}

function made(kind: Kind, { told, train, session, job }: Asked): Sheet {
  const { language, page, options } = session;
  const { stand = AT_THE_INPUT } = page;
  const known = job?.job;
  switch (kind) {
    case 'chart':
      return chartSheet(train, language);
    case 'drawing':
      return drawingSheet(train, language);
    case 'diagnosis': {
      const suspicion = suspicionOfFile(train, options.seen, session, job);
      // Where the practice file stands on this machine says nothing on paper.
      const practice = path.basename(suspicion.practice);
      return diagnosisSheet({ ...suspicion, practice }, language, known);
    }
    case 'strip':
      return stripSheet(train, language, known);
    case 'measure':
      return measureSheet(train, measurementsIn(train, session, job), language, known);
    case 'build':
      return buildSheet(train, askPlan(train), language, stand, known);
    case 'one-way':
      return oneWayCard(train, language, stand, known);
    case 'capacity':
      return capacitySheet(askCapacity(told, options), language);
    case 'job':
      if (!known) throw new Misuse('no.job');
      return jobCard(known, language);
  }
}

// A file that is named goes before the job.
function measurementsIn(train: Train, session: Session, job: OpenJob | undefined): Measurements {
  const { options, world } = session;
  return askMeasurements(train, {
    ...(options.readings && { readings: givenIn(options.readings, world) }),
    ...(options.plays && { plays: givenIn(options.plays, world) }),
    ...(job && { job }),
  });
}
