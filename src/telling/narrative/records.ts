import { boundsOf } from '../../shop/limits/index.ts';
import type { JobEntry, Told } from '../../shop/records/index.ts';
import { boundsText } from './packs.ts';
import type { ShelfSaid } from '../../engine/trainfile/index.ts';
import { keyOf, visible, type Voice } from '../voice/index.ts';

/** What an entry of a job says, in a line; of one that only strikes another, "Correction". */
export function toldText({ told }: JobEntry, voice: Voice): string {
  if (!told) return voice.say('sheet.told', { kind: '', of: '', what: '' });
  const of = 'of' in told ? voice.called(told.of) : '';
  return voice.say('sheet.told', { kind: told.kind, of, what: whatText(told, voice) });
}

/** How far a unit is taken apart and put together, a line each; none where nothing was begun. */
export function howFarTexts(
  { off, built }: { readonly off: readonly string[]; readonly built?: JobEntry },
  voice: Voice,
): readonly string[] {
  const names = voice.list(off.map(visible));
  return [
    ...(off.length > 0 ? [voice.say('job.off', { count: off.length, names })] : []),
    ...(built ? [toldText(built, voice)] : []),
  ];
}

/** "2026-11-25 13:40 UTC+01:00" of "2026-11-25T13:40:07.000+01:00", and UTC alone of a Z. */
export function timeText(at: string, voice: Voice): string {
  return voice.say('sheet.job.time', {
    day: at.slice(0, 10),
    time: at.slice(11, 16),
    zone: at.slice(23).replace('Z', ''),
  });
}

/** "snap ring 1.40 mm, 1.60 mm, 1.80 mm (1.60 mm is in)". */
export function shelfText({ part, fitted, sizes }: ShelfSaid, voice: Voice): string {
  return voice.say('sheet.shelf', {
    part: voice.say('shelf part', { part: keyOf(part) }),
    sizes: visible(sizes.join(', ')),
    fitted: visible(fitted),
  });
}

function whatText(told: Told, voice: Voice): string {
  switch (told.kind) {
    case 'seen':
    case 'reading':
      // Brackets and quotes are for the file.
      return visible(told.text.replaceAll(/^(?:\{ |[["])|(?: \}|[\]"])$/gu, ''));
    case 'chosen':
      return visible(told.part);
    case 'check': {
      const { predicted, felt } = told;
      const has = predicted === undefined ? 'no' : 'yes';
      return voice.say('sheet.felt', {
        has,
        predicted: visible(predicted ?? ''),
        felt: visible(felt),
      });
    }
    case 'limit':
      return boundsText(boundsOf(told.limit), voice);
    case 'shelf':
      return shelfText(told.shelf, voice);
    case 'photograph': {
      const { name, part = '', step = '' } = told;
      const of = part !== '' && step !== '' ? 'both' : part !== '' ? 'part' : 'step';
      return voice.say('sheet.photograph', {
        of: part === '' && step === '' ? 'nothing' : of,
        name: visible(name),
        part: voice.called(part),
        step: visible(step),
      });
    }
    case 'removed':
      return voice.called(told.part);
    case 'installed':
      return voice.say('sheet.installed', {
        how: told.replaced ? 'replaced' : told.why === undefined ? 'same' : 'why',
        part: voice.called(told.part),
        why: visible(told.why ?? ''),
      });
    case 'built': {
      const { task, of, went = 'none', said } = told;
      const [, number = '', check, word] = /^(\d+)(\.\d+)? ?(\w+)?$/u.exec(task) ?? [];
      const [, start] = /^start (\d+)$/u.exec(task) ?? [];
      return voice.say('sheet.built', {
        what: start ? 'start' : check ? 'check' : (word ?? 'step'),
        n: start ?? `${number}${check ?? ''}`,
        has: of === undefined ? 'no' : 'yes',
        of: visible(of ?? ''),
        went,
        says: said === undefined ? 'no' : 'yes',
        said: visible(said?.replaceAll(/\s+/gu, ' ') ?? ''),
      });
    }
    case 'unbuilt':
      return voice.say('sheet.unbuilt', { step: told.step, why: visible(told.why) });
    case 'note':
      return visible(told.note.replaceAll(/\s+/gu, ' '));
    case 'signed':
      return visible(told.what);
  }
}
