import type { Bench } from './bench/index.ts';
import { Chart } from './chart/index.ts';
import { Desk, type FileDesk, Notice } from './desk/index.ts';
import { FaultBeside } from './fault/index.ts';
import { Gears, SideOf, Turner } from './gears/index.ts';
import { Plate } from './plate/index.ts';
import { Problems } from './problems/index.ts';
import { Reader } from './reader/index.ts';
import { Why } from './why/index.ts';

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
      <div>
        <Notice desk={desk} />
        <Problems bench={bench} />
      </div>
      <main class="page-bench">
        <div class="page-wide page-controls">
          <Gears bench={bench} />
          <div class="page-tools">
            <SideOf bench={bench} />
            <Turner bench={bench} />
            <FaultBeside bench={bench} />
          </div>
        </div>
        <Plate bench={bench} build={bench.right} caption={captionOf(bench)} />
        <Why bench={bench} build={bench.right} />
        <div class="page-wide">
          <Chart bench={bench} />
        </div>
      </main>
    </div>
  );
}

function captionOf(bench: Bench): string {
  return bench.gears.value.map(({ range, gear }) => `${range.name} ${gear.name}`).join(', ');
}
