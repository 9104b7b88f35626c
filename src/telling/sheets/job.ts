import { type FoldedEntry, type FoldedJob, standing, type Told } from '../../shop/records/index.ts';
import { boundsOf } from '../../shop/packs/index.ts';
import { boundsText, type Language, visible, type Voice, voiceOf } from '../narrative/index.ts';
import type { Block, Cell, Column, Sheet } from './document.ts';
import { fieldOf, headOf, jobFields } from './filled.ts';

/** The job card: all that was written down, what was struck too, and by whom. */
export function jobCard(job: FoldedJob, language: Language): Sheet {
  const voice = voiceOf(language);
  const columns: Column[] = [
    { head: headOf('time', voice), width: { mm: 36 } },
    { head: headOf('who', voice), width: { mm: 18 } },
    { head: headOf('what', voice), width: { share: 1 } },
  ];
  const { entries } = job;
  return {
    title: voice.say('sheet.title', { sheet: 'job' }),
    blocks: [
      jobFields(voice, job),
      { block: 'fields', fields: [fieldOf('complaint', voice, visible(job.complaint))] },
      { block: 'heading', text: voice.say('sheet.job.entries') },
      entries.length === 0
        ? { block: 'paragraph', text: voice.say('sheet.job.none') }
        : { block: 'table', columns, rows: entries.flatMap((entry) => rowsOf(entry, voice)) },
    ],
  };
}

/** The hand checks that stand in a job, as a table; nothing where there are none. */
export function checksIn(job: FoldedJob | undefined, voice: Voice): Block[] {
  const checks = job ? standing(job, 'check') : [];
  if (checks.length === 0) return [];
  const columns = (['check', 'predicted', 'felt', 'who'] as const).map((head): Column => {
    return { head: headOf(head, voice), width: { share: head === 'who' ? 1 : 3 } };
  });
  const rows = checks.map(({ told: { of, predicted = '', felt }, who }): Cell[] => {
    return [of, predicted, felt, who].map(visible);
  });
  return [
    { block: 'heading', text: voice.say('sheet.job.checks') },
    { block: 'table', columns, rows },
  ];
}

// An entry, and under one that was struck by whom and why.
function rowsOf(entry: FoldedEntry, voice: Voice): Cell[][] {
  const { told, struckBy, who, at } = entry;
  const text = told
    ? toldText(told, voice)
    : voice.say('sheet.told', { kind: '', of: '', what: '' });
  const cells = [timeText(at, voice), visible(who), text];
  if (!struckBy) return [cells];
  const because = voice.say('sheet.job.struck', {
    who: visible(struckBy.who),
    at: timeText(struckBy.at, voice),
    because: visible(struckBy.strikes?.because ?? ''),
  });
  return [cells.map((cell) => ({ text: cell, look: 'struck' as const })), ['', '', because]];
}

function toldText(told: Told, voice: Voice): string {
  const of = 'of' in told ? visible(told.of) : '';
  return voice.say('sheet.told', { kind: told.kind, of, what: whatText(told, voice) });
}

function whatText(told: Told, voice: Voice): string {
  switch (told.kind) {
    case 'seen':
    case 'reading':
      return visible(told.text);
    case 'chosen':
      return visible(told.part);
    case 'check': {
      const { predicted = '', felt } = told;
      const has = predicted === '' ? 'no' : 'yes';
      const values = { has, predicted: visible(predicted), felt: visible(felt) };
      return voice.say('sheet.felt', values);
    }
    case 'limit':
      return boundsText(boundsOf(told.limit), voice);
    case 'photograph':
      return visible(told.name);
    case 'note':
      return visible(told.note);
    case 'signed':
      return visible(told.what);
  }
}

// "2026-11-25 12:40 UTC" of "2026-11-25T12:40:07.000Z".
function timeText(at: string, voice: Voice): string {
  return voice.say('sheet.job.time', { day: at.slice(0, 10), time: at.slice(11, 16) });
}
