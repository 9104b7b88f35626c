import { visible } from '../../telling/narrative/index.ts';
import { type Paper, PAPERS, type Printing, typstOf } from '../../telling/sheets/index.ts';
import { type Printed, Misuse } from '../machine/index.ts';
import { done, type Options, type Reply, type Session } from './session.ts';
import { hashOf } from './source.ts';
import { write } from './written.ts';

/** What stands on every page of the sheets of a file, on the paper that was asked for. */
export function printedOn(file: string, { page, options, world }: Session) {
  return {
    voice: page.voice,
    paper: paperOf(options),
    faults: options.fault ?? [],
    hash: hashOf(file, world),
    date: dateOf(options),
  };
}

/**
 * Writes the file of --output: PDF, or Typst's source text where its name ends in .typ. The notes
 * are said behind what was written.
 */
export async function printed(
  printing: Printing,
  notes: readonly string[],
  session: Session,
): Promise<Reply> {
  const { output } = session.options;
  const { voice } = session.page;
  if (output === undefined) throw new Misuse('bad.missing output');
  const source = typstOf(printing);
  if (output.endsWith('.typ')) {
    write(output, Buffer.from(source), 'Typst', session);
    return done([voice.say('sheet.written', { file: visible(output) }), ...notes].join('\n'));
  }
  const { pdf, pages, readable } = await pressed(source, session);
  write(output, pdf, 'PDF', session);
  const told = [
    voice.say('sheet.printed', { file: visible(output), pages }),
    ...notes,
    ...(readable ? [] : [voice.say('sheet.letters missing')]),
  ];
  return done(told.join('\n'));
}

async function pressed(source: string, { world }: Session): Promise<Printed> {
  try {
    if (world.press) return await world.press(source);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'MODULE_NOT_FOUND') throw error;
  }
  throw new Misuse('no.press');
}

function paperOf({ paper = 'a4' }: Options): Paper {
  const known = PAPERS.find((one) => one === paper.trim().toLowerCase());
  if (!known) throw new Misuse('no.paper', { given: visible(paper) });
  return known;
}

function dateOf({ date }: Options): string {
  if (date === undefined) return today();
  const [, year, month, day] = /^(\d{4})-(\d\d)-(\d\d)$/u.exec(date.trim()) ?? [];
  const read = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  if (Number.isNaN(read.getTime()) || !read.toISOString().startsWith(date.trim())) {
    throw new Misuse('bad.date', { given: visible(date) });
  }
  return date.trim();
}

// Where the printer stands, not in Greenwich.
function today(): string {
  const now = new Date();
  const two = (part: number) => `${part}`.padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
