import type { FoldedJob, Told } from '../../shop/records/index.ts';
import type { MeasuredThing } from './standing.ts';

/**
 * What can be read only while the unit is whole (an end play along a shaft, a preload), and is not;
 * nor do these notes say why it could not be.
 */
export function unreadWhole(
  things: readonly MeasuredThing[],
  notes: readonly string[],
): readonly MeasuredThing[] {
  return things.filter((thing) => {
    const { kind, name, stands } = thing;
    const isAlong = kind === 'endplay' && thing.judgement.endPlay.measure !== 'backlash';
    if (stands !== 'nothing' || !(isAlong || kind === 'preload')) return false;
    return !notes.some((note) => HEADS.some((its) => note.startsWith(its(name))));
  });
}

/** The note that says why a thing could not be read while the unit was whole. */
export function unreadableTold(name: string, because: string, language: 'en' | 'es'): Told {
  return { kind: 'note', note: `${HEAD[language](name)}${because}` };
}

/** The notes of a job that stand. */
export function notesIn(job: FoldedJob | undefined): readonly string[] {
  return (job?.entries ?? []).flatMap(({ told, struckBy }) => {
    return told?.kind === 'note' && !struckBy ? [told.note] : [];
  });
}

const HEAD = {
  en: (name: string) => `could not be read: ${name}, because `,
  es: (name: string) => `no se pudo leer: ${name}, porque `,
} as const;

const HEADS = Object.values(HEAD);
