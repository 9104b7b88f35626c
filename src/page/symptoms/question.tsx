import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { TestQuestion as Asked } from '../../asking/faults/index.ts';
import { baseText, type Test, testText } from '../../engine/sight/index.ts';
import { barText, keyOf, observationText, testName } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { voiceNow } from '../words/index.ts';
import { Answers } from './answers.tsx';
import { useQuestion } from './asked.ts';
import { Conditions, type Under } from './conditions.tsx';
import type { Enquiry } from '../enquiry/index.ts';
import { Speed } from './speed.tsx';
import { standingOf } from '../enquiry/index.ts';
import { words } from './words.ts';

interface Props {
  readonly enquiry: Enquiry;
  /** A test by its name in a file; or what is proposed next, if anything is. */
  readonly test?: string;
  readonly next?: Test | undefined;
}

/** One question: what is made, what it takes, what it may show, and what each of that would leave. */
export function Question({ enquiry, test, next }: Props) {
  const say = words();
  const proposed = test === undefined;
  const named = test ?? (next && testText(next));
  const asked = useQuestion(enquiry, named);
  const question = asked.value;
  const found = enquiry.found.value;
  if (proposed && found && !found.advice.best && !enquiry.working.value) {
    return (
      <section class="symptoms-card">
        <p>{say.none}</p>
        <Ways enquiry={enquiry} />
      </section>
    );
  }
  if (!question || named === undefined) return <p role="status">{say.working}</p>;
  const reread = proposed && (found?.advice.again ?? 0) > 0;
  const enough = proposed && !reread && found?.ranking.enough && found.advice.first === 0;
  const over = reread ? say.reread : found?.advice.first ? say.first : say.next;
  return (
    <section class="symptoms-card" aria-labelledby="test-asked" aria-busy={enquiry.working.value}>
      {enough && <p class="symptoms-enough">{say.enough}</p>}
      <p class="symptoms-over">{proposed ? over : ''}</p>
      <Card key={named} enquiry={enquiry} question={question} named={named} />
      <Ways enquiry={enquiry} skip={named} />
    </section>
  );
}

interface CardProps {
  readonly enquiry: Enquiry;
  readonly question: Asked;
  readonly named: string;
}

function Card({ enquiry, question, named }: CardProps) {
  const say = words();
  const voice = voiceNow();
  const { test, stop, minutes, opening, risk, with: tool } = question;
  const under = useSignal<Under>({});
  const unsure = useSignal(false);
  // Each question stands where the one before it stood.
  useEffect(() => document.getElementById('test-asked')?.focus({ preventScroll: true }), [named]);
  const before = standingOf(baseText(test), enquiry.found.value?.observations ?? []);
  const give = (saw: string) => {
    const { load, heat, speed } = under.value;
    const text = [baseText(test), load, speed, heat].filter((word) => word).join(' ');
    void enquiry.answer(text, `${saw}${unsure.value ? ', not sure' : ''}`);
  };
  return (
    <>
      <h2 id="test-asked" class="symptoms-question" tabIndex={-1}>
        {testName(test, voice)}
      </h2>
      <p class="symptoms-cost">
        {say.minutes(minutes, opening)} · {voice.say('next.with', { tool: keyOf(tool) })} ·{' '}
        {say.risk} <b>{voice.say('risk', { risk })}</b>
      </p>
      {stop ? (
        <p class="symptoms-stop">
          <b>
            {say.stopped} {barText(stop, voice)}.
          </b>{' '}
          {say.seenAlready}
        </p>
      ) : (
        <p class="symptoms-caution">{voice.say(`caution.${test.test}`)}</p>
      )}
      {before.length > 0 && (
        <p>
          {say.struckBefore} {before.map((one) => observationText(one, voice)).join('; ')}
        </p>
      )}
      <Conditions test={test} under={under} />
      <h3>{say.whatSeen}</h3>
      <div class="row symptoms-sure" role="group" aria-label={say.howSure}>
        <span>{say.howSure}</span>
        <LargeButton pressed={!unsure.value} onPress={() => (unsure.value = false)}>
          {say.sure}
        </LargeButton>
        <LargeButton pressed={unsure.value} onPress={() => (unsure.value = true)}>
          {say.notSure}
        </LargeButton>
      </div>
      <Answers question={question} give={give} />
      {test.test === 'under power' && (
        <div class="row">
          <Speed give={give} />
        </div>
      )}
    </>
  );
}

function Ways({ enquiry, skip }: { readonly enquiry: Enquiry; readonly skip?: string }) {
  const say = words();
  return (
    <div class="row symptoms-ways">
      <LargeButton disabled={!enquiry.canGoBack.value} onPress={() => enquiry.back()}>
        {say.back}
      </LargeButton>
      {skip !== undefined && (
        <LargeButton
          onPress={() => {
            enquiry.skip(skip);
            if (enquiry.screen.value.at !== 'next') enquiry.go({ at: 'next' });
          }}
        >
          {say.skip}
        </LargeButton>
      )}
      <LargeButton other onPress={() => enquiry.go({ at: 'tests' })}>
        {say.others}
      </LargeButton>
    </div>
  );
}
