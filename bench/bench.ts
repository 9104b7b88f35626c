/**
 * The same questions put to our solvers and to general-purpose ones, in one process:
 * `npm run bench`. Prints medians, and beside them what was hoped for. Nothing here is a test.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import jslp from 'javascript-lp-solver';
import { Bench } from 'tinybench';
import { solve as solveYalps } from 'yalps';
import packageJson from '../package.json' with { type: 'json' };
import { chart, sweeper } from '../src/engine/chart/index.ts';
import { underPower } from '../src/engine/flow/index.ts';
import {
  Base,
  floatExtremes,
  type Programme,
  solve,
  toNumber,
  valueOf,
} from '../src/engine/linear/index.ts';
import { motionOf, pose } from '../src/engine/motion/index.ts';
import { prove } from '../src/engine/proof/index.ts';
import { judge } from '../src/engine/reckon/index.ts';
import { isFriction, type Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { diagnosis } from './diagnosis.ts';
import { eightSpeed } from './faults.ts';
import { sheets } from './sheets.ts';
import { stacks } from './stacks.ts';
import { steps } from './step.ts';
import { highsModel, inFloats, splitModel, startHighs } from '../test/peers.ts';

// Its types say that the package is CommonJS; what Node imports is a module of its own.
const splitSolver = jslp as unknown as typeof jslp.default;

const CHECKED = 'exact, posed and its certificate checked';
const PRESOLVED = 'exact, reduced';
const PRESOLVED_CHECKED = 'exact, reduced, its certificate checked';
const FOUR_SPEED = 'trains/curlew-four-speed-overdrive.train.yaml';

const peersUs = await firstGear();
await manyStates(peersUs);
startOfTheCommand();
eightSpeed();
stacks();
steps();
sheets();
diagnosis();

/** The four-speed's first gear, under power; returns what the fastest peers took, in us. */
async function firstGear(): Promise<Record<string, number>> {
  const train = read(FOUR_SPEED);
  const motion = motionOf(train);
  const question = underPower(train, ['forward clutch']);
  const programme = pose(motion, question);
  const exact = solve(programme, motion.base);
  prove(programme, exact);
  const reduced = inFreeCoordinates(programme, motion.base);
  const { columns, rows, minimise } = programme;
  const nothing = new Base(reduced.columns, []);
  const ours: Record<string, () => unknown> = {
    [CHECKED]: () => judge(motion, question),
    exact: () => solve(programme, motion.base),
    [PRESOLVED]: () => solve(reduced, nothing),
    [PRESOLVED_CHECKED]: () => prove(reduced, solve(reduced, nothing)),
    'float path': () => floatExtremes(columns, rows, [minimise], motion.base),
  };
  const highs = await startHighs();
  const peers: Record<string, () => { result: number }> = {};
  if (exact.state !== 'optimal') throw new Error('first gear drives');
  const value = toNumber(valueOf(minimise, exact.point));
  const ends: (() => void)[] = [];
  for (const [form, asked] of [
    ['', programme],
    [', reduced', reduced],
  ] as const) {
    const floats = inFloats(asked);
    const { constraints, variables } = splitModel(floats);
    const yalps = { direction: 'minimize', objective: 'aim', constraints, variables } as const;
    peers[`yalps${form}`] = () => solveYalps(yalps);
    // It writes to its model: the names of its variables. So it gets one of its own. That it walks the same
    // columns first makes V8 walk them faster for yalps too, by nearly half: each peer stands at its best.
    const model = { optimize: 'aim', opType: 'min', constraints, variables } as const;
    peers[`javascript-lp-solver${form}`] = () => splitSolver.Solve(model) as { result: number };
    const arrays = highsModel(highs, floats);
    const cold = highs.createModel(arrays);
    cold.options.set({ output_flag: false });
    ends.push(() => cold.dispose());
    peers[`highs${form}`] = () => {
      cold.passModel(arrays);
      cold.run();
      return { result: cold.getObjectiveValue() };
    };
  }
  for (const [name, ask] of Object.entries(peers)) {
    const { result } = ask();
    if (!(Math.abs(result - value) < 1e-6)) throw new Error(`${name} says ${result}, not ${value}`);
  }
  // Warm: one model keeps its basis, and the speed of the input is changed to and fro.
  const arrays = highsModel(highs, inFloats(programme));
  const warm = highs.createModel(arrays);
  warm.options.set({ output_flag: false });
  ends.push(() => warm.dispose());
  const input = programme.rows.findIndex(({ right }) => right !== 0);
  let speed = 1;
  const warmPeer = () => {
    speed = 3 - speed;
    warm.changeRowBounds(input, speed, speed);
    return warm.run();
  };
  const medians = await mediansOf({ ...ours, ...peers, 'highs, warm': warmPeer });
  for (const end of ends) end();
  const size = `${rows.length} rows, ${columns} columns`;
  const few = `${reduced.rows.length} rows, ${reduced.columns} columns`;
  console.log(`The four-speed's first gear under power (${size}; reduced: ${few})`);
  for (const [solver, us] of medians) line(solver, `${us.toFixed(2)} us`, '');
  const names = Object.keys(peers);
  const best: Record<string, number> = {};
  for (const form of ['the same programme', 'the reduced programme']) {
    const given = names.filter((name) => name.endsWith(', reduced') === form.includes('reduced'));
    const [name, us] = fastest(medians, given);
    best[form] = us;
    console.log(`  against the fastest cold peer given ${form}, ${name}:`);
    goal('exact', (medians.get('exact') ?? Number.NaN) / us, 1);
    goal('exact, its certificate checked', (medians.get(CHECKED) ?? Number.NaN) / us, 1);
    goal('float path, one question', (medians.get('float path') ?? Number.NaN) / us, 1 / 15);
    if (!form.includes('reduced')) continue;
    goal(PRESOLVED, (medians.get(PRESOLVED) ?? Number.NaN) / us, 1.1);
    goal(PRESOLVED_CHECKED, (medians.get(PRESOLVED_CHECKED) ?? Number.NaN) / us, 1.2);
  }
  return best;
}

