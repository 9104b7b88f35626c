import { judgeEndPlay, readPlays } from '../../shop/endplay/index.ts';
import { endPlayJson, endPlayText } from '../../telling/report/index.ts';
import { trialsAsked } from './trials.ts';
import { measuring } from './measuring.ts';
import type { Reply, Session } from './session.ts';

/** The end plays that a file of readings or a job tells of. */
export function endplay(file: string, readings: string | undefined, session: Session): Reply {
  const asked = trialsAsked(session.options);
  return measuring(
    {
      verb: 'endplay',
      read: readPlays,
      inJob: ({ plays }) => plays,
      nameOf: ({ shaft }) => shaft,
      judge: ({ endPlays = [] }, all) => {
        return endPlays.flatMap((endPlay) => {
          const its = all.find(({ shaft }) => shaft === endPlay.shaft);
          return its ? [judgeEndPlay(endPlay, its, asked)] : [];
        });
      },
      toJson: endPlayJson,
      toText: endPlayText,
      verdicts: ({ verdict, again }) => {
        return [again?.agrees === false ? undefined : (again?.verdict ?? verdict)];
      },
    },
    file,
    readings,
    session,
  );
}
