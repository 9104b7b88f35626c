import { effect } from '@preact/signals';
import { render } from 'preact';
import { LANGUAGES, learn } from '../../telling/narrative/index.ts';
import { LOOKS } from '../../telling/scene/index.ts';
import { Study } from '../../page/study/index.ts';
import { isCalm, spokenOf } from '../../page/words/index.ts';
import { FileDesk, hearInstall, workOffline } from '../../page/desk/index.ts';
import { hearKeys } from './keys.ts';
import { firstPictureIsUp } from '../../page/controls/index.ts';
import { Page } from './page.tsx';
import { recallReader } from '../../page/reader/index.ts';
import './page.css';

const sheet = document.getElementById('sheet');
if (!sheet) throw new Error('index.html has no #sheet');

hearInstall();
await recallReader();
const looks = new CSSStyleSheet();
looks.replaceSync(LOOKS);
document.adoptedStyleSheets.push(looks);
const study = new Study();
effect(() => void (spokenOf.value = study.file.train.value));
const desk = new FileDesk(study);
await desk.arrive();
hearKeys(study, desk);
study.turning.runs.value = !isCalm();
study.turning.start();
render(<Page study={study} desk={desk} />, sheet);
firstPictureIsUp(
  () => (study.answers.value = true),
  () => void desk.begin().then(takeUpJob),
);

// A job that was open when the browser was closed comes back with its own train.
async function takeUpJob(): Promise<void> {
  if (desk.begunAnew) (await import('../../page/job/index.ts')).jobsOf(study);
}

// After the first picture, which must not wait for it; every language, for want of a network later.
setTimeout(workOffline, 1000);
setTimeout(() => void Promise.allSettled(LANGUAGES.map(learn)), 2000);
