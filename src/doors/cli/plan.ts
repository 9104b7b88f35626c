import { askPlan } from '../../asking/build/index.ts';
import { planJson } from '../../telling/data/index.ts';
import { planText } from '../../telling/report/index.ts';
import {
  done,
  json,
  type Reply,
  type Session,
  trainOf,
  lookingAt,
} from '../../command/session/index.ts';

/** The build of a train whose file tells how it comes apart. */
export function plan(file: string, session: Session): Reply {
  const train = trainOf(file, session);
  const { page } = lookingAt(train, session);
  const answer = askPlan(train);
  return session.options.json
    ? json(planJson(answer, page.stand))
    : done(planText(train, answer, page));
}
