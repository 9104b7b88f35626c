import { render } from 'preact';
import { Bench } from './bench/index.ts';
import { FIRST, readOurs } from './desk/index.ts';
import { Page } from './page.tsx';
import './page.css';

const sheet = document.getElementById('sheet');
if (!sheet) throw new Error('index.html has no #sheet');

const bench = new Bench();
bench.open(`${FIRST}.train.yaml`, await readOurs(FIRST));
bench.turning.start();
render(<Page bench={bench} />, sheet);
