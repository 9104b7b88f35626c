import type { Session } from './session.ts';

/**
 * Does what may take long, and tells whoever waits how far it is; `work` may count, and asks with
 * `within`, where nothing else speaks.
 */
export function patiently<Answer>(
  session: Session,
  work: (tell: (done: number, all: number) => void, within: Session) => Answer,
): Answer {
  const { page, world } = session;
  const { voice } = page;
  const line = (is: 'plain' | 'counted') => {
    return `holdturn: ${voice.say('working', { is, seconds: 'SECONDS', done: 'DONE', all: 'ALL' })}`;
  };
  const { waiting: wait, ...others } = world;
  const waiting = wait?.({ plain: line('plain'), counted: line('counted') });
  try {
    return work(waiting?.tell ?? (() => {}), { ...session, world: others });
  } finally {
    waiting?.stop();
  }
}
