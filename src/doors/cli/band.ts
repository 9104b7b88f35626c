import type { Train } from '../../engine/train/index.ts';
import { judgeBand, readBands } from '../../shop/bands/index.ts';
import { bandJson, bandText } from '../../telling/report/index.ts';
import { measuring } from './measuring.ts';
import type { Reply, Session } from './session.ts';

/** The bands that a file of readings or a job tells of. */
export function band(file: string, readings: string | undefined, session: Session): Reply {
  return measuring(
    {
      verb: 'band',
      read: readBands,
      inJob: ({ bands }) => bands,
      nameOf: ({ device }) => device,
      judge: (train, all) => {
        return (train.bands ?? []).flatMap((setting) => {
          const its = all.find(({ device }) => device === setting.device);
          return its ? [judgeBand(setting, its, wrapOf(train, setting.device))] : [];
        });
      },
      toJson: bandJson,
      toText: bandText,
      verdicts: ({ verdict }) => [verdict],
    },
    file,
    readings,
    session,
  );
}

/** How far a band goes round its drum, where a capacity tells it. */
export function wrapOf({ capacities = [] }: Train, name: string): number | undefined {
  const capacity = capacities.find(({ device }) => device === name);
  return capacity && 'wrap degrees' in capacity ? capacity['wrap degrees'] : undefined;
}
