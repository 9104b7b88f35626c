import type { Study } from '../study/index.ts';
import { captions } from '../figure/index.ts';
import { Gears } from '../gears/index.ts';
import { later } from '../controls/index.ts';
import { Diagram } from '../diagram/index.ts';
import { Why } from '../why/index.ts';

const FaultBeside = later(async () => (await import('./fault.tsx')).FaultBeside);

/** The right build with its reasons; beside it the wrong one with its own, moving together. */
export function Builds({ study }: { readonly study: Study }) {
  const caption = captions();
  const right = (
    <Diagram study={study} build={study.right} caption={caption.right(study)}>
      <div class="figure-when-large">
        <Gears study={study} />
      </div>
      <FaultBeside study={study} />
    </Diagram>
  );
  if (!study.wrong.train.value) {
    return (
      <div class="page-build">
        {right}
        <Why study={study} build={study.right} />
      </div>
    );
  }
  return (
    <div class="page-beside">
      <div class="page-column">
        {right}
        <Why study={study} build={study.right} />
      </div>
      <div class="page-column">
        <Diagram study={study} build={study.wrong} caption={caption.wrong(study)} />
        <Why study={study} build={study.wrong} />
      </div>
    </div>
  );
}
