import { sentences } from '../../../telling/narrative/index.ts';
import type { Build } from '../bench/index.ts';
import { language } from '../words.ts';
import { words } from './words.ts';

/** The engine's reasons for what the build does, in the order in which the load travels. */
export function Why({ build }: { readonly build: Build }) {
  const say = words();
  const facts = build.answer.value?.facts ?? [];
  return (
    <div class="why">
      <h2>{say.why}</h2>
      <ol>
        {sentences(facts, language.value).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ol>
    </div>
  );
}
