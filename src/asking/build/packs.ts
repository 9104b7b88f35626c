import type { Pack, Train } from '../../engine/train/index.ts';
import { judgePack, type PackJudgement, readReadings } from '../../shop/packs/index.ts';
import { measured, type MeasuredAnswer, type MeasureRequest } from './kind.ts';
import { spentIn } from './spent.ts';
import { trialsAsked, type TrialsRequest } from './trials.ts';

/** The packs that readings or a job tell of. */
export function askPacks(
  file: Train,
  request: MeasureRequest & TrialsRequest,
): MeasuredAnswer<PackJudgement> {
  const draws = trialsAsked(request);
  const spent = spentIn(file, request.job);
  return measured(
    {
      what: 'pack',
      read: readReadings,
      inJob: ({ packs }) => packs,
      nameOf: ({ device }) => device,
      judge: ({ packs = [] }, all) => {
        // Readings are of packs that the train tells.
        return all.map((its) => {
          const of = packs.find(({ device }) => device === its.device) as Pack;
          return judgePack(of, its, draws, spent.has(its.device));
        });
      },
      verdicts: ({ verdict, gauge, wear }) => {
        return [verdict, gauge?.verdict, ...wear.map((its) => its.verdict)];
      },
    },
    file,
    request,
  );
}
