import { useMemo } from 'preact/hooks';
import type { Question } from '../../../shop/lessons/index.ts';
import { stickDiagram, paintStickDiagram } from '../../../telling/stickdiagram/index.ts';
import type { Bench } from '../bench/index.ts';
import { Drawing } from '../drawing.tsx';

interface Props {
  readonly bench: Bench;
  readonly question: Question;
}

/** The train as it lies on the bench: nothing moves, and no mark tells what carries. */
export function HiddenAnswer({ bench, question }: Props) {
  const train = bench.file.train.value;
  const scene = useMemo(() => train && paintStickDiagram(stickDiagram(train)), [train]);
  const lit = new Set(question.subject.map(({ kind, name }) => `${kind} ${name}`));
  return (
    <div class="plate lesson-hidden" tabIndex={0} role="group" aria-label={train?.name}>
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
  return asked ? { ...mark, look: `${mark.look ?? ''} plate-lit` } : mark;
}
