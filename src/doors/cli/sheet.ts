import path from 'node:path';
import type { Train } from '../../engine/train/index.ts';
import { AT_THE_INPUT, meant, trainAsFound } from '../../asking/request/index.ts';
import { keyOf } from '../../telling/narrative/index.ts';
import {
  diagnosedOf,
  kindsInSet,
  printingOf,
  type Sheet,
  SHEET_KINDS,
  type SheetKind,
  sheetOf,
} from '../../telling/sheets/index.ts';
import { askMeasurements, askPlan, type Measurements } from '../../asking/build/index.ts';
import { askCapacity } from '../../asking/gears/index.ts';
import {
  suggestion,
  jobAsked,
  notesOf,
  patiently,
  printed,
  printedOn,
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

/** Prints a sheet of a train, or all of them, into a file of its own. */
export async function sheet(given: string, file: string, typed: Session): Promise<Reply> {
  const once = readingOnce(typed);
  const kind = SHEETS.find((one) => one === meant(given, SHEETS));
  if (!kind) throw new Misuse('no.kind', suggestion(given, SHEETS));
  const told = trainOf(file, once);
  const train = trainAsFound(told, once.options);
  const session = lookingAt(train, once);
  const job = jobAsked(session);
  const kinds = kind === 'set' ? kindsInSet(train, job?.job) : [kind];
  const sheets = patiently(session, (tell, within) => {
    return kinds.map((one, k) => {
      const its = made(one, { told, train, session: within, job });
      tell(k + 1, kinds.length);
      return its;
    });
  });
  const printing = printingOf(sheets, { kind, train, ...printedOn(file, session) });
  if (session.options.json) return json(printing);
  // Without a job nobody misses its card.
  const left = SHEET_KINDS.filter((one) => {
    return kind === 'set' && one !== 'job' && !kinds.includes(one);
  });
  const notes = [...leftOut(left, session), ...notesOf(job, printing.stamp.hash, session)];
  return printed(printing, notes, session);
}

function leftOut(kinds: readonly SheetKind[], { page }: Session): string[] {
  const { voice } = page;
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

interface Asked {
  /** As its file tells it, and as it was found. */
  readonly told: Train;
  readonly train: Train;
  readonly session: Session;
  readonly job: OpenJob | undefined;
}

function made(kind: SheetKind, { told, train, session, job }: Asked): Sheet {
  const { page, options } = session;
  const { voice, stand = AT_THE_INPUT } = page;
  if (kind === 'job' && !job) throw new Misuse('no.job');
  return sheetOf(
    kind,
    { train, voice, stand, job: job?.job },
    {
      diagnosed: () => {
        const suspicion = suspicionOfFile(train, options.seen, session, job);
        // Where the experience file stands on this machine says nothing on paper.
        return diagnosedOf({ ...suspicion, experience: path.basename(suspicion.experience) });
      },
      measured: () => measurementsIn(train, session, job),
      planned: () => askPlan(train),
      margins: () => askCapacity(told, options),
    },
  );
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
