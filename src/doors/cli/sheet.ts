import path from 'node:path';
import type { Train } from '../../engine/train/index.ts';
import { AT_THE_INPUT } from '../../telling/narrative/index.ts';
import type { Suspicion } from '../../telling/report/index.ts';
import {
  buildSheet,
  chartSheet,
  diagnosisSheet,
  drawingSheet,
  marginSheet,
  measureSheet,
  oneWayCard,
  type Sheet,
  stripSheet,
} from '../../telling/sheets/index.ts';
import { marginReport } from './margin.ts';
import { measurementsOf } from './measurements.ts';
import { meant, suggestion } from './names.ts';
import { plannedOf } from './plan.ts';
import { printed, printingOf } from './printing.ts';
import { Refusal } from './refusal.ts';
import { json, type Reply, type Session } from './session.ts';
import { trainOf } from './source.ts';
import { suspicionOfFile } from './suspects.ts';
import { SHEETS } from './verbs.ts';
import { trainAsFound } from './wrong.ts';

type Kind = Exclude<(typeof SHEETS)[number], 'set'>;

/** Prints a sheet of a train, or all of them, into a file of its own. */
export async function sheet(given: string, file: string, asked: Session): Promise<Reply> {
  const session = readingOnce(asked);
  const kind = SHEETS.find((one) => one === meant(given, SHEETS));
  if (!kind) throw new Refusal('no.kind', suggestion(given, SHEETS));
  const train = trainAsFound(trainOf(file, session), session.options);
  const all = SHEETS.filter((one): one is Kind => one !== 'set');
  const kinds = kind === 'set' ? all.filter((one) => isFor(one, train)) : [kind];
  const left = kind === 'set' ? all.filter((one) => !kinds.includes(one)) : [];
  const sheets = kinds.map((one) => made(one, train, file, session));
  const printing = printingOf(train, file, kind, sheets, session);
  return session.options.json ? json(printing) : printed(printing, left, session);
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
function isFor(kind: Kind, train: Train): boolean {
  switch (kind) {
    case 'build':
      return train.teardown !== undefined;
    case 'margins':
      return train.capacities !== undefined && train.engine?.['torque Nm'] !== undefined;
    case 'one-way':
      return train.devices.some((device) => device.kind === 'one-way');
    default:
      return true;
  }
}

function made(kind: Kind, train: Train, file: string, session: Session): Sheet {
  const { language, page } = session;
  const { stand = AT_THE_INPUT } = page;
  switch (kind) {
    case 'chart':
      return chartSheet(train, language);
    case 'drawing':
      return drawingSheet(train, language);
    case 'diagnosis':
      return diagnosisSheet(suspicionOnPaper(train, session), language);
    case 'strip':
      return stripSheet(train, language);
    case 'measure':
      return measureSheet(train, measurementsOf(train, session), language);
    case 'build':
      return buildSheet(train, plannedOf(train, file), language, stand);
    case 'one-way':
      return oneWayCard(train, language, stand.seenFrom);
    case 'margins':
      return marginSheet(marginReport(train, file, session.options), language);
  }
}

// Where the practice file stands on this machine says nothing on paper.
function suspicionOnPaper(train: Train, session: Session): Suspicion {
  const suspicion = suspicionOfFile(train, session.options.seen, session);
  return { ...suspicion, practice: path.basename(suspicion.practice) };
}
