import type { BuildTask } from '../../shop/build/index.ts';
import { startTold, type StepContext, stepTold } from '../../telling/narrative/index.ts';
import { words } from './words.ts';

/** "9. rear carrier", "9. rear carrier: check by hand", "First start: fluid". */
export function titleOf(task: BuildTask, context: StepContext): string {
  const say = words();
  if (task.what === 'start') return say.startTitle(startTold(task.start, context.voice).title);
  const title = `${task.step.number}. ${stepTold(task.step, context).title}`;
  return task.what === 'do' ? title : `${title}: ${say.what[task.what]}`;
}
