import type { Train } from '../../engine/train/index.ts';
import { type BandJudgement, judgeBand, readBands } from '../../shop/bands/index.ts';
import { measured, type MeasuredAnswer, type MeasureRequest } from './kind.ts';

/** The bands that readings or a job tell of. */
export function askBands(file: Train, request: MeasureRequest): MeasuredAnswer<BandJudgement> {
  return measured(
    {
      what: 'band',
      read: readBands,
      inJob: ({ bands }) => bands,
      nameOf: ({ device }) => device,
      judge: (train, all) => {
        return (train.bands ?? []).flatMap((setting) => {
          const its = all.find(({ device }) => device === setting.device);
          return its ? [judgeBand(setting, its, wrapOf(train, setting.device))] : [];
        });
      },
      verdicts: ({ verdict }) => [verdict],
    },
    file,
    request,
  );
}

/** How far a band goes round its drum, where a capacity tells it. */
export function wrapOf({ capacities = [] }: Train, name: string): number | undefined {
  const capacity = capacities.find(({ device }) => device === name);
  return capacity && 'wrap degrees' in capacity ? capacity['wrap degrees'] : undefined;
}
