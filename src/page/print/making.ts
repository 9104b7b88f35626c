import { askMeasurements } from '../../asking/build/index.ts';
import { askCapacity, type LoadRequest } from '../../asking/gears/index.ts';
import type { OpenJob } from '../../asking/job/index.ts';
import { type Stand, trainAsFound } from '../../asking/request/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { hashOf } from '../../shop/records/index.ts';
import { jobNoteText, type Voice } from '../../telling/narrative/index.ts';
import {
  kindsInSet,
  type Paper,
  pictureSheet,
  type Printing,
  printingOf,
  type SheetKind,
  sheetOf,
} from '../../telling/sheets/index.ts';
import { beside } from '../thread/index.ts';
import type { Picture } from './pictures.ts';

/** What is to be printed, of which train, for whom. */
export interface Order {
  readonly what: SheetKind | 'set';
  /** The text of its file, and what it says. */
  readonly text: string;
  readonly told: Train;
  readonly faults: readonly string[];
  /** None: boxes are empty. */
  readonly job: OpenJob | undefined;
  readonly load: LoadRequest;
  readonly paper: Paper;
  readonly voice: Voice;
  readonly stand: Stand;
}

export interface Ordered {
  readonly printing: Printing;
  /** What is to be said of the job. */
  readonly notes: readonly string[];
}

/** One drawing on a page of its own. */
export function pictured(
  { scene, title, caption }: Picture,
  { told, text, faults, voice, paper }: Omit<Order, 'what'>,
): Ordered {
  const sheets = [pictureSheet(scene, title, caption)];
  const hash = hashOf(text);
  const its = { train: told, faults, hash, date: today(), voice, paper } as const;
  return { printing: printingOf(sheets, { ...its, kind: 'drawing' }), notes: [] };
}

/** Makes the sheets, as the command does; what takes long is worked out beside. Throws `NoAnswer`. */
export async function madeFor(order: Order): Promise<Ordered> {
  const { what, text, told, faults, job, load, paper, voice, stand } = order;
  const train = trainAsFound(told, { fault: faults });
  const kinds = what === 'set' ? kindsInSet(train, job?.job) : [what];
  const asked = { train: text, fault: faults };
  const planned = kinds.includes('build') ? await beside('planned', asked) : undefined;
  const diagnosed = kinds.includes('diagnosis')
    ? await beside('diagnosed', { ...asked, job: job?.job ?? null })
    : undefined;
  const answered = {
    planned: () => given(planned),
    diagnosed: () => given(diagnosed),
    measured: () => askMeasurements(train, job ? { job } : {}),
    margins: () => askCapacity(told, { ...load, fault: faults }),
  };
  const sheets = kinds.map((kind) => {
    return sheetOf(kind, { train, voice, stand, job: job?.job }, answered);
  });
  const hash = hashOf(text);
  const date = today();
  const printing = printingOf(sheets, { kind: what, train, faults, hash, date, voice, paper });
  const notes = job?.notes(hash).map((note) => jobNoteText(note, voice)) ?? [];
  return { printing, notes };
}

function given<Its>(its: Its | undefined): Its {
  if (its === undefined) throw new RangeError('asked for by no sheet');
  return its;
}

// Where the printer stands, not in Greenwich.
function today(): string {
  const now = new Date();
  const two = (part: number) => `${part}`.padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
