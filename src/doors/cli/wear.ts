import { askWear } from '../../asking/build/index.ts';
import { wearJson } from '../../telling/data/index.ts';
import { wearText } from '../../telling/report/index.ts';
import { measuring } from './measuring.ts';
import type { Reply, Session } from './session.ts';

/** The worn parts that a file of readings or a job tells of. */
export function wear(file: string, readings: string | undefined, session: Session): Reply {
  const how = { verb: 'wear', ask: askWear, toJson: wearJson, toText: wearText } as const;
  return measuring(how, file, readings, session);
}
