import { askPacks } from '../../asking/build/index.ts';
import { packJson } from '../../telling/data/index.ts';
import { packText } from '../../telling/report/index.ts';
import { measuring } from './measuring.ts';
import type { Reply, Session } from './session.ts';

/** The packs that a file of readings or a job tells of. */
export function pack(file: string, readings: string | undefined, session: Session): Reply {
  const how = { verb: 'pack', ask: askPacks, toJson: packJson, toText: packText } as const;
  return measuring(how, file, readings, session);
}
