import type { MeasuredThing } from '../../asking/build/index.ts';
import { LargeButton } from '../controls/index.ts';
import { WordButton } from '../handsfree/index.ts';
import { send } from '../rooms/index.ts';
import type { BodyProps } from './taskprops.ts';
import { words } from './words.ts';

interface Props extends BodyProps {
  readonly thing: MeasuredThing;
  readonly said: string;
}

/** What is measured at a step: it is typed in its own room, and comes back here. */
export function Measured({ building, task, isNext, thing, said }: Props) {
  const say = words();
  const { kind, name, stands } = thing;
  const closed = stands === 'closed';
  const go = () => send({ to: 'measure', from: 'build', kind, name });
  const done = (its: string) => void building.answer(task.key, 'done', its);
  return (
    <>
      <p class="build-stands" role="status">
        {say.stands[stands]}
      </p>
      {isNext && (
        <div class="row build-answers">
          <LargeButton main={!closed} onPress={go}>
            {say.measure}
          </LargeButton>
          {closed ? (
            <WordButton word="next" main onPress={() => done(said)}>
              {say.done}
            </WordButton>
          ) : (
            <LargeButton onPress={() => done(`${said}: ${say.stands[stands]}`)}>
              {say.leaveOpen}
            </LargeButton>
          )}
        </div>
      )}
    </>
  );
}
