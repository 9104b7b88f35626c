import { FIRST_START } from '../../shop/firststart/index.ts';
import { lengthText, startTold, stepTold, visible } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { FoundFaulty, GoesOn } from '../strip/index.ts';
import { WordButton } from '../handsfree/index.ts';
import { stand, voiceNow } from '../words/index.ts';
import type { Building } from './building.ts';
import { Caution } from './caution.tsx';
import { HandCheck } from './handcheck.tsx';
import { LeftOpen } from './leftopen.tsx';
import { Measured } from './measured.tsx';
import { Sound } from './sound.tsx';
import { Stop } from './stop.tsx';
import { TakeUp } from './takeup.tsx';
import type { BodyProps, TaskProps } from './taskprops.ts';
import { titleOf } from './told.ts';
import { words } from './words.ts';

/** One thing on the screen: what it is, and what a thumb answers. */
export function Task({ building, task }: TaskProps) {
  const say = words();
  const [train, { plan }] = [building.train.value, building];
  if (!train || !plan) return null;
  const context = { train, plan, voice: voiceNow(), stand: stand.value };
  const isNext = building.next.value?.key === task.key;
  const parts = FIRST_START.length;
  return (
    <section
      class={`build-task build-${task.what}`}
      aria-labelledby="build-title"
      data-task={task.key}
    >
      <p class="aside" role="status">
        {task.what === 'start'
          ? say.startCount(FIRST_START.indexOf(task.start) + 1, parts)
          : say.count(task.step.number, plan.steps.length)}
      </p>
      <h2 id="build-title" tabIndex={-1}>
        {titleOf(task, context)}
      </h2>
      <Body building={building} task={task} context={context} isNext={isNext} />
      {!isNext && <Past building={building} task={task} />}
      {!isNext && <TakeUp building={building} task={task} />}
      <Beside building={building} />
    </section>
  );
}

function Body(props: BodyProps) {
  const { task } = props;
  switch (task.what) {
    case 'do':
      return <Doing {...props} />;
    case 'sound':
      return <Sound {...props} step={task.step} />;
    case 'check':
      return <HandCheck {...props} step={task.step} check={task.check} />;
    case 'stop':
      return <Stop {...props} step={task.step} />;
    case 'start': {
      const { voice } = props.context;
      const { title, caution, text } = startTold(task.start, voice);
      return (
        <>
          <p class="aside">{voice.say('start.practice')}</p>
          {caution !== undefined && <Caution text={caution} />}
          <LeftOpen building={props.building} />
          <p class="build-ask">{text}</p>
          <Go {...props} said={title} />
        </>
      );
    }
  }
}

// A step itself: what is looked at, counted, done; one press says that all of it is.
function Doing(props: BodyProps) {
  const say = words();
  const { building, task, context } = props;
  if (task.what !== 'do') return null;
  const { step } = task;
  const its = stepTold(step, context);
  const thing = building.measured(step);
  const size = building.sizeAt(step);
  const ticks = step.does === 'air check' ? [] : its.ticks;
  const faulty = props.isNext ? building.faulty(task) : undefined;
  return (
    <>
      <FoundFaulty standing={faulty} />
      {its.caution !== undefined && <Caution text={its.caution} />}
      {its.how.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {size && (
        <p class="build-stands">
          {'taken' in size
            ? say.taken(visible(size.taken))
            : say.fits(lengthText(size.fits, context.voice))}
        </p>
      )}
      {ticks.length > 0 && (
        <ul class="build-ticks">
          {ticks.map((tick) => (
            <li key={tick}>{tick}</li>
          ))}
        </ul>
      )}
      {faulty ? (
        <div class="row build-answers">
          <GoesOn main onAgain={(again) => void building.fit(task, again, its.title)} />
        </div>
      ) : thing ? (
        <Measured {...props} thing={thing} said={its.title} />
      ) : (
        <Go {...props} said={its.title} />
      )}
    </>
  );
}

function Go({ building, task, isNext, said }: BodyProps & { readonly said: string }) {
  const say = words();
  if (!isNext) return null;
  return (
    <div class="row build-answers">
      <WordButton word="next" main onPress={() => void building.answer(task.key, 'done', said)}>
        {say.done}
      </WordButton>
    </div>
  );
}

// What was answered, and the ways back from it.
function Past({ building, task }: TaskProps) {
  const say = words();
  const its = building.answered.value.get(task.key);
  const next = building.next.value;
  return (
    <div class="build-past">
      {its ? (
        <p role="status">{say.written(its.outcome, visible(its.said), visible(its.entry.who))}</p>
      ) : (
        <p>{say.notYet}</p>
      )}
      <div class="row">
        {next && (
          <LargeButton main onPress={() => building.show()}>
            {say.toNext}
          </LargeButton>
        )}
        {its && task.what !== 'start' && (
          <LargeButton onPress={() => void building.takeOff(task.step.number, say.asked)}>
            {say.takeOff(task.step.number)}
          </LargeButton>
        )}
      </div>
    </div>
  );
}

function Beside({ building }: { readonly building: Building }) {
  const say = words();
  const [before, after] = [building.beside(-1), building.beside(1)];
  return (
    <div class="row build-beside">
      {before && (
        <LargeButton onPress={() => building.show(before.key)}>‹ {say.before}</LargeButton>
      )}
      {after && <LargeButton onPress={() => building.show(after.key)}>{say.after} ›</LargeButton>}
    </div>
  );
}
