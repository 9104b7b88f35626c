import { MOST_PARTS, type Plan, plan as planOf } from '../../engine/plan/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { planJson, planText } from '../../telling/report/index.ts';
import { Refusal } from './refusal.ts';
import { done, json, type Reply, type Session } from './session.ts';
import { trainOf } from './source.ts';
import { lookingAt } from './stand.ts';

/** The build of a train whose file tells how it comes apart. */
export function plan(file: string, session: Session): Reply {
  const { options } = session;
  const train = trainOf(file, session);
  const { page } = lookingAt(train, session);
  const answer = plannedOf(train, file);
  return options.json ? json(planJson(answer, page.stand)) : done(planText(train, answer, page));
}

/** The build of a train; refuses where its file does not tell how it comes apart. */
export function plannedOf(train: Train, file: string): Plan {
  const parts = train.teardown?.length ?? 0;
  if (parts > MOST_PARTS) throw new Refusal('bad.many parts', { count: parts, most: MOST_PARTS });
  const answer = planOf(train);
  if (!answer) throw new Refusal('no.teardown', { file });
  return answer;
}
