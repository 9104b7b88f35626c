import { standAt } from '../../asking/request/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { voiceOf } from '../../telling/narrative/index.ts';
import type { Session } from './session.ts';

/** The session in the words in which the file of a train calls its things in the reader's language. */
export function speakingOf(train: Train, session: Session): Session {
  const { page } = session;
  return { ...session, page: { ...page, voice: voiceOf(page.voice.language, train) } };
}

/** The same, with the reader where --seen-from says, which may call an end by its own name. */
export function lookingAt(train: Train, session: Session): Session {
  const stand = standAt(train, session.options.seenFrom);
  const { page } = speakingOf(train, session);
  return { ...session, page: { ...page, stand } };
}
