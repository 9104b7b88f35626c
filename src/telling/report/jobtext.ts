import { type FoldedEntry, type FoldedJob, signerBefore } from '../../shop/records/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import type { HowFar } from '../../asking/job/index.ts';
import { howFarTexts, problemText, timeText, toldText, visible } from '../narrative/index.ts';
import { type Page, paragraph, section } from '../text/index.ts';

/** A job as it stands, struck entries between ~~ and ~~; and what of its file cannot be read. */
export function jobText(
  job: FoldedJob,
  problems: readonly Problem[],
  far: HowFar,
  page: Page,
): string {
  const { voice } = page;
  const { unit, train, complaint, by, at, entries } = job;
  const lines = (text: string, hang = '') => paragraph(text, page, hang);
  const told = problems.flatMap((problem) => {
    const values = { line: problem.place.line, problem: problemText(problem, page.voice) };
    return lines(`! ${voice.say('job.problem', values)}`, '  ').map(page.ink.odd);
  });
  return [
    ...lines(voice.say('job.title', { unit: visible(unit) })).map(page.ink.strong),
    ...(train ? lines(voice.say('job.train', { file: visible(train.file) })) : []),
    ...lines(voice.say('job.complaint', { complaint: visible(complaint) })),
    ...(at === '' ? [] : lines(voice.say('job.opened', { by, at: timeText(at, voice) }))),
    ...howFarTexts(far, voice).flatMap((text) => lines(text)),
    ...section(voice.say('job.damaged'), told, page),
    '',
    page.ink.strong(voice.say('sheet.job.entries')),
    ...(entries.length === 0 ? ['', voice.say('sheet.job.none')] : []),
    ...entries.flatMap((entry) => ['', ...entryLines(entry, signerBefore(job, entry), page)]),
  ].join('\n');
}

// When, who and the id to strike it by; under that what it says, and what became of it.
function entryLines(entry: FoldedEntry, signer: string | undefined, page: Page): string[] {
  const { voice } = page;
  const { id, at, who, strikes, struckBy } = entry;
  const inner = { ...page, columns: page.columns - 2 };
  const inset = (text: string) => paragraph(text, inner).map((line) => `  ${line}`);
  const told = toldText(entry, voice);
  return [
    page.ink.faint(`${timeText(at, voice)}  ${visible(who)}  ${id}`),
    ...inset(struckBy ? `~~${told}~~` : told).map(struckBy ? page.ink.faint : same),
    ...(signer === undefined ? [] : inset(voice.say('sign.after', { who: visible(signer) }))),
    ...(strikes
      ? inset(voice.say('job.strikes', { id: strikes.id, because: visible(strikes.because) }))
      : []),
    ...(struckBy
      ? inset(voice.say('job.struck', { id: struckBy.id, who: visible(struckBy.who) }))
      : []),
  ];
}

const same = (text: string) => text;
