/**
 * Hands the command wild texts as train files, and sees that it answers each or says what is
 * wrong: `npm run fuzz -- --tries 50000 --seed 7`. Never may it throw, hang or need over 300 MB;
 * what takes over two seconds is counted, for how long a call takes is the machine's say too. The
 * first text that breaks it is saved beside the seed that makes it.
 */
// One call after the other, as a person types them; and a thread's messages have no origin.
// oxlint-disable no-await-in-loop, unicorn/require-post-message-target-origin
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { run } from '../src/doors/cli/run.ts';
import { faultNamed } from '../src/engine/faults/index.ts';
import { assemble, isFriction, type Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { Dice } from '../test/dice.ts';
import { wildText } from '../test/wild-text.ts';

const LONG_MS = 2000;
const HANGS_MS = 20_000; // several calls of a slow try, made twice
const MOST_MB = 300;

/** What both threads agree on: the tries are seeds from `seed` on. */
interface Task {
  readonly seed: number;
  readonly tries: number;
  readonly good: readonly string[];
  /** One number, shared: which try is being made. */
  readonly at: Int32Array;
}

type News =
  | { readonly broke: number; readonly how: string }
  | {
      readonly answered: number;
      readonly refused: number;
      readonly slowestMs: number;
      /** The seeds of those that took over two seconds, twice. */
      readonly long: readonly number[];
    };

if (isMainThread) await main();
else await work(workerData as Task);

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: { tries: { type: 'string' }, seed: { type: 'string' } },
  });
  const tries = Number(values.tries ?? 2000);
  const seed = Number(values.seed ?? Date.now() % 1_000_000_007);
  if (!Number.isSafeInteger(tries) || !Number.isSafeInteger(seed)) throw new Error('say numbers');
  console.log(`fuzz: ${tries} tries, seed ${seed}`);
  const folder = path.resolve('trains');
  const files = readdirSync(folder).filter((file) => file.endsWith('.train.yaml'));
  const good = files.map((file) => readFileSync(path.join(folder, file), 'utf8'));
  const at = new Int32Array(new SharedArrayBuffer(4));
  const task: Task = { seed, tries, good, at };
  const news = await watched(task);
  if ('broke' in news) {
    const file = path.resolve('node_modules/.cache/holdturn', `fuzz-${news.broke}.train.yaml`);
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, wildText(news.broke, good));
    console.log(`broken: ${news.how}\n  saved ${file}`);
    console.log(`  again: npm run fuzz -- --tries 1 --seed ${news.broke}`);
    process.exitCode = 1;
    return;
  }
  const { answered, refused, slowestMs, long } = news;
  console.log(
    `fuzz: ${answered} answered, ${refused} refused with reasons, the slowest in ${slowestMs} ms`,
  );
  if (long.length > 0) console.log(`fuzz: over ${LONG_MS} ms: seed ${long.join(', ')}`);
}

// The work is done in a thread of its own, which can be held to its memory and be stopped.
async function watched({ seed, tries, good, at }: Task): Promise<News> {
  const young = 32;
  const worker = new Worker(fileURLToPath(import.meta.url), {
    workerData: { seed, tries, good, at },
    resourceLimits: { maxOldGenerationSizeMb: MOST_MB - young, maxYoungGenerationSizeMb: young },
  });
  let watch: NodeJS.Timeout | undefined;
  const news = await new Promise<News>((resolve) => {
    const broken = (how: string) => resolve({ broke: seed + (at[0] ?? 0), how });
    let [last, since] = [-1, performance.now()];
    watch = setInterval(() => {
      const now = performance.now();
      if (at[0] !== last) [last, since] = [at[0] ?? 0, now];
      else if (now - since > HANGS_MS) broken(`no answer after ${HANGS_MS} ms`);
    }, 100);
    worker.once('message', resolve);
    worker.once('error', (error) => broken(`the thread ended: ${error.stack ?? error.message}`));
    worker.once('exit', () => broken('the thread ended'));
  });
  clearInterval(watch);
  await worker.terminate();
  return news;
}

