import { askPreloads } from '../../asking/build/index.ts';
import { preloadJson } from '../../telling/data/index.ts';
import { preloadText } from '../../telling/report/index.ts';
import { measuring } from './measuring.ts';
import type { Reply, Session } from './session.ts';

/** The preloads that a file of readings or a job tells of. */
export function preload(file: string, readings: string | undefined, session: Session): Reply {
  const how = {
    verb: 'preload',
    ask: askPreloads,
    toJson: preloadJson,
    toText: preloadText,
  } as const;
  return measuring(how, file, readings, session);
}
