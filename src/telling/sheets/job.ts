import {
  type FoldedEntry,
  type FoldedJob,
  signerBefore,
  standing,
} from '../../shop/records/index.ts';
import { timeText, toldText, visible, type Voice } from '../narrative/index.ts';
import type { SheetBlock, SheetCell, SheetColumn, Sheet } from './document.ts';
import { fieldOf, headOf, jobFields } from './filled.ts';

/** The job card: all that was written down, what was struck too, and by whom. */
export function jobCard(job: FoldedJob, voice: Voice): Sheet {
  const columns: SheetColumn[] = [
    { head: headOf('time', voice), width: { mm: 46 } },
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
        : {
            block: 'table',
            columns,
            rows: entries.flatMap((entry) => rowsOf(entry, signerBefore(job, entry), voice)),
          },
    ],
  };
}

/** The hand checks that stand in a job, as a table; nothing where there are none. */
export function checksIn(job: FoldedJob | undefined, voice: Voice): SheetBlock[] {
  const checks = job ? standing(job, 'check') : [];
  if (checks.length === 0) return [];
  const columns = (['check', 'predicted', 'felt', 'who'] as const).map((head): SheetColumn => {
    return { head: headOf(head, voice), width: { share: head === 'who' ? 1 : 3 } };
  });
  const rows = checks.map(({ told: { of, predicted = '', felt }, who }): SheetCell[] => {
    return [of, predicted, felt, who].map(visible);
  });
  return [
    { block: 'heading', text: voice.say('sheet.job.checks') },
    { block: 'table', columns, rows },
  ];
}

// An entry, and under one that was struck by whom and why.
function rowsOf(entry: FoldedEntry, signer: string | undefined, voice: Voice): SheetCell[][] {
  const { struckBy, who, at } = entry;
  const cells = [timeText(at, voice), visible(who), toldText(entry, voice)];
  const late =
    signer === undefined ? [] : [['', '', voice.say('sign.after', { who: visible(signer) })]];
  if (!struckBy) return [cells, ...late];
  const because = voice.say('sheet.job.struck', {
    who: visible(struckBy.who),
    at: timeText(struckBy.at, voice),
    because: visible(struckBy.strikes?.because ?? ''),
  });
  return [
    cells.map((cell) => ({ text: cell, look: 'struck' as const })),
    ...late,
    ['', '', because],
  ];
}
