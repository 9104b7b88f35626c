import { standAt } from '../../asking/request/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Session } from './session.ts';

/** The session with the reader where --seen-from says, which may call an end by its own name. */
export function lookingAt(train: Train, session: Session): Session {
  const stand = standAt(train, session.options.seenFrom);
  return { ...session, page: { ...session.page, stand } };
}
