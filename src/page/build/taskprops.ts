import type { BuildTask } from '../../shop/build/index.ts';
import type { StepContext } from '../../telling/narrative/index.ts';
import type { Building } from './building.ts';

export interface TaskProps {
  readonly building: Building;
  readonly task: BuildTask;
}

export interface BodyProps extends TaskProps {
  readonly context: StepContext;
  /** Whether it is this that is done next; else it is only looked at. */
  readonly isNext: boolean;
}
