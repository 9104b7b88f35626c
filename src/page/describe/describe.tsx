import { signal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { Study } from '../study/index.ts';
import { Guided } from './guided.tsx';
import { type Goal, TextWay } from './textway.tsx';
import { words } from './words.ts';
import './describe.css';

/** Which way a person describes their trains: it is kept while the page is open. */
const way = signal<'guided' | 'text'>('guided');

/** Two ways to one file: plain questions, or its text. */
export function Describe({ study }: { readonly study: Study }) {
  const say = words();
  const goal = useMemo(() => signal<Goal | undefined>(undefined), []);
  const show = (line: number, column: number) => {
    way.value = 'text';
    goal.value = { line, column };
  };
  return (
    <section class="describe" aria-label={say.title}>
      <div class="row">
        {(['guided', 'text'] as const).map((one) => (
          <button
            key={one}
            type="button"
            aria-pressed={way.value === one}
            onClick={() => (way.value = one)}
          >
            {say[one]}
          </button>
        ))}
      </div>
      {way.value === 'guided' ? (
        <Guided study={study} onPlace={show} />
      ) : (
        <TextWay study={study} goal={goal} />
      )}
    </section>
  );
}
