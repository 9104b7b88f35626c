import { useState } from 'preact/hooks';
import { LargeButton, NameEntry } from '../controls/index.ts';
import type { TaskProps } from './taskprops.ts';
import { words } from './words.ts';

/** A unit that is half-built is taken up at the step at which it stands, with the reason. */
export function TakeUp({ building, task }: TaskProps) {
  const say = words();
  const [asks, ask] = useState(false);
  if (task.what !== 'do' || building.isPassed(task.key)) return null;
  if (!asks) {
    return (
      <div class="row">
        <LargeButton onPress={() => ask(true)}>{say.standsSo}</LargeButton>
      </div>
    );
  }
  const because = (why: string) => void building.takeUp(task, why);
  return (
    <section class="build-back" aria-label={say.whySo}>
      <h3>{say.whySo}</h3>
      <p>{say.stopsFirst}</p>
      <div class="row">
        {say.reasons.map((why) => (
          <LargeButton key={why} onPress={() => because(why)}>
            {why}
          </LargeButton>
        ))}
      </div>
      <NameEntry label={say.otherReason} onName={because} />
      <div class="row">
        <LargeButton other onPress={() => ask(false)}>
          {say.notSo}
        </LargeButton>
      </div>
    </section>
  );
}
