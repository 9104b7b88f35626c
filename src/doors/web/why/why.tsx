import { useMemo } from 'preact/hooks';
import type { Fact } from '../../../engine/flow/index.ts';
import { sentences } from '../../../telling/narrative/index.ts';
import type { Bench, Build } from '../bench/index.ts';
import { language, stand } from '../words.ts';
import { Proof } from './proof.tsx';
import { isAbout, subjectsOf } from './subjects.ts';
import { words } from './words.ts';
import './why.css';

interface Props {
  readonly bench: Bench;
  readonly build: Build;
}

/**
 * The engine's reasons for what the build does, in the order in which the load travels. Each
 * lights what it speaks of, is lit by it, and opens to its proof.
 */
export function Why({ bench, build }: Props) {
  const say = words();
  const facts = build.answer.value?.facts ?? [];
  const told = useMemo(
    () => sentences(facts, language.value, stand.value),
    [facts, language.value, stand.value],
  );
  return (
    <section class="why" aria-label={build === bench.wrong ? say.whyWrong : say.why}>
      <h2>{say.why}</h2>
      <ol>
        {facts.map((fact, i) => (
          <Reason key={told[i]} bench={bench} build={build} fact={fact} says={told[i] ?? ''} />
        ))}
      </ol>
    </section>
  );
}

function Reason({
  bench,
  build,
  fact,
  says,
}: Props & { readonly fact: Fact; readonly says: string }) {
  const say = words();
  const assembly = build.assembly.value;
  const subjects = subjectsOf(fact, assembly);
  const [first] = subjects;
  const pointed = bench.pointed.value;
  const lit = pointed !== undefined && subjects.some((subject) => isAbout(subject, pointed));
  const light = (on: boolean) => (bench.pointed.value = on ? first : undefined);
  return (
    <li class={lit ? 'why-lit' : ''}>
      <details>
        <summary
          title={say.proof}
          onPointerEnter={() => light(true)}
          onPointerLeave={() => light(false)}
          onFocus={() => light(true)}
          onBlur={() => light(false)}
        >
          {says}
        </summary>
        <Proof build={build} subjects={subjects} />
      </details>
    </li>
  );
}
