import { effect } from '@preact/signals';
import { render } from 'preact';
import { LANGUAGES, learn } from '../../telling/narrative/index.ts';
import { LOOKS } from '../../telling/scene/index.ts';
import { Bench } from './bench/index.ts';
import { isCalm } from './calm.ts';
import { FileDesk, workOffline } from './desk/index.ts';
import { hearKeys } from './keys.ts';
import { firstPictureIsUp } from './later.tsx';
import { Page } from './page.tsx';
import { recallReader } from './reader/index.ts';
import { ends } from './words.ts';
import './page.css';

const sheet = document.getElementById('sheet');
if (!sheet) throw new Error('index.html has no #sheet');

await recallReader();
const looks = new CSSStyleSheet();
looks.replaceSync(LOOKS);
document.adoptedStyleSheets.push(looks);
const bench = new Bench();
effect(() => void (ends.value = bench.file.train.value?.ends));
const desk = new FileDesk(bench);
await desk.arrive();
hearKeys(bench, desk);
bench.turning.runs.value = !isCalm();
bench.turning.start();
render(<Page bench={bench} desk={desk} />, sheet);
firstPictureIsUp(
  () => (bench.answers.value = true),
  () => void desk.begin(),
);

// After the first picture, which must not wait for it; every language, for want of a network later.
setTimeout(workOffline, 1000);
setTimeout(() => void Promise.allSettled(LANGUAGES.map(learn)), 2000);
