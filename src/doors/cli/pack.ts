import type { Pack } from '../../engine/train/index.ts';
import { judgePack, readReadings } from '../../shop/packs/index.ts';
import { packJson, packText } from '../../telling/report/index.ts';
import { trialsAsked } from './trials.ts';
import { measuring } from './measuring.ts';
import type { Reply, Session } from './session.ts';

/** The packs that a file of readings or a job tells of. */
export function pack(file: string, readings: string | undefined, session: Session): Reply {
  const asked = trialsAsked(session.options);
  return measuring(
    {
      verb: 'pack',
      read: readReadings,
      inJob: ({ packs }) => packs,
      nameOf: ({ device }) => device,
      judge: ({ packs = [] }, all) => {
        // Readings are of packs that the train tells.
        return all.map((its) => {
          const of = packs.find(({ device }) => device === its.device) as Pack;
          return judgePack(of, its, asked);
        });
      },
      toJson: packJson,
      toText: packText,
      verdicts: ({ verdict, again, gauge, wear }) => {
        // What was measured again with the chosen part is the last word.
        const last = again?.agrees === false ? undefined : (again?.verdict ?? verdict);
        return [last, gauge?.verdict, ...wear.map((its) => its.verdict)];
      },
    },
    file,
    readings,
    session,
  );
}
