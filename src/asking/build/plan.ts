import { MOST_PARTS, type Plan, plan } from '../../engine/plan/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { NoAnswer } from '../request/index.ts';

/** The build of a train whose file tells how it comes apart, of MOST_PARTS parts at most. */
export function askPlan(train: Train): Plan {
  const count = train.teardown?.length ?? 0;
  if (count > MOST_PARTS) {
    throw new NoAnswer({ refused: 'bad.many parts', count, most: MOST_PARTS });
  }
  const answer = plan(train);
  if (!answer) throw new NoAnswer({ refused: 'no.teardown' });
  return answer;
}
