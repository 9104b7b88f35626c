import { lastSeen } from '../../engine/plan/index.ts';
import {
  mistakeText,
  startTold,
  type StepContext,
  stepTold,
} from '../../telling/narrative/index.ts';
import type { BuildTask } from '../../shop/build/index.ts';
import { titleOf } from './told.ts';
import { words } from './words.ts';

/** What stands on the screen of a task, as it is read aloud: a line a sentence. */
export function aloudOf(task: BuildTask, context: StepContext): readonly string[] {
  const say = words();
  const { train, plan, voice } = context;
  const title = titleOf(task, context);
  if (task.what === 'start') {
    const { caution, text } = startTold(task.start, voice);
    return [title, ...(caution === undefined ? [] : [caution]), text];
  }
  const { step } = task;
  const { caution, how, ticks, heard, checks } = stepTold(step, context);
  const care = caution === undefined ? [] : [caution];
  switch (task.what) {
    case 'do':
      return [title, ...care, ...how, ...(step.does === 'air check' ? [] : ticks)];
    case 'sound':
      return [title, ...care, say.heard, ...heard];
    case 'check': {
      const told = checks[Number(task.key.split('.')[1]) - 1];
      return told ? [title, told.ask, voice.say('plan.right', { felt: told.right })] : [title];
    }
    case 'stop': {
      const watched = lastSeen(plan, step);
      const names = watched.map(({ mistake }) => mistakeText(mistake, train, voice));
      return [say.lookNow, ...names, say.byPress];
    }
  }
}
