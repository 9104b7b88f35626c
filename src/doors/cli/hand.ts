import { hand as handOf } from '../../engine/hand/index.ts';
import { handJson, handText } from '../../telling/report/index.ts';
import { handsOf } from './members.ts';
import { selectionOf } from './selection.ts';
import { done, json, type Reply, type Session } from './session.ts';
import { trainOf } from './source.ts';
import { trainAsFound } from './wrong.ts';

/** Hold some, turn one: one way, or both where --way says nothing. */
export function hand(file: string, session: Session): Reply {
  const { options, language, page } = session;
  const train = trainAsFound(trainOf(file, session), options);
  const { hold, turn, ways } = handsOf(train, options);
  const on = selectionOf(train, options)?.on ?? [];
  const answers = ways.map((way) => handOf(train, { hold, turn, way, on }));
  if (!options.json) return done(handText(train, answers, page));
  const all = answers.map((answer) => handJson(answer, language));
  return json(ways.length === 1 ? all[0] : Object.fromEntries(ways.map((way, i) => [way, all[i]])));
}
