import { judgePreload, readPreloads } from '../../shop/preload/index.ts';
import { preloadJson, preloadText } from '../../telling/report/index.ts';
import { measuring } from './measuring.ts';
import type { Reply, Session } from './session.ts';

/** The preloads that a file of readings or a job tells of. */
export function preload(file: string, readings: string | undefined, session: Session): Reply {
  return measuring(
    {
      verb: 'preload',
      read: readPreloads,
      inJob: ({ preloads }) => preloads,
      nameOf: ({ bearings }) => bearings,
      judge: ({ preloads = [] }, all) => {
        return preloads.flatMap((its) => {
          const read = all.find(({ bearings }) => bearings === its.bearings);
          return read ? [judgePreload(its, read)] : [];
        });
      },
      toJson: preloadJson,
      toText: preloadText,
      verdicts: ({ verdict }) => [verdict],
    },
    file,
    readings,
    session,
  );
}
