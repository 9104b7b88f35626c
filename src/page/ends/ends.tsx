import { useComputed } from '@preact/signals';
import { endView } from '../../telling/endview/index.ts';
import type { Study, Build } from '../study/index.ts';
import { seenFrom, voiceNow } from '../words/index.ts';
import { EndFigure } from './endfigure.tsx';
import { words } from './words.ts';
import './ends.css';

/** Each set and gear pair of a build seen along its axis, its teeth in mesh, turning as it does. */
export function Ends({ study, build }: { readonly study: Study; readonly build: Build }) {
  const say = words();
  const views = useComputed(() => {
    const train = build.train.value;
    const names = [...(train?.sets ?? []), ...(train?.pairs ?? [])].map(({ name }) => name);
    return names.flatMap((name) => (train && endView(train, name, seenFrom.value)) ?? []);
  });
  if (views.value.length === 0) return null;
  return (
    <section class="ends" aria-label={say.title}>
      <h2>{say.title}</h2>
      <div class="ends-row">
        {views.value.map((view) => (
          <EndFigure key={view.name} study={study} build={build} view={view} />
        ))}
      </div>
      <p class="aside">{voiceNow().say('drawn.circles')}</p>
    </section>
  );
}
