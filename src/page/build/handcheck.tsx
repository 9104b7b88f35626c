import { useState } from 'preact/hooks';
import type { Felt, PlannedCheck, Step } from '../../engine/plan/index.ts';
import { feltText, seenFrom, stepTold } from '../../telling/narrative/index.ts';
import { LargeButton, Tiles } from '../controls/index.ts';
import { WordButton } from '../handsfree/index.ts';
import { stand, voiceNow } from '../words/index.ts';
import { HalfBuilt } from './halfbuilt.tsx';
import { TakeBack } from './takeback.tsx';
import { Caution } from './caution.tsx';
import type { BodyProps } from './taskprops.ts';
import { words } from './words.ts';

const FELTS: readonly Felt[] = ['both ways', 'clockwise only', 'anticlockwise only', 'neither way'];

interface Props extends BodyProps {
  readonly step: Step;
  readonly check: PlannedCheck;
}

/** A check by hand: what to hold and turn, shown as it should feel; what another feel means. */
export function HandCheck({ building, task, context, isNext, step, check }: Props) {
  const say = words();
  const [other, feel] = useState(false);
  const { checks, caution } = stepTold(step, context);
  const told = checks[Number(task.key.split('.')[1]) - 1];
  const answered = building.answered.value.get(task.key);
  const wrong = answered?.outcome === 'wrong' ? answered : undefined;
  if (!told) return null;
  const saidOf = (felt: Felt) => `${told.ask} ${feltText(felt, voiceNow(), stand.value)}`;
  // What was written in another language, or seen from the other end, is asked again.
  const felt = FELTS.find((its) => wrong?.said === building.written(saidOf(its)));
  const answer = (its: Felt) => {
    feel(false);
    void building.answer(task.key, its === check.right ? 'right' : 'wrong', saidOf(its));
  };
  const mistakes = check.wrong.find((its) => its.felt === felt)?.mistakes ?? [];
  return (
    <div class="build-check">
      <div class="build-work">
        {step.does === 'air check' && caution !== undefined && <Caution text={caution} />}
        <p class="build-ask">{told.ask}</p>
        <p class="aside">{say.seen(seenFrom(stand.value, context.voice))}</p>
        <p class="build-right">{context.voice.say('plan.right', { felt: told.right })}</p>
        {isNext && !other && (
          <div class="row build-answers">
            <WordButton word="right" main onPress={() => answer(check.right)}>
              {wrong ? say.rightNow : say.right}
            </WordButton>
            <WordButton word="wrong" onPress={() => feel(true)}>
              {say.wrong}
            </WordButton>
          </div>
        )}
        {isNext && other && (
          <>
            <h3>{say.whatDidIt}</h3>
            <Tiles>
              {FELTS.filter((its) => its !== check.right).map((its) => (
                <LargeButton key={its} onPress={() => answer(its)}>
                  {say.it} {feltText(its, voiceNow(), stand.value)}
                </LargeButton>
              ))}
              <LargeButton other onPress={() => feel(false)}>
                {say.rightAfterAll}
              </LargeButton>
            </Tiles>
          </>
        )}
        {isNext && wrong && !other && (
          <>
            <p class="build-felt" role="alert">
              {say.felt(felt === undefined ? wrong.said : feltText(felt, voiceNow(), stand.value))}
            </p>
            <TakeBack building={building} context={context} mistakes={mistakes} />
          </>
        )}
      </div>
      <HalfBuilt building={building} step={step} check={check} />
    </div>
  );
}
