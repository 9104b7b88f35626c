import { hand as handOf } from '../../engine/hand/index.ts';
import { AT_THE_INPUT, wayFor } from '../../telling/narrative/index.ts';
import { handJson, handText } from '../../telling/report/index.ts';
import { handsOf } from './members.ts';
import { oneWay } from './oneway.ts';
import { selectionOf } from './selection.ts';
import { done, json, type Reply, type Session } from './session.ts';
import { trainOf } from './source.ts';
import { trainAsFound } from './wrong.ts';
import { lookingAt } from './stand.ts';

/**
 * Hold some, turn one: one way, or both where --way says nothing. With --one-way, the races of
 * one-way clutches by themselves.
 */
export function hand(file: string, asked: Session): Reply {
  const train = trainAsFound(trainOf(file, asked), asked.options);
  const session = lookingAt(train, asked);
  const { options, language, page } = session;
  if (options.oneWay !== undefined) return oneWay(train, options.oneWay, session);
  const stand = page.stand ?? AT_THE_INPUT;
  const { hold, turn, ways } = handsOf(train, options, stand);
  const on = selectionOf(train, options)?.on ?? [];
  const answers = ways.map((way) => handOf(train, { hold, turn, way, on }));
  if (!options.json) return done(handText(train, answers, page));
  const all = answers.map((answer) => handJson(answer, language, stand));
  if (ways.length === 1) return json(all[0]);
  // A way is a word, and the reader's; the numbers' signs are everyone's.
  return json(Object.fromEntries(ways.map((way, i) => [wayFor(way, stand), all[i]])));
}
