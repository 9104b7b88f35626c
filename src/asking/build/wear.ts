import type { Train } from '../../engine/train/index.ts';
import { judgeWear, readWear, type WearJudgement } from '../../shop/wear/index.ts';
import { measured, type MeasuredAnswer, type MeasureRequest } from './kind.ts';

/** The worn parts that readings or a job tell of. */
export function askWear(file: Train, request: MeasureRequest): MeasuredAnswer<WearJudgement> {
  return measured(
    {
      what: 'wear',
      read: readWear,
      inJob: (job) => job.wear,
      nameOf: ({ part }) => part,
      judge: (train, all) => {
        return (train.wear ?? []).flatMap((check) => {
          const its = all.find(({ part }) => part === check.part);
          return its ? [judgeWear(check, its)] : [];
        });
      },
      verdicts: ({ verdict }) => [verdict],
    },
    file,
    request,
  );
}
