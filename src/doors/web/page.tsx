import type { Study } from '../../page/study/index.ts';
import { type FileDesk, Notice } from '../../page/desk/index.ts';
import { Applied, Gears, SideOf, Turner } from '../../page/gears/index.ts';
import { later } from '../../page/controls/index.ts';
import { About, Begin } from '../../page/begin/index.ts';
import { Diagram } from '../../page/diagram/index.ts';
import { Problems } from '../../page/problems/index.ts';
import { room } from '../../page/rooms/index.ts';
import { Why } from '../../page/why/index.ts';
import { spoken } from '../../page/words/index.ts';
import { Builds } from '../../page/fault/index.ts';
import { captions } from '../../page/figure/index.ts';
import { Head } from './head.tsx';

const Lesson = later(async () => (await import('../../page/lesson/index.ts')).Lesson);
const Symptoms = later(async () => (await import('../../page/symptoms/index.ts')).Symptoms);
const Ends = later(async () => (await import('../../page/ends/index.ts')).Ends);
const Describe = later(async () => (await import('../../page/describe/index.ts')).Describe);
const Lever = later(async () => (await import('../../page/lever/index.ts')).Lever);
const Measure = later(async () => (await import('../../page/measure/index.ts')).Measure);
const Margins = later(async () => (await import('../../page/margins/index.ts')).Margins);
const Job = later(async () => (await import('../../page/jobs/index.ts')).JobRoom);
const Build = later(async () => (await import('../../page/build/index.ts')).BuildRoom);
const Strip = later(async () => (await import('../../page/strip/index.ts')).StripRoom);
const Print = later(async () => (await import('../../page/print/index.ts')).PrintRoom);
const Chart = later(async () => (await import('../../page/chart/index.ts')).Chart);

interface Props {
  readonly study: Study;
  readonly desk: FileDesk;
}

/** The sheet: the train large in the middle, words beside what they speak of. */
export function Page({ study, desk }: Props) {
  return (
    <div class="page">
      <button type="button" class="page-skip" onClick={skip}>
        {words().skip}
      </button>
      <Head study={study} desk={desk} />
      <div class="page-words">
        <Notice desk={desk} />
        {room.value !== 'describe' && <Problems study={study} />}
      </div>
      <main class="page-main">
        {room.value === 'begin' && <Begin study={study} desk={desk} />}
        {room.value === 'turn' && <Turning study={study} />}
        {room.value === 'symptoms' && <Symptoms study={study} />}
        {room.value === 'measure' && <Measure study={study} />}
        {room.value === 'build' && <Build study={study} />}
        {room.value === 'strip' && <Strip study={study} />}
        {room.value === 'ask' && <Lesson study={study} />}
        {room.value === 'describe' && <Describing study={study} />}
        {room.value === 'job' && <Job study={study} />}
        {room.value === 'print' && <Print study={study} />}
      </main>
    </div>
  );
}

/** The train to be turned, in gear or by hand, and its chart. */
function Turning({ study }: { readonly study: Study }) {
  return (
    <>
      <div class="page-controls page-turning">
        <div class="page-controls page-thumb">
          <Gears study={study} />
          <SideOf study={study} />
        </div>
        <div class="page-controls page-tools">
          <Applied study={study} />
          <Turner study={study} />
        </div>
      </div>
      <Builds study={study} />
      <About study={study} />
      <div class="page-figures">
        <Ends study={study} build={study.right} />
        <Lever study={study} build={study.right} />
      </div>
      <Chart study={study} />
      <Margins study={study} />
    </>
  );
}

/** The train as it is being described, and beside the words what they make. */
function Describing({ study }: { readonly study: Study }) {
  return (
    <div class="page-beside">
      <Describe study={study} />
      <div class="page-column">
        <Diagram study={study} build={study.right} caption={captions().right(study)} />
        <Why study={study} build={study.right} />
      </div>
    </div>
  );
}

// From the head of the page to the picture, or to what stands in its place.
function skip(): void {
  const main = document.querySelector<HTMLElement>('.page-main');
  const there =
    main?.querySelector<HTMLElement>('.dial') ??
    main?.querySelector<HTMLElement>('button, input, select, textarea');
  there?.focus();
  there?.scrollIntoView({ block: 'nearest' });
}

const words = spoken({
  en: { skip: 'Go to the picture' },
  es: { skip: 'Ir al dibujo' },
});
