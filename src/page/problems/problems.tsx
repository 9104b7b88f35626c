import { problemText } from '../../telling/narrative/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';
import './problems.css';

/**
 * What keeps the text from being a train, each with its place. The drawing beside it stays that
 * of the last text that was one.
 */
export function Problems({ study }: { readonly study: Study }) {
  const say = words();
  const { file } = study;
  const { train, problems } = file.reading.value;
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (errors.length === 0 || file.text.value === '') return null;
  return (
    <section class="problems" aria-label={say.title}>
      <p>
        <b>{say.count(errors.length)}</b> {!train && file.train.value ? say.before : ''}
      </p>
      <ul>
        {errors.slice(0, MOST).map((problem) => (
          <li key={`${problem.place.line}:${problem.place.column} ${problemText(problem)}`}>
            <span class="problems-place">{say.at(problem.place.line, problem.place.column)}</span>{' '}
            {problemText(problem, voiceNow())}
          </li>
        ))}
      </ul>
      {errors.length > MOST && <p class="aside">{say.more(errors.length - MOST)}</p>}
    </section>
  );
}

/** A page of mistakes helps nobody: the first lead to the rest. */
const MOST = 5;
