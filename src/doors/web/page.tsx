import type { Bench } from './bench/index.ts';
import { Desk, type FileDesk, Notice } from './desk/index.ts';
import { Applied, Gears, SideOf, Turner } from './gears/index.ts';
import { visible } from '../../telling/narrative/index.ts';
import { later } from './later.tsx';
import { Plate } from './plate/index.ts';
import { Problems } from './problems/index.ts';
import { Reader } from './reader/index.ts';
import { room, ROOMS } from './room.ts';
import { Why } from './why/index.ts';
import { spoken } from './words.ts';
import { Builds } from './builds.tsx';
import { captions } from './caption.ts';

const Lesson = later(async () => (await import('./lesson/index.ts')).Lesson);
const Ends = later(async () => (await import('./ends/index.ts')).Ends);
const Describe = later(async () => (await import('./describe/index.ts')).Describe);
const Lever = later(async () => (await import('./lever/index.ts')).Lever);
const Margins = later(async () => (await import('./margins/index.ts')).Margins);
const Chart = later(async () => (await import('./chart/index.ts')).Chart);

interface Props {
  readonly bench: Bench;
  readonly desk: FileDesk;
}

/** The sheet: the train large in the middle, words beside what they speak of. */
export function Page({ bench, desk }: Props) {
  const say = words();
  return (
    <div class="page">
      <header class="page-head">
        <h1>{bench.file.train.value?.name ?? visible(bench.file.name.value)}</h1>
        <nav class="page-rooms" aria-label={say.rooms}>
          {ROOMS.map((name) => (
            <button
              key={name}
              type="button"
              aria-current={room.value === name ? 'page' : undefined}
              onClick={() => (room.value = name)}
            >
              {say[name]}
            </button>
          ))}
        </nav>
        <Desk bench={bench} desk={desk} />
        <Reader />
      </header>
      <div class="page-words">
        <Notice desk={desk} />
        {room.value !== 'describe' && <Problems bench={bench} />}
      </div>
      <main class="page-main">
        {room.value === 'turn' && <Turning bench={bench} />}
        {room.value === 'ask' && <Lesson bench={bench} />}
        {room.value === 'describe' && <Describing bench={bench} />}
      </main>
    </div>
  );
}

/** The train to be turned, in gear or by hand, and its chart. */
function Turning({ bench }: { readonly bench: Bench }) {
  return (
    <>
      <div class="page-controls">
        <Gears bench={bench} />
        <Applied bench={bench} />
      </div>
      <div class="page-controls page-tools">
        <SideOf bench={bench} />
        <Turner bench={bench} />
      </div>
      <Builds bench={bench} />
      <div class="page-figures">
        <Ends bench={bench} build={bench.right} />
        <Lever bench={bench} build={bench.right} />
      </div>
      <Chart bench={bench} />
      <Margins bench={bench} />
    </>
  );
}

/** The train as it is being described, and beside the words what they make. */
function Describing({ bench }: { readonly bench: Bench }) {
  return (
    <div class="page-beside">
      <Describe bench={bench} />
      <div class="page-column">
        <Plate bench={bench} build={bench.right} caption={captions().right(bench)} />
        <Why bench={bench} build={bench.right} />
      </div>
    </div>
  );
}

const words = spoken({
  en: { rooms: 'What you are at', turn: 'Turn it', ask: 'Ask the class', describe: 'Describe it' },
  es: { rooms: 'Qué hace', turn: 'Girarlo', ask: 'Preguntar', describe: 'Describirlo' },
});
