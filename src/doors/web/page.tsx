import type { Bench } from './bench/index.ts';
import { Desk, type FileDesk, Notice } from './desk/index.ts';
import { Applied, Gears, SideOf, Turner } from './gears/index.ts';
import { later } from './later.tsx';
import { Plate } from './plate/index.ts';
import { Problems } from './problems/index.ts';
import { Reader } from './reader/index.ts';
import { Why } from './why/index.ts';
import { captions } from './caption.ts';

const Chart = later(async () => (await import('./chart/index.ts')).Chart);
const FaultBeside = later(async () => (await import('./fault/index.ts')).FaultBeside);

interface Props {
  readonly bench: Bench;
  readonly desk: FileDesk;
}

/** The sheet: the train large in the middle, words beside what they speak of. */
export function Page({ bench, desk }: Props) {
  return (
    <div class="page">
      <header class="page-head">
        <h1>{bench.file.train.value?.name}</h1>
        <Desk bench={bench} desk={desk} />
        <Reader />
      </header>
      <div class="page-words">
        <Notice desk={desk} />
        <Problems bench={bench} />
      </div>
      <main class="page-main">
        <div class="page-controls">
          <Gears bench={bench} />
          <Applied bench={bench} />
        </div>
        <div class="page-controls page-tools">
          <SideOf bench={bench} />
          <Turner bench={bench} />
        </div>
        <Builds bench={bench} />
        <Chart bench={bench} />
      </main>
    </div>
  );
}

/** The right build with its reasons; beside it the wrong one with its own, moving together. */
function Builds({ bench }: { readonly bench: Bench }) {
  const caption = captions();
  const right = (
    <Plate bench={bench} build={bench.right} caption={caption.right(bench)}>
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
