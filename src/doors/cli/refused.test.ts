import { describe, expect, it } from 'vitest';
import { ask } from './asked.ts';

const K = 'trains/kestrel-three-speed.train.yaml';

// A bad use, and the one line that says what to type instead.
const REFUSED: readonly [typed: string, line: string][] = [
  ['flwo x', 'unknown verb: flwo; did you mean flow?'],
  ['xyzzy', 'unknown verb: xyzzy; type holdturn help'],
  ['help flwo', 'unknown verb: flwo; did you mean flow?'],
  [K, `missing verb before ${K}: type holdturn flow ${K}`],
  ['flow', 'missing train file: type holdturn flow FILE, or - for standard input'],
  ['check --json', 'missing train file: type holdturn check FILE, or - for standard input'],
  [`flow ${K} --gaer 1`, 'unknown option: --gaer; did you mean --gear?'],
  [`chart ${K} --zzzzzz`, 'unknown option: --zzzzzz; type holdturn help chart'],
  [`flow ${K} --range D --gear`, 'missing value: type --gear <GEAR>'],
  [
    `flow ${K} --gear 1 --on "low brake"`,
    'too much: give --on, or --range and --gear, but not both',
  ],
  [`flow ${K} low brake`, 'too much: low brake; put names with blanks in them between quotes'],
  [
    'plan trains/wren-plain-set.train.yaml',
    'no teardown in trains/wren-plain-set.train.yaml: list its parts under teardown, in the order in which they come off',
  ],
  [
    'plan parts',
    'too many parts for a plan: 61, and 60 at most; leave out of the teardown what nobody can get wrong',
  ],
  [
    'capacity trains/wren-plain-set.train.yaml',
    'no capacities in trains/wren-plain-set.train.yaml: tell under capacities how much each device can carry, by its sizes or as a torque Nm',
  ],
  [
    `capacity ${K} --pressure high`,
    'no pressure to reckon with: high; type digits above 0 with their unit, up to 100 MPa, as in --pressure 900 (kPa), --pressure "9 bar" or --pressure "130 psi"',
  ],
  [
    `capacity ${K} --torque 0`,
    'unreadable torque: 0; type it above 0, as in --torque 220 or --torque "162 lbft"',
  ],
  [
    `capacity ${K} --torque NaN`,
    'unreadable torque: NaN; type it above 0, as in --torque 220 or --torque "162 lbft"',
  ],
  [
    `capacity ${K} --stall-ratio 0.5`,
    'unreadable stall ratio: 0.5; type 1 or more, as in --stall-ratio 2',
  ],
  [
    `endplay ${K} plays --trials many`,
    'unreadable number of trials: many; type a whole number, as in --trials 1000000, from 1000 to 20000000',
  ],
  [
    `endplay ${K} plays --trials 5000 --series 0.5`,
    'unreadable series: 0.5; type a whole number, as in --series 7, from 0 to 4294967295',
  ],
  [
    `pack ${K} readings --series 7`,
    '--series is for --trials: type both, as in --trials 1000000 --series 7',
  ],
  [`band ${K}`, 'missing file of readings: type holdturn band FILE READINGS'],
  [
    `band ${K} empty`,
    'no readings in empty: write them by band, as in low band: { turns: 2.5 } or low band: { travel: [3.10 mm] }',
  ],
  [
    `wear ${K} empty`,
    'no readings in empty: write them by part, as in pump gear side: { read: [0.04 mm] }',
  ],
  [`wear ${K} bands`, 'bands:1:22: unknown key: turns; leave it out'],
  ['pack', 'missing train file: type holdturn pack FILE, or - for standard input'],
  [`pack ${K}`, 'missing file of readings: type holdturn pack FILE READINGS'],
  ['pack - -', 'standard input can be read once: give one of the two files by its path'],
  [
    `pack ${K} empty`,
    'no readings in empty: write them by device, as in low brake: { feeler: [0.42 mm, 0.44 mm, 0.42 mm] }',
  ],
  [
    'pack trains/wren-plain-set.train.yaml readings',
    'readings:1:1: no pack: forward clutch; tell its plates under packs of the train file (and one more)',
  ],
  [`endplay ${K}`, 'missing file of readings: type holdturn endplay FILE READINGS'],
  [
    `endplay ${K} empty`,
    'no readings in empty: write them by shaft, as in input shaft: [0.42 mm, 0.44 mm]',
  ],
  [
    'endplay trains/wren-plain-set.train.yaml plays',
    'plays:1:1: no end play: turbine shaft; tell it under endplay of the train file (and one more)',
  ],
  [`flow ${K} --range Q`, 'unknown range: Q; the ranges are D, L, R, N'],
  [`flow ${K} --range D --gear 7`, 'unknown gear: 7; the gears are 1, 2, 3'],
  [`flow ${K} --gear 1`, 'gear 1 stands in several ranges: add --range with one of D, L'],
  [`flow ${K} --on "frward clutch"`, 'unknown device: frward clutch; did you mean forward clutch?'],
  [
    `flow ${K} --on "low brake,low sprag"`,
    'not a friction device: low sprag is a one-way clutch, which nobody applies; leave it out of --on',
  ],
  ['flow - --on brake', 'unknown device: brake; this train has no friction devices'],
  ['flow - --range D', 'the file names no ranges: say which devices are on with --on'],
  [
    `flow ${K} --at "turbine shaft=1"`,
    'one speed is not enough: give two or more, as in --at "engine=1000,motor=0"',
  ],
  [
    `flow ${K} --at "turbine shaft:1"`,
    'unreadable speeds: turbine shaft:1; type them as in --at "engine=1000,motor=0"',
  ],
  [
    `flow ${K} --at "turbin shaft=1,sun shell=2"`,
    'unknown member: turbin shaft; did you mean turbine shaft?',
  ],
  [
    `flow ${K} --mesh-efficiency "external=1.2"`,
    'unreadable efficiency: external=1.2; type it as in --mesh-efficiency "external=0.985,internal=0.99", above 0 and at most 1',
  ],
  [
    `flow ${K} --at "turbine shaft=1,sun shell=2" --mesh-efficiency external=0.9`,
    'too much: at given speeds no losses are reckoned; leave out --mesh-efficiency or --at',
  ],
  [
    `hand ${K} --turn "sun shell" --seen-from above`,
    'unknown end: above; type --seen-from input or --seen-from output',
  ],
  [
    `hand ${K} --one-way --hold rear.carrier`,
    'unknown race: rear.carrier; type --hold outer or --hold inner',
  ],
  [`hand ${K} --one-way "low sprog"`, 'unknown one-way clutch: low sprog; did you mean low sprag?'],
  [
    `hand ${K} --one-way --turn rear.carrier`,
    'too much: --one-way asks of races; leave out --turn',
  ],
  [`faults ${K} --json --csv`, 'too much: give --json or --csv, but not both'],
  [
    `faults ${K} --only "low sprog: backwards"`,
    'unknown name in --only: low sprog; did you mean low sprag?',
  ],
  [
    `faults ${K} --only "low sprag: upside down"`,
    'unknown fault of low sprag: upside down; type one of slips, seized, backwards, left out',
  ],
  [`hand ${K}`, 'missing member to turn: type --turn MEMBER'],
  [`hand ${K} --turn "sun shel"`, 'unknown member: sun shel; did you mean sun shell?'],
  [`hand ${K} --turn case`, 'the case cannot be turned: name another member with --turn'],
  [
    `hand ${K} --turn front.sun --hold "sun shell"`,
    'the front.sun cannot be held and turned at once: leave it out of --hold',
  ],
  [
    `hand ${K} --turn "sun shell" --way up`,
    'unknown way: up; type --way clockwise or --way anticlockwise',
  ],
  [
    `flow ${K} --fault "low sprg: backwards"`,
    'unknown name in --fault: low sprg; did you mean low sprag?',
  ],
  [
    `flow ${K} --fault "low sprag: bakwards"`,
    'unknown fault of low sprag: bakwards; did you mean backwards?',
  ],
  [
    `flow ${K} --fault "low sprag: xyzzy"`,
    'unknown fault of low sprag: xyzzy; type one of slips, seized, backwards, left out',
  ],
  [
    `hand ${K} --turn "sun shell" --without "low sprg"`,
    'unknown part: low sprg; did you mean low sprag?',
  ],
  [`flow ${K} --lang fr`, 'unknown language: fr; type --lang en, es'],
  ['completion', 'missing shell: type holdturn completion bash, zsh or fish'],
  ['completion tcsh', 'unknown shell: tcsh; type holdturn completion bash, zsh or fish'],
  [
    'flow trains/kestrel-tree-speed.train.yaml',
    `no such file: trains/kestrel-tree-speed.train.yaml; did you mean ${K}?`,
  ],
  ['flow nowhere/at/all', 'no such file: nowhere/at/all; give the path of a train file'],
  ['flow trains', 'not a file: trains is a directory; give the path of a train file'],
  [
    'flow broken',
    'broken:6:25: expected a number of teeth, a whole number from 1 to 1000000, not thirty (and 2 more: type holdturn check broken)',
  ],
];

const BARE =
  'holdturn: 1\nname: Bare\ninput: a\noutput: b\nsets:\n  s: { sun: 30, ring: 66 }\njoined:\n  a: [s.sun]\n  b: [s.carrier]\n';

describe('a bad use is answered in one line', () => {
  it.each(REFUSED)('%s', async (typed, line) => {
    const answer = await ask(typed, { stdin: BARE });
    expect(answer).toEqual({ out: '', err: `holdturn: ${line}\n`, exit: 2 });
  });

  it.each(REFUSED)('in Spanish: %s', async (typed, line) => {
    if (typed.includes('--lang')) return;
    const answer = await ask(typed, { stdin: BARE, env: { LANG: 'es_ES.UTF-8' } });
    expect(answer).toMatchObject({ out: '', exit: 2 });
    expect(answer.err).toMatch(/^holdturn: [^\n]+\n$/);
    expect(answer.err).not.toContain(line);
  });

  it('whatever a name would do to the terminal', async () => {
    const { err } = await ask(`flow ${K} --on "\u001B[2Jfrward clutch"`);
    expect(err).not.toContain('\u001B');
  });
});
