import { judgeWear, readWear } from '../../shop/wear/index.ts';
import { wearJson, wearText } from '../../telling/report/index.ts';
import { measuring } from './measuring.ts';
import type { Reply, Session } from './session.ts';

/** The worn parts that a file of readings or a job tells of. */
export function wear(file: string, readings: string | undefined, session: Session): Reply {
  return measuring(
    {
      verb: 'wear',
      read: readWear,
      inJob: (job) => job.wear,
      nameOf: ({ part }) => part,
      judge: (train, all) => {
        return (train.wear ?? []).flatMap((check) => {
          const its = all.find(({ part }) => part === check.part);
          return its ? [judgeWear(check, its)] : [];
        });
      },
      toJson: wearJson,
      toText: wearText,
      verdicts: ({ verdict }) => [verdict],
    },
    file,
    readings,
    session,
  );
}
