import { useEffect, useRef } from 'preact/hooks';
import { voiceOf } from '../../telling/narrative/index.ts';
import { LargeButton, Tiles } from '../controls/index.ts';
import { language } from '../words/index.ts';
import type { Asked, Countable, Inquiry } from './asking.ts';
import { Control } from './control.tsx';
import { type Guide, progressOf } from './guide.ts';
import { questionOf, questions } from './questions.ts';
import { words } from './words.ts';

interface Props {
  readonly guide: Guide;
}

/** The one question of the moment, in large type, with what may be said to it. */
export function Ask({ guide }: Props) {
  const asked = guide.asked.value;
  const place = useRef<HTMLDivElement>(null);
  const begun = useRef(false);
  const key = keyOf(asked, guide.prompt.value?.key);
  // After an answer the hand goes on where it was; at first the page is not scrolled to it.
  useEffect(() => {
    if (begun.current) {
      const goal = 'input:not([type=radio]), [aria-pressed=true], .tiles button';
      const form = place.current;
      const next = form?.querySelector<HTMLElement>(goal) ?? form?.querySelector('button');
      next?.focus({ preventScroll: true });
      // The question stands above what is in focus.
      if ((form?.getBoundingClientRect().top ?? 0) < 0) form?.scrollIntoView({ block: 'start' });
      else next?.scrollIntoView({ block: 'nearest' });
    }
    begun.current = true;
  }, [key]);
  return (
    <div class="describe-ask" ref={place} key={key}>
      {asked.ask === 'about' && <Round guide={guide} inquiry={asked.inquiry} />}
      {asked.ask === 'more' && <More guide={guide} of={asked.of} />}
      {asked.ask === 'nothing' && <Finished />}
    </div>
  );
}

function Round({ guide, inquiry }: Props & { readonly inquiry: Inquiry }) {
  const say = words();
  const ask = questions();
  const [prompt, train] = [guide.prompt.value, guide.train.value];
  if (!prompt || !train) return null;
  const voice = voiceOf(language.value);
  const it = aboutWhat(inquiry, (name) => voice.name(name));
  const kind = prompt.key === 'first' ? `${inquiry.answers.get('kind')}` : inquiry.topic;
  const { question, hint } = questionOf(ask, prompt.key, kind, it);
  const [at, of] = progressOf(inquiry, train);
  const settles = inquiry.topic === 'join' ? inquiry.member : undefined;
  const refused = guide.refused.value;
  return (
    <form
      aria-labelledby="describe-question"
      onSubmit={(event) => event.preventDefault()}
      noValidate
    >
      <p class="describe-progress">
        {of > 1 && `${say.progress(at, of)} · `}
        {inquiry.changes?.name ?? say.topics[inquiry.topic]}
      </p>
      <h2 id="describe-question" class="describe-question">
        {question}
      </h2>
      {hint !== '' && <p class="describe-hint">{hint}</p>}
      <Control
        prompt={prompt}
        before={inquiry.before.get(prompt.key)}
        none={settles === undefined ? say.none : say.nothing}
        onAnswer={(said) => guide.answer(said)}
      />
      <p role="alert" class="describe-refused">
        {refused && say.refused[refused]}
      </p>
      {guide.canGoBack && (
        <div class="row">
          {inquiry.answers.size > 0 && (
            <button type="button" onClick={() => guide.back()}>
              {say.back}
            </button>
          )}
          <button type="button" onClick={() => guide.leave()}>
            {say.cancel}
          </button>
        </div>
      )}
    </form>
  );
}

function More({ guide, of }: Props & { readonly of: Countable }) {
  const say = words();
  return (
    <>
      <h2 class="describe-question">{say.anotherOne[of]}</h2>
      <Tiles>
        <LargeButton onPress={() => guide.add(of)}>{say.yes}</LargeButton>
        <LargeButton onPress={() => guide.settle(of)}>{say.no}</LargeButton>
      </Tiles>
    </>
  );
}

function Finished() {
  const say = words();
  return <h2 class="describe-question">{say.finished}</h2>;
}

// What the questions of a round speak of: the name of what is described, or the member.
function aboutWhat(inquiry: Inquiry, naming: (name: string) => string): string {
  const { topic, changes, member, answers } = inquiry;
  if (topic === 'join') return naming(member ?? '');
  if (topic === 'gear') {
    const within = changes?.thing === 'gear' ? changes.within : answers.get('range');
    return `${within ?? ''} ${changes?.name ?? answers.get('gear') ?? ''}`;
  }
  return `${changes?.name ?? answers.get('name') ?? ''}`;
}

function keyOf(asked: Asked, prompt: string | undefined): string {
  if (asked.ask === 'nothing') return 'nothing';
  if (asked.ask === 'more') return `more ${asked.of}`;
  const { topic, member, changes } = asked.inquiry;
  return [topic, member, changes?.name, prompt].join('\n');
}
