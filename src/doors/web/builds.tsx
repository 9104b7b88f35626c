import type { Bench } from './bench/index.ts';
import { captions } from './caption.ts';
import { Gears } from './gears/index.ts';
import { later } from './later.tsx';
import { Plate } from './plate/index.ts';
import { Why } from './why/index.ts';

const FaultBeside = later(async () => (await import('./fault/index.ts')).FaultBeside);

/** The right build with its reasons; beside it the wrong one with its own, moving together. */
export function Builds({ bench }: { readonly bench: Bench }) {
  const caption = captions();
  const right = (
    <Plate bench={bench} build={bench.right} caption={caption.right(bench)}>
      <div class="figure-when-large">
        <Gears bench={bench} />
      </div>
      <FaultBeside bench={bench} />
    </Plate>
  );
  if (!bench.wrong.train.value) {
    return (
      <div class="page-build">
        {right}
        <Why bench={bench} build={bench.right} />
      </div>
    );
  }
  return (
    <div class="page-beside">
      <div class="page-column">
        {right}
        <Why bench={bench} build={bench.right} />
      </div>
      <div class="page-column">
        <Plate bench={bench} build={bench.wrong} caption={caption.wrong(bench)} />
        <Why bench={bench} build={bench.wrong} />
      </div>
    </div>
  );
}
