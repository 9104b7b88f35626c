import { render } from 'preact';
import { Bench } from './bench/index.ts';
import { FileDesk } from './desk/index.ts';
import { Page } from './page.tsx';
import { recallReader } from './reader/index.ts';
import './page.css';

const sheet = document.getElementById('sheet');
if (!sheet) throw new Error('index.html has no #sheet');

recallReader();
const bench = new Bench();
const desk = new FileDesk(bench);
await desk.begin();
bench.turning.start();
render(<Page bench={bench} desk={desk} />, sheet);
