import { useMemo } from 'preact/hooks';
import type { Fact } from '../../engine/flow/index.ts';
import { sentences } from '../../telling/narrative/index.ts';
import type { Study, Build } from '../study/index.ts';
import { language, stand, voiceNow } from '../words/index.ts';
import { Proof } from './proof.tsx';
import { isAbout, subjectsOf } from './subjects.ts';
import { words } from './words.ts';
import './why.css';

interface Props {
  readonly study: Study;
  readonly build: Build;
}

/**
 * The engine's reasons for what the build does, in the order in which the load travels. Each
 * lights what it speaks of, is lit by it, and opens to its proof.
 */
export function Why({ study, build }: Props) {
  const say = words();
  const facts = build.answer.value?.facts ?? [];
  const told = useMemo(
    () => sentences(facts, voiceNow(), stand.value),
    [facts, language.value, stand.value],
  );
  return (
    <section class="why" aria-label={build === study.wrong ? say.whyWrong : say.why}>
      <h2>{say.why}</h2>
      <ol>
        {facts.map((fact, i) => (
          <Reason key={told[i]} study={study} build={build} fact={fact} says={told[i] ?? ''} />
        ))}
      </ol>
    </section>
  );
}

function Reason({
  study,
  build,
  fact,
  says,
}: Props & { readonly fact: Fact; readonly says: string }) {
  const say = words();
  const assembly = build.assembly.value;
  const subjects = subjectsOf(fact, assembly);
  const [first] = subjects;
  const pointed = study.pointed.value;
  const lit = pointed !== undefined && subjects.some((subject) => isAbout(subject, pointed));
  const light = (on: boolean) => (study.pointed.value = on ? first : undefined);
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
