import { useMemo } from 'preact/hooks';
import { problemText } from '../../telling/narrative/index.ts';
import type { Study } from '../study/index.ts';
import { type Warned, warningsOf } from '../warnings/index.ts';
import { voiceNow } from '../words/index.ts';
import type { Guide } from './guide.ts';
import { words } from './words.ts';

interface Props {
  readonly study: Study;
  readonly guide: Guide;
}

/** What looks odd since the last answer, told where the next question stands. */
export function Brought({ study, guide }: Props) {
  const say = words();
  const [last, all] = [guide.last.value, warningsOf(study)];
  // They come a moment after the answer: those at hand are of the text before it.
  const before = useMemo(() => new Set(textsOf(all.peek())), [last, all]);
  const isDone = guide.asked.value.ask === 'nothing';
  const now = all.value.filter(({ warning }) => isDone || !MISSED.has(warning.problem));
  const isOurs = last?.after === study.file.text.value;
  const fresh = isOurs ? textsOf(now).filter((text) => !before.has(text)) : [];
  return (
    <div role="status">
      {fresh.length > 0 && (
        <section class="describe-mistakes" aria-label={say.brought}>
          <p>{say.brought}</p>
          <ul>
            {fresh.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}

function textsOf(warnings: readonly Warned[]): string[] {
  return warnings.map(({ warning }) => problemText(warning, voiceNow()));
}

/** Warnings of what is still missing, while it is described. */
export const MISSED: ReadonlySet<string> = new Set([
  'set stands alone',
  'member carries nothing',
  'device never applied',
]);
