import { voiceOf } from '../../telling/narrative/index.ts';
import type { Session } from './session.ts';

/** Does what may take long, and tells whoever waits how far it is; `work` may count. */
export function patiently<Answer>(
  { world, language }: Pick<Session, 'world' | 'language'>,
  work: (tell: (done: number, all: number) => void) => Answer,
): Answer {
  const voice = voiceOf(language);
  const line = (is: 'plain' | 'counted') => {
    return `holdturn: ${voice.say('working', { is, seconds: 'SECONDS', done: 'DONE', all: 'ALL' })}`;
  };
  const waiting = world.waiting?.({ plain: line('plain'), counted: line('counted') });
  try {
    return work(waiting?.tell ?? (() => {}));
  } finally {
    waiting?.stop();
  }
}
