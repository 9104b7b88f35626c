import type { Job, JobEntry, Told } from './job.ts';
import { lineOf, quoted } from './line.ts';

/** The text of a job file without entries. */
export function newJobText({ unit, train, complaint, by, at }: Omit<Job, 'entries'>): string {
  const hash = train?.hash === undefined ? '' : `, hash: ${JSON.stringify(train.hash)}`;
  return [
    '# An entry a line, each with its id at the end. Add with holdturn job; never edit or erase.',
    'holdturn job: 1',
    `unit: ${quoted(unit)}`,
    ...(train ? [`train: { file: ${quoted(train.file)}${hash} }`] : []),
    `complaint: ${quoted(complaint)}`,
    `by: ${quoted(by)}`,
    `opened: ${at}`,
    'entries:',
    '',
  ].join('\n');
}

/** An entry before it is written: its id is made of its text. */
export type EntryDraft = Omit<JobEntry, 'id' | 'line'>;

/**
 * What is to be appended to a job file for an entry: it begins a line of its own, so that a
 * half-written one before it spoils nothing. `body` is for `readEntry`, which tells whether it
 * can be read: a draft may hold any text.
 */
export function entryText({ at, who, told, strikes }: EntryDraft): {
  readonly id: string;
  readonly body: string;
  readonly text: string;
} {
  const body = [
    `at: ${at}`,
    `who: ${quoted(who)}`,
    ...(told ? [toldText(told)] : []),
    ...(strikes ? [`strikes: ${quoted(strikes.id)}`, `because: ${quoted(strikes.because)}`] : []),
  ].join(', ');
  const { id, line } = lineOf(body);
  return { id, body, text: `\n${line}\n` };
}

// A name alone stands alone, as it always did.
function photographText({ name, part, step }: Extract<Told, { kind: 'photograph' }>): string {
  if (part === undefined && step === undefined) return quoted(name);
  const of = Object.entries({ part, step }).flatMap(([key, its]) => {
    return its === undefined ? [] : [`${key}: ${quoted(its)}`];
  });
  return `{ file: ${quoted(name)}, ${of.join(', ')} }`;
}

// Of the same one, with nothing to say of it, the name alone.
function installedText({ part, replaced, why }: Extract<Told, { kind: 'installed' }>): string {
  if (!replaced && why === undefined) return quoted(part);
  const more = [
    ...(replaced ? [`replaced: ${quoted('yes')}`] : []),
    ...(why === undefined ? [] : [`why: ${quoted(why)}`]),
  ];
  return `{ part: ${quoted(part)}, ${more.join(', ')} }`;
}

function toldText(told: Told): string {
  switch (told.kind) {
    case 'seen':
    case 'reading':
      return `${told.kind}: { ${quoted(told.of)}: ${told.text} }`;
    case 'chosen':
      return `chosen: { ${quoted(told.of)}: ${quoted(told.part)} }`;
    case 'check': {
      const predicted =
        told.predicted === undefined ? '' : `predicted: ${quoted(told.predicted)}, `;
      return `check: { ${quoted(told.of)}: { ${predicted}felt: ${quoted(told.felt)} } }`;
    }
    case 'limit': {
      const { which, limit, sure } = told;
      const [first, last] = [which !== undefined && { of: which }, sure && { sure: 'yes' }];
      const all = Object.entries({ ...first, ...limit, ...last });
      const said = all.map(([key, its]) => `${quoted(key)}: ${quoted(its)}`);
      return `limit: { ${quoted(told.of)}: { ${said.join(', ')} } }`;
    }
    case 'shelf': {
      const { part, fitted, sizes, tolerance } = told.shelf;
      const more = tolerance === undefined ? '' : `, tolerance: ${quoted(tolerance)}`;
      const row = `sizes: [${sizes.map(quoted).join(', ')}]${more}`;
      return `shelf: { ${quoted(told.of)}: { part: ${quoted(part)}, fitted: ${quoted(fitted)}, ${row} } }`;
    }
    case 'photograph':
      return `photograph: ${photographText(told)}`;
    case 'removed':
      return `removed: ${quoted(told.part)}`;
    case 'installed':
      return `installed: ${installedText(told)}`;
    case 'built':
    case 'unbuilt': {
      const { kind, ...its } = told;
      const said = Object.entries(its).map(([key, one]) => `${key}: ${quoted(one)}`);
      return `${kind}: { ${said.join(', ')} }`;
    }
    case 'note':
      return `note: ${quoted(told.note)}`;
    case 'signed':
      return `signed: ${quoted(told.what)}`;
  }
}
