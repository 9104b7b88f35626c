import type { Train } from '../../engine/train/index.ts';
import { judgePreload, type PreloadJudgement, readPreloads } from '../../shop/preload/index.ts';
import { measured, type MeasuredAnswer, type MeasureRequest } from './kind.ts';

/** The preloads that readings or a job tell of. */
export function askPreloads(
  file: Train,
  request: MeasureRequest,
): MeasuredAnswer<PreloadJudgement> {
  return measured(
    {
      what: 'preload',
      read: readPreloads,
      inJob: ({ preloads }) => preloads,
      nameOf: ({ bearings }) => bearings,
      judge: ({ preloads = [] }, all) => {
        return preloads.flatMap((its) => {
          const read = all.find(({ bearings }) => bearings === its.bearings);
          return read ? [judgePreload(its, read)] : [];
        });
      },
      verdicts: ({ verdict }) => [verdict],
    },
    file,
    request,
  );
}
