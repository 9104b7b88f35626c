import type { Train } from '../../engine/train/index.ts';
import { chartSheet, type Sheet } from '../../telling/sheets/index.ts';
import { meant, suggestion } from './names.ts';
import { printingOf, printed } from './printing.ts';
import { Refusal } from './refusal.ts';
import { json, type Reply, type Session } from './session.ts';
import { trainOf } from './source.ts';
import { trainAsFound } from './wrong.ts';

/** What can be printed, in the order in which a job needs it. */
export const KINDS = ['chart'] as const;
type Kind = (typeof KINDS)[number];

/** Prints a sheet of a train into a file of its own. */
export async function sheet(given: string, file: string, session: Session): Promise<Reply> {
  const kind = KINDS.find((one) => one === meant(given, KINDS));
  if (!kind) throw new Refusal('no.kind', suggestion(given, KINDS));
  const train = trainAsFound(trainOf(file, session), session.options);
  const printing = printingOf(train, file, kind, [made(kind, train, session)], session);
  return session.options.json ? json(printing) : printed(printing, session);
}

function made(kind: Kind, train: Train, { language }: Session): Sheet {
  switch (kind) {
    case 'chart':
      return chartSheet(train, language);
  }
}
