import { askBands } from '../../asking/build/index.ts';
import { bandJson } from '../../telling/data/index.ts';
import { bandText } from '../../telling/report/index.ts';
import { measuring } from './measuring.ts';
import type { Reply, Session } from './session.ts';

/** The bands that a file of readings or a job tells of. */
export function band(file: string, readings: string | undefined, session: Session): Reply {
  const how = { verb: 'band', ask: askBands, toJson: bandJson, toText: bandText } as const;
  return measuring(how, file, readings, session);
}
