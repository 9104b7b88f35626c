import { askHand } from '../../asking/gears/index.ts';
import { wayFor } from '../../asking/request/index.ts';
import { handJson, oneWayJson } from '../../telling/data/index.ts';
import { handText, oneWayText } from '../../telling/report/index.ts';
import {
  done,
  json,
  type Reply,
  type Session,
  speakingOf,
  trainOf,
} from '../../command/session/index.ts';

/**
 * Hold some, turn one: one way, or both where --way says nothing. With --one-way, the races of
 * one-way clutches by themselves.
 */
export function hand(file: string, session: Session): Reply {
  const { options } = session;
  const reply = askHand(trainOf(file, session), options);
  const { train, stand } = reply;
  const page = { ...speakingOf(train, session).page, stand };
  const { voice } = page;
  if (reply.asked === 'races') {
    return options.json
      ? json(oneWayJson(reply.clutches, voice, stand, reply.turned))
      : done(oneWayText(train, reply.clutches, page, reply.turned));
  }
  const { answers } = reply;
  if (!options.json) {
    return done(
      handText(
        train,
        answers.map(({ answer }) => answer),
        page,
      ),
    );
  }
  const all = answers.map(({ answer }) => handJson(answer, voice, stand));
  if (answers.length === 1) return json(all[0]);
  // A way is a word, and the reader's; the numbers' signs are everyone's.
  return json(Object.fromEntries(answers.map(({ way }, i) => [wayFor(way, stand), all[i]])));
}
