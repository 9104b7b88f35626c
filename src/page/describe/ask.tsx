import { useEffect, useRef } from 'preact/hooks';
import {
  anotherText,
  noneText,
  questionOf,
  topicText,
  wrongText,
} from '../../telling/questions/index.ts';
import { LargeButton, Tiles } from '../controls/index.ts';
import type { Study } from '../study/index.ts';
import { language, voiceNow } from '../words/index.ts';
import type { Asked, Countable, Inquiry } from '../../asking/describe/index.ts';
import { Control } from './control.tsx';
import { Add } from './add.tsx';
import { Brought } from './brought.tsx';
import { type Guide, progressOf } from './guide.ts';
import { words } from './words.ts';

interface Props {
  readonly guide: Guide;
}

type Place = Props & { readonly study: Study };

/** The one question of the moment, in large type, with what may be said to it. */
export function Ask({ study, guide }: Place) {
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
      <Brought study={study} guide={guide} />
      {asked.ask === 'about' && <Round guide={guide} inquiry={asked.inquiry} />}
      {asked.ask === 'more' && <More guide={guide} of={asked.of} />}
      {asked.ask === 'nothing' && <Finished guide={guide} />}
    </div>
  );
}

function Round({ guide, inquiry }: Props & { readonly inquiry: Inquiry }) {
  const say = words();
  const [prompt, train] = [guide.prompt.value, guide.train.value];
  if (!prompt || !train) return null;
  const { question, hint } = questionOf(inquiry, prompt, voiceNow());
  const [at, of] = progressOf(inquiry, train);
  const wrong = guide.wrong.value;
  const its = inquiry.changes?.name ?? '';
  return (
    <form
      aria-labelledby="describe-question"
      onSubmit={(event) => event.preventDefault()}
      noValidate
    >
      <p class="describe-progress">
        {of > 1 && `${say.progress(at, of)} · `}
        {its === '' ? topicText(inquiry, language.value) : voiceNow().called(its)}
      </p>
      <h2 id="describe-question" class="describe-question">
        {question}
      </h2>
      {hint !== '' && <p class="describe-hint">{hint}</p>}
      <Control
        prompt={prompt}
        before={inquiry.before.get(prompt.key)}
        none={noneText(inquiry, prompt, language.value)}
        onAnswer={(said) => guide.answer(said)}
      />
      <p role="alert" class="describe-refused">
        {wrong && wrongText(wrong, language.value)}
      </p>
      <Back guide={guide} />
    </form>
  );
}

function More({ guide, of }: Props & { readonly of: Countable }) {
  const say = words();
  return (
    <>
      <h2 class="describe-question">{anotherText(of, language.value)}</h2>
      <Tiles>
        <LargeButton onPress={() => guide.add(of)}>{say.yes}</LargeButton>
        <LargeButton onPress={() => guide.settle(of)}>{say.no}</LargeButton>
      </Tiles>
      <Back guide={guide} />
    </>
  );
}

function Finished({ guide }: Props) {
  const say = words();
  return (
    <>
      <h2 class="describe-question">{say.finished}</h2>
      <Back guide={guide} />
      {guide.train.value && <Add guide={guide} train={guide.train.value} />}
    </>
  );
}

/** An answer back, also into the round that was written last; and out of a round that is begun. */
function Back({ guide }: Props) {
  const say = words();
  return (
    <div class="row">
      {guide.canGoBack && (
        <LargeButton other onPress={() => guide.back()}>
          {say.back}
        </LargeButton>
      )}
      {guide.begun.value && (
        <LargeButton other onPress={() => guide.leave()}>
          {say.cancel}
        </LargeButton>
      )}
    </div>
  );
}

function keyOf(asked: Asked, prompt: string | undefined): string {
  if (asked.ask === 'nothing') return 'nothing';
  if (asked.ask === 'more') return `more ${asked.of}`;
  const { topic, member, section, changes } = asked.inquiry;
  return [topic, member, section, changes?.name, prompt].join('\n');
}
