import { useMemo } from 'preact/hooks';
import { paintStickDiagram } from '../../telling/stickdiagram/index.ts';
import { layoutOf } from '../diagram/index.ts';
import { Drawing } from '../figure/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';

/** What is described so far, small beneath the question where the large drawing is out of sight. */
export function Sketch({ study }: { readonly study: Study }) {
  const train = study.file.train.value;
  const voice = voiceNow();
  const scene = useMemo(() => {
    return train && paintStickDiagram(layoutOf(train, voice));
  }, [train, voice]);
  if (!scene) return null;
  return (
    <div class="describe-sketch">
      <Drawing scene={scene} />
    </div>
  );
}
