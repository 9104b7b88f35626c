import type { Train } from '../../engine/train/index.ts';
import { type EndPlayJudgement, judgeEndPlay, readPlays } from '../../shop/endplay/index.ts';
import { measured, type MeasuredAnswer, type MeasureRequest } from './kind.ts';
import { trialsAsked, type TrialsRequest } from './trials.ts';

/** The end plays that readings or a job tell of. */
export function askEndPlays(
  file: Train,
  request: MeasureRequest & TrialsRequest,
): MeasuredAnswer<EndPlayJudgement> {
  const trials = trialsAsked(request);
  return measured(
    {
      what: 'endplay',
      read: readPlays,
      inJob: ({ plays }) => plays,
      nameOf: ({ shaft }) => shaft,
      judge: ({ endPlays = [] }, all) => {
        return endPlays.flatMap((endPlay) => {
          const its = all.find(({ shaft }) => shaft === endPlay.shaft);
          return its ? [judgeEndPlay(endPlay, its, trials)] : [];
        });
      },
      verdicts: ({ verdict }) => [verdict],
    },
    file,
    request,
  );
}