/** Every combination of eight friction devices, under power and on coast. */
async function manyStates(best: Record<string, number>): Promise<void> {
  const four = read(FOUR_SPEED);
  const train: Train = {
    ...four,
    devices: [
      ...four.devices,
      { kind: 'band', name: 'second band', first: 'sun shell', second: 'case' },
      { kind: 'brake', name: 'ring brake', first: 'front.ring', second: 'case' },
    ],
  };
  const friction = train.devices.filter(isFriction).length;
  const motion = motionOf(train);
  const sweep = sweeper(motion);
  const unsure = sweep().unsure.length;
  const medians = await mediansOf({ chart: () => chart(train), sweep });
  const states = 2 * 2 ** friction;
  const chartMs = (medians.get('chart') ?? Number.NaN) / 1000;
  const stateUs = (medians.get('sweep') ?? Number.NaN) / states;
  console.log(
    `\nA train with ${friction} friction devices (${2 ** friction} combinations, both ways; ${unsure} left to the exact solver)`,
  );
  line(
    'whole chart, exact and checked',
    `${chartMs.toFixed(1)} ms`,
    `${((1000 * chartMs) / states).toFixed(1)} us a state`,
  );
  line('sweep, float path', `${stateUs.toFixed(3)} us a state`, '');
  goal('chart, ms', chartMs, 30);
  goal('sweep, us a state', stateUs, 1);
  for (const [form, us] of Object.entries(best)) {
    goal(`a state of the sweep against the fastest peer given ${form}`, stateUs / us, 1 / 15);
  }
}

/** From the start of the process to its end, against Node with nothing to do. */
function startOfTheCommand(): void {
  const command = packageJson.bin.holdturn;
  console.log('\nThe start of the command');
  if (!existsSync(command)) {
    console.log(`  ${command} is not built: npm run build`);
    return;
  }
  const rounds = 20;
  const spawn = (...args: string[]) => {
    const began = performance.now();
    const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
    if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}`);
    return performance.now() - began;
  };
  const times: [number[], number[]] = [[], []];
  for (let k = -2; k < rounds; k++) {
    const round = [
      spawn('-e', ''),
      spawn(command, 'flow', FOUR_SPEED, '--range', 'D', '--gear', '1'),
    ];
    if (k < 0) continue; // the first two warm the disk
    times.forEach((list, side) => list.push(round[side] as number));
  }
  const [empty, flow] = times.map(median) as [number, number];
  line('node with an empty script', `${empty.toFixed(1)} ms`, '');
  line('holdturn flow', `${flow.toFixed(1)} ms`, '');
  goal('beyond the start of Node, ms', flow - empty, 60);
}

/** The programme after the base's equalities are used up: what a careful caller would hand over. */
function inFreeCoordinates({ columns, rows, minimise }: Programme, base: Base): Programme {
  const width = base.free.length;
  const moved = (form: Programme['minimise']) => {
    const { coef, times } = base.reduce(form);
    const at = [...coef.keys()].filter((j) => coef[j] !== 0);
    const kept = at.map((j) => coef[j] as number);
    form.at.forEach((column, k) => {
      if (column < base.columns) return;
      at.push(width + column - base.columns);
      kept.push(Number(form.coef[k]) * Number(times));
    });
    return { at, coef: kept, times: Number(times) };
  };
  const own = rows.slice(base.rows.length).map((row) => {
    const { times, ...form } = moved(row);
    return { ...form, sense: row.sense, right: Number(row.right) * times };
  });
  const { at, coef } = moved(minimise);
  return { columns: width + columns - base.columns, rows: own, minimise: { at, coef } };
}

async function mediansOf(tasks: Record<string, () => unknown>): Promise<Map<string, number>> {
  const bench = new Bench({ time: 1000, warmupTime: 300 });
  for (const [name, task] of Object.entries(tasks)) bench.add(name, () => void task());
  await bench.run();
  return new Map(
    bench.tasks.map(({ name, result }) => {
      if (!('latency' in result))
        throw new Error(`${name} did not finish: ${JSON.stringify(result)}`);
      return [name, 1000 * result.latency.p50];
    }),
  );
}

function fastest(medians: ReadonlyMap<string, number>, names: readonly string[]): [string, number] {
  const peers = names.map((name): [string, number] => [name, medians.get(name) ?? Infinity]);
  return peers.reduce((best, peer) => (peer[1] < best[1] ? peer : best));
}

function median(numbers: readonly number[]): number {
  const sorted = numbers.toSorted((a, b) => a - b);
  const middle = sorted.length / 2;
  return ((sorted[Math.floor(middle - 0.5)] ?? 0) + (sorted[Math.ceil(middle - 0.5)] ?? 0)) / 2;
}

function line(name: string, value: string, note: string): void {
  console.log(`  ${name.padEnd(44)}${value.padStart(16)}  ${note}`.trimEnd());
}

function goal(name: string, value: number, most: number): void {
  const verdict = value <= most ? 'reached' : 'MISSED';
  console.log(
    `  goal: ${name}: ${value.toFixed(3)}, at most ${most.toFixed(3)} wanted: ${verdict}`,
  );
}

function read(file: string): Train {
  const { train, problems } = readTrain(readFileSync(path.resolve(file), 'utf8'));
  if (train === undefined) throw new Error(`${file}: ${JSON.stringify(problems)}`);
  return train;
}
