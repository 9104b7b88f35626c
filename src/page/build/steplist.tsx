import { voiceNow } from '../words/index.ts';
import type { Building } from './building.ts';
import { titleOf } from './told.ts';
import { words } from './words.ts';

/** All that is done in the build, in order, and how far it is. */
export function StepList({ building }: { readonly building: Building }) {
  const say = words();
  const [train, { plan, tasks }] = [building.train.value, building];
  if (!train || !plan) return null;
  const at = building.task.value?.key;
  const open = building.next.value;
  const end = open ? tasks.indexOf(open) : tasks.length;
  const context = { train, plan, voice: voiceNow() };
  return (
    <details class="build-list">
      <summary>{say.all}</summary>
      <ol>
        {tasks.map((task, i) => (
          <li key={task.key}>
            <button
              type="button"
              aria-current={task.key === at ? 'step' : undefined}
              onClick={() => building.show(task.key)}
            >
              {titleOf(task, context)}{' '}
              <span class="aside">{i < end ? say.isDone : i === end ? say.isNext : ''}</span>
            </button>
          </li>
        ))}
      </ol>
    </details>
  );
}
