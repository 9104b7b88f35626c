import { askEndPlays } from '../../asking/build/index.ts';
import { endPlayJson } from '../../telling/data/index.ts';
import { endPlayText } from '../../telling/report/index.ts';
import { measuring } from './measuring.ts';
import type { Reply, Session } from './session.ts';

/** The end plays that a file of readings or a job tells of. */
export function endplay(file: string, readings: string | undefined, session: Session): Reply {
  const how = {
    verb: 'endplay',
    ask: askEndPlays,
    toJson: endPlayJson,
    toText: endPlayText,
  } as const;
  return measuring(how, file, readings, session);
}
