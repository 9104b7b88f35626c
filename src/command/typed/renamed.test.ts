import { expect, it } from 'vitest';
import { ask } from '../../doors/cli/asked.ts';
import { renamed } from './renamed.ts';

const K = 'trains/kestrel-three-speed.train.yaml';

// What was typed before, and what is typed now.
const RENAMED = [
  [`draw ${K} --scale`, `draw ${K} --lever`, ['--scale', '--lever']],
  [`margin ${K} --range R`, `capacity ${K} --range R`, ['margin', 'capacity']],
  [
    `endplay ${K} plays --trials 1000 --seed 7`,
    `endplay ${K} plays --trials 1000 --series 7`,
    ['--seed', '--series'],
  ],
  [`endplay ${K} plays --draws 1000`, `endplay ${K} plays --trials 1000`, ['--draws', '--trials']],
  [
    `suspects ${K} seen --practice=experience.yaml`,
    `suspects ${K} seen --experience=experience.yaml`,
    ['--practice', '--experience'],
  ],
] as const;

it.each(RENAMED)('%s does the same as %s, and says so once', async (before, now, [old, name]) => {
  const [was, is] = [await ask(before), await ask(now)];
  expect(was.exit).toBe(is.exit);
  expect(is.err).toBe('');
  expect(was.out).toBe(is.out);
  expect(was.err).toBe(`holdturn: renamed: ${old} is called ${name} now; it is still read\n`);
});

it('the sheet of torque capacity is found by the name that it had', () => {
  const told: string[] = [];
  const tell = (old: string, now: string) => void told.push(`${old} > ${now}`);
  expect(renamed(['sheet', 'margins', K], tell)).toEqual(['sheet', 'capacity', K]);
  expect(told).toEqual(['margins > capacity']);
});

it('leaves alone what only looks like an old name', () => {
  const args = ['job', 'add', 'practice', 'note', 'seed', '--by', 'TW'];
  expect(renamed(args, () => expect.unreachable())).toEqual(args);
});

it('an old word of a file is told on standard error, and the answer is the same', async () => {
  const stdin = 'D 1 over-run: runs free\nL 1 over-run: brakes\n';
  const was = await ask(`suspects ${K} -`, { stdin });
  const is = await ask(`suspects ${K} -`, { stdin: stdin.replaceAll('over-run', 'coast') });
  expect(was.out).toBe(is.out);
  expect(was.err).toBe(
    'holdturn: -:1:1: renamed: over-run is called coast now; it is still read\n',
  );
});