async function work({ seed, tries, good, at }: Task): Promise<void> {
  let [answered, refused, slowestMs] = [0, 0, 0];
  const long: number[] = [];
  for (let k = 0; k < tries; k++) {
    at[0] = k;
    try {
      const text = wildText(seed + k, good);
      let slow = await slowest(seed + k, text);
      // What the compiler and the collector do in between is no fault of a text: twice slow is slow.
      if (slow.ms > LONG_MS) slow = await slowest(seed + k, text);
      if (slow.ms > LONG_MS) long.push(seed + k);
      slowestMs = Math.max(slowestMs, Math.round(slow.ms));
      if (readTrain(text).train === undefined) refused++;
      else answered++;
    } catch (error) {
      const how = error instanceof Error ? (error.stack ?? error.message) : String(error);
      parentPort?.postMessage({ broke: seed + k, how } satisfies News);
      return;
    }
  }
  parentPort?.postMessage({ answered, refused, slowestMs, long } satisfies News);
}

/** The slowest call of the command about a text, by the processor's time and not the clock's. */
async function slowest(
  seed: number,
  text: string,
): Promise<{ ms: number; args: readonly string[] }> {
  let slow: { ms: number; args: readonly string[] } = { ms: 0, args: [] };
  for (const args of calls(new Dice(seed + 1), text)) {
    const began = process.cpuUsage();
    await call(args, text);
    const { user, system } = process.cpuUsage(began);
    const ms = (user + system) / 1000;
    if (ms > slow.ms) slow = { ms, args };
  }
  return slow;
}

async function call(args: readonly string[], text: string): Promise<void> {
  let [out, err] = ['', ''];
  const code = await run({
    args,
    env: {},
    terminal: false,
    read: () => text,
    list: () => [],
    write: () => {},
    start: () => undefined,
    same: () => false,
    target: () => undefined,
    out: (more) => (out += more),
    err: (more) => (err += more),
  });
  const start = (printed: string) => JSON.stringify(printed.slice(0, 400));
  const said = `${args.join(' ')}: exit ${code}, out ${start(out)}, err ${start(err)}`;
  if (code === 2 ? out !== '' || err.trim() === '' : out.trim() === '' || err !== '')
    throw new Error(said);
  if (/\bundefined\b|\bNaN\b|\[object/.test(out + err)) {
    if (!/undefined|NaN|\[object/.test(text)) throw new Error(said);
  }
  if (code !== 2 && args.includes('--json')) JSON.parse(out);
}

/** Some verbs, with options that fit the train where there is one. */
function calls(dice: Dice, text: string): string[][] {
  const style = [dice.pick([[], ['--json']]), dice.pick([[], ['--lang', 'es']])].flat();
  const { train } = readTrain(text);
  const check = ['check', '-', ...style];
  if (train === undefined) return [check, ['flow', '-', ...style]];
  const members = [...new Set(assemble(train).bodies.flatMap(({ names }) => names))];
  const friction = train.devices.filter(isFriction).map(({ name }) => name);
  const on = dice.several(friction, dice.whole(0, 3)).join(',');
  const fault = faultOf(dice, train);
  const turned = dice.pick(members);
  const hold = dice
    .several(
      members.filter((name) => name !== turned),
      dice.whole(0, 2),
    )
    .join(',');
  const way = dice.pick(['clockwise', 'anticlockwise']);
  const asked = [
    ['flow', '-', '--on', on],
    ['flow', '-', ...fault],
    [
      'hand',
      '-',
      '--turn',
      turned,
      '--way',
      way,
      ...optional('--hold', hold),
      ...optional('--on', on),
      ...fault,
    ],
    ['chart', '-', ...fault],
    ['faults', '-'],
    ['plan', '-'],
  ];
  return [check, ...dice.several(asked, 2).map((args) => [...args, ...style])];
}

function optional(option: string, value: string): string[] {
  return value === '' ? [] : [option, value];
}

function faultOf(dice: Dice, train: Train): string[] {
  const named = [...train.devices, ...train.joins, ...train.sets, ...train.pairs];
  if (named.length === 0 || dice.chance(0.5)) return [];
  const { name } = dice.pick(named);
  const found = faultNamed(`${name}: ?`, train);
  if (!('unknown' in found) || found.unknown !== 'fault') return [];
  return ['--fault', `${name}: ${dice.pick(found.known)}`];
}
