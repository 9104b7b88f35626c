import type { Problem } from '../../engine/yaml/index.ts';
import { problemText, type Objection, visible } from '../narrative/index.ts';
import { type Page, paragraph } from '../text/index.ts';

/** A line a problem, "file:line:column: error: …", as editors read them, and the count. */
export function checkText(name: string, problems: readonly Objection[], page: Page): string {
  const file = visible(name);
  const { voice } = page;
  const lines = problems.flatMap((problem) => {
    const { severity, place } = problem;
    const ink = severity === 'error' ? page.ink.bad : page.ink.odd;
    const word = voice.say('severity', { severity });
    const text = `${word}: ${problemText(problem, page.voice)}`;
    const [first = '', ...rest] = paragraph(
      `${file}:${place.line}:${place.column}: ${text}`,
      page,
      '  ',
    );
    return [first.replace(`: ${word}: `, `: ${ink(word)}: `), ...rest];
  });
  const count = (severity: Problem['severity']) =>
    problems.filter((problem) => problem.severity === severity).length;
  const summary = { file, errors: count('error'), warnings: count('warning') };
  return [...lines, ...paragraph(voice.say('check.summary', summary), page)].join('\n');
}
