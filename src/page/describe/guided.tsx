import { effect } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { Problem } from '../../engine/yaml/index.ts';
import { problemText } from '../../telling/narrative/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import { Ask } from './ask.tsx';
import { Guide } from './guide.ts';
import { keepHalfway } from './halfway.ts';
import { Sketch } from './sketch.tsx';
import { SoFar } from './sofar.tsx';
import { words } from './words.ts';

interface Props {
  readonly study: Study;
  readonly onPlace: (line: number, column: number) => void;
}

/** Describing a train by answering one plain question after another. */
export function Guided({ study, onPlace }: Props) {
  const guide = useMemo(() => new Guide(study.file), [study]);
  const file = study.file.name.value;
  useMemo(() => guide.arrive(), [guide, file]);
  useEffect(() => {
    return effect(() => {
      const [begun, settled] = [guide.begun.value, guide.settled.value];
      keepHalfway(study.file.text.value, { begun, settled });
    });
  }, [study, guide]);
  const train = guide.train.value;
  return (
    <div class="describe-guided">
      <div>
        <Mistakes guide={guide} onPlace={onPlace} />
        {train && <Ask study={study} guide={guide} />}
        {train && <Sketch study={study} />}
      </div>
      {train && <SoFar study={study} guide={guide} train={train} onPlace={onPlace} />}
    </div>
  );
}

/** What no question can mend: it leads to its place in the text. */
function Mistakes({ guide, onPlace }: Pick<Props, 'onPlace'> & { readonly guide: Guide }) {
  const say = words();
  const isBroken = !guide.train.value;
  const mistakes = guide.mistakes.value.slice(0, isBroken ? 1 : 3);
  if (mistakes.length === 0) return null;
  return (
    <section class="describe-mistakes" aria-label={say.wrong}>
      <p>{isBroken ? say.broken : say.wrong}</p>
      <ul>
        {mistakes.map((problem: Problem) => (
          <li key={`${problem.place.line} ${problemText(problem)}`}>
            <span class="aside">{say.place(problem.place.line)}</span>{' '}
            {problemText(problem, voiceNow())}{' '}
            <button type="button" onClick={() => onPlace(problem.place.line, problem.place.column)}>
              {say.inText}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
