import type { JobNote } from '../../asking/job/index.ts';
import { boundsOf } from '../../shop/limits/index.ts';
import { boundsText } from './packs.ts';
import { shelfText } from './records.ts';
import { problemText } from './problems.ts';
import { visible, type Voice } from '../voice/index.ts';

/** What of a job stands in the place of the file's, was left out, or is of another train. */
export function jobNoteText(note: JobNote, voice: Voice): string {
  switch (note.note) {
    case 'limit': {
      const { of, file, job } = note.replaced;
      return voice.say('sheet.job.limit', {
        of: voice.called(of),
        job: boundsText(boundsOf(job), voice),
        file: boundsText(boundsOf(file), voice),
      });
    }
    case 'shelf':
      return voice.say('sheet.job.shelf', {
        of: visible(note.of),
        row: shelfText(note.shelf, voice),
      });
    case 'unused': {
      const { called, count, first } = note;
      return voice.say('sheet.job.unused', {
        count,
        place: `${visible(called)}:${first.place.line}:${first.place.column}`,
        problem: problemText(first, voice),
      });
    }
    case 'rebuilt':
      return voice.say('sheet.job.rebuilt');
    case 'other train':
      return voice.say('sheet.job.other train', { file: visible(note.called) });
  }
}
