import { voiceNow } from '../words/index.ts';
import { useMemo } from 'preact/hooks';
import type { Question } from '../../shop/lessons/index.ts';
import { stickDiagram, paintStickDiagram } from '../../telling/stickdiagram/index.ts';
import type { Study } from '../study/index.ts';
import { Drawing } from '../figure/index.ts';

interface Props {
  readonly study: Study;
  readonly question: Question;
}

/** The train as it lies: nothing moves, and no mark tells what carries. */
export function HiddenAnswer({ study, question }: Props) {
  const train = study.file.train.value;
  const voice = voiceNow();
  const title = train && voice.train(train);
  const scene = useMemo(
    () =>
      train &&
      paintStickDiagram(
        stickDiagram(train, (name) => voice.called(name)),
        title,
      ),
    [train, voice],
  );
  const lit = new Set(question.subject.map(({ kind, name }) => `${kind} ${name}`));
  return (
    <div class="diagram lesson-hidden" tabIndex={0} role="group" aria-label={title}>
      {scene && (
        <Drawing scene={{ ...scene, marks: scene.marks.map((mark) => lightened(mark, lit)) }} />
      )}
    </div>
  );
}

type Mark = Parameters<typeof Drawing>[0]['scene']['marks'][number];

function lightened(mark: Mark, lit: ReadonlySet<string>): Mark {
  if (mark.mark !== 'group' || !mark.about) return mark;
  const asked = lit.has(`${mark.about.kind} ${mark.about.name}`);
  return asked ? { ...mark, look: `${mark.look ?? ''} diagram-lit` } : mark;
}
