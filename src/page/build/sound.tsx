import type { Step } from '../../engine/plan/index.ts';
import { stepTold } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { WordButton } from '../handsfree/index.ts';
import { Caution } from './caution.tsx';
import type { BodyProps } from './taskprops.ts';
import { TakeBack } from './takeback.tsx';
import { words } from './words.ts';

/** What was heard with the air on: a thud is right. */
export function Sound({
  building,
  task,
  context,
  isNext,
  step,
}: BodyProps & { readonly step: Step }) {
  const say = words();
  const { heard, ticks, caution, catches } = stepTold(step, context);
  const [thud = '', ...others] = heard;
  const wrong = building.answered.value.get(task.key)?.outcome === 'wrong';
  const caught = context.plan.mistakes.filter(({ caught: its }) => {
    return its.step === step.number && its.by === 'air check';
  });
  return (
    <>
      {caution !== undefined && <Caution text={caution} />}
      <p class="build-ask">{say.heard}</p>
      {ticks.map((tick) => (
        <p key={tick}>{tick}</p>
      ))}
      {isNext && (
        <div class="row build-answers">
          <WordButton
            word="right"
            main
            onPress={() => void building.answer(task.key, 'right', thud)}
          >
            {thud}
          </WordButton>
          {others.map((sound) => (
            <LargeButton key={sound} onPress={() => void building.answer(task.key, 'wrong', sound)}>
              {sound}
            </LargeButton>
          ))}
        </div>
      )}
      {wrong && isNext && (
        <>
          {catches.map((line) => (
            <p key={line}>{line}</p>
          ))}
          <TakeBack
            building={building}
            context={context}
            mistakes={caught.map((its) => its.mistake)}
          />
        </>
      )}
    </>
  );
}
