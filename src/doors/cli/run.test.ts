import { describe, expect, it } from 'vitest';
import { ask } from './asked.ts';

const K = 'trains/kestrel-three-speed.train.yaml';
const answer = async (typed: string) => JSON.parse((await ask(`${typed} --json`)).out);

describe('--json', () => {
  // Worked by hand: 0.83 + 1.60 - 2.00 = 0.43 mm, and 210.00 - 31.00 - 1.60 - 176.90 = 0.50 mm.
  it('endplay: the reading, what to add, and the washer', async () => {
    const [shaft] = await answer(`endplay ${K} plays`);
    expect(shaft).toMatchObject({
      shaft: 'turbine shaft',
      endPlay: { mm: '0.83', in: '0.0327', um: { exact: '830' } },
      limits: { source: 'invented for the class' },
      verdict: 'too big',
      thicker: { from: { mm: '0.18' }, to: { mm: '0.48' } },
      byTheFile: { clearance: { mm: '0.50' }, plusMinus: { mm: '0.27' } },
      selection: { best: { size: { mm: '2.00' }, clearance: { mm: '0.43' }, verdict: 'inside' } },
      remarks: [],
    });
  });

  // Worked by hand: the mean of 1.42, 1.44, 1.43 and 1.40 is 1.4225 mm. A steel is worn, so new ones
  // change the gap, and no part is chosen; the steel limit has no source.
  it('pack: lengths in both units, exact micrometres, and what to look at', async () => {
    const [forward, second] = await answer(`pack ${K} readings`);
    expect(forward.clearance).toEqual({
      mm: '1.42',
      in: '0.0560',
      um: { exact: '2845/2', value: 1422.5 },
    });
    expect([forward.by, forward.verdict, forward.gauge.verdict]).toEqual([
      'feeler',
      'too big',
      'too big',
    ]);
    expect(forward.limits).toMatchObject({ source: 'invented for the class', by: 'HT' });
    expect(forward.selection).toBe(null);
    expect(forward.wear[1]).toMatchObject({ verdict: 'too small', limits: { source: null } });
    expect(forward.remarks).toEqual([
      { remark: 'worn', what: 'steel' },
      { remark: 'coned or warped' },
    ]);
    expect(second.remarks[1]).toMatchObject({ remark: 'coned on purpose', by: { mm: '0.30' } });
  });

  // The figures are worked by hand: 17/7 = 1 + 1 + 1·(36/84)·... of the twin 36/84 sets, as
  // Willis's relation gives them for a held rear carrier.
  it('flow: the forms that other programs read', async () => {
    const { on, drive, coast, rollback } = await answer(`flow ${K} --range D --gear 1`);
    expect(on).toEqual(['forward clutch']);
    expect(drive.state).toBe('driving');
    expect(drive.ratio).toEqual({ exact: '17/7', value: 17 / 7 });
    expect(drive.speeds['front.sun']).toEqual({ exact: '-49/51', value: -49 / 51 });
    expect(drive.torques['output']).toEqual({ exact: '-17/7', value: -17 / 7 });
    expect(drive.devices['low sprag']).toEqual({
      state: 'holding',
      slip: { exact: '0', value: 0 },
      torque: { exact: '10/7', value: 10 / 7 },
    });
    expect(drive.speeds['second race']).toEqual({
      from: null,
      to: -49 / 51,
      toExact: '-49/51',
    });
    expect(drive.why).toContain('The rear carrier is pushed anticlockwise onto the low sprag');
    expect(coast).toMatchObject({ state: 'neutral', engineBraking: false });
    expect(coast).not.toHaveProperty('ratio');
    expect(rollback.inputHeld).toMatchObject({ rolls: false });
  });

  it('flow: a shared reaction is a range', async () => {
    const { drive } = await answer(`flow ${K} --range L --gear 1`);
    expect(drive.devices['low brake'].torque).toEqual({
      from: 0,
      to: 10 / 7,
      fromExact: '0',
      toExact: '10/7',
    });
  });

  it('flow: every gear, where none is asked for', async () => {
    const { gears } = await answer(`flow ${K} --range L`);
    expect(
      gears.map((gear: { range: string; gear: string }) => `${gear.range} ${gear.gear}`),
    ).toEqual(['L 1', 'L 2']);
    expect(gears[0].drive.ratio.exact).toBe('17/7');
  });

  it('chart: every combination, and the steps', async () => {
    const { gears, steps } = await answer(`chart ${K}`);
    expect(gears).toHaveLength(32);
    expect(gears[1]).toEqual({
      on: ['forward clutch'],
      drive: 'driving',
      ratio: { exact: '17/7', value: 17 / 7 },
      coast: 'neutral',
      named: ['D 1'],
    });
    expect(gears[0]).toMatchObject({ on: [], drive: 'neutral', coast: 'neutral' });
    expect(gears[0]).not.toHaveProperty('ratio');
    expect(steps.length).toBeGreaterThan(0);
  });

  // Common practice, no source: a race held, the other turned, one way free and one way locked.
  it('hand: turns, or locks because', async () => {
    const free = await answer(`hand ${K} --turn rear.carrier --way clockwise`);
    expect(free).toMatchObject({
      turns: true,
      moves: { 'rear.carrier': { exact: '1', value: 1 } },
    });
    expect(free.moves['sun shell']).toEqual({ from: null, to: null });
    const locked = await answer(`hand ${K} --turn rear.carrier --way anticlockwise`);
    expect(locked.turns).toBe(false);
    expect(locked.because.torques['low sprag']).toEqual({ exact: '1', value: 1 });
    expect(locked.why).toContain('locks anticlockwise');
  });

  it('hand: both ways where none is asked for', async () => {
    const both = await answer(`hand ${K} --turn rear.carrier`);
    expect([both.clockwise.turns, both.anticlockwise.turns]).toEqual([true, false]);
  });

  it('faults: every gear of every fault, its class and its first signs', async () => {
    const only = '--only "low sprag: seized,low brake: will not release"';
    const { gears, faults, classes } = await answer(`faults ${K} ${only}`);
    expect(gears[0]).toEqual({
      range: 'D',
      gear: '1',
      on: ['forward clutch'],
      drive: { state: 'driving', ratio: { exact: '17/7', value: 17 / 7 } },
      coast: { state: 'neutral' },
    });
    expect(faults.map((row: { faults: string[] }) => row.faults)).toEqual([
      ['low sprag: seized'],
      ['low brake: will not release'],
    ]);
    expect(faults[0].gears[0]).toMatchObject({
      drive: { is: 'same' },
      coast: { is: 'drives', ratio: { exact: '17/7' } },
      engineBraking: 'gained',
    });
    expect(faults[0].road).toMatchObject({ range: 'D', gear: '1', end: 'coast' });
    expect(faults[0].bench).toMatchObject({
      hold: [],
      turn: 'rear.carrier',
      way: 'clockwise',
      turns: false,
    });
    expect(classes).toEqual([{ rows: [0, 1], silent: false }]);
    const { faults: pairs } = await answer(`faults ${K} ${only} --pairs`);
    expect(pairs).toHaveLength(3);
    expect(pairs[2]).not.toHaveProperty('bench');
  });

  it('hand: an end of the unit may have a name of its own', async () => {
    const typed = 'hand trains/avocet-four-speed.train.yaml --one-way';
    const named = await ask(`${typed} --seen-from "Cover end"`);
    expect(named.out).toContain('seen from the cover end');
    expect(named.out).toBe((await ask(`${typed} --seen-from output`)).out);
    expect((await ask(typed)).out).toContain('seen from the pump end');
    const { exit, err } = await ask(`${typed} --seen-from "far end"`);
    expect([exit, err.trim()]).toEqual([
      2,
      'holdturn: unknown end: far end; type --seen-from with pump end, cover end, input, output',
    ]);
  });

  it('hand: a statement of a one-way clutch has its four things', async () => {
    const typed = `hand ${K} --one-way "low sprag" --hold inner --seen-from output`;
    expect(await answer(typed)).toMatchObject([
      {
        hold: 'inner',
        held: 'rear.carrier',
        turned: 'case',
        seenFrom: 'output',
        free: 'clockwise',
      },
      { fitted: 'other way up', free: 'anticlockwise' },
    ]);
  });

  // The reader's words turn round, the numbers' signs do not.
  it('hand and flow: seen from the other end', async () => {
    const typed = `hand ${K} --turn rear.carrier`;
    const [here, there] = [await answer(typed), await answer(`${typed} --seen-from output`)];
    expect(there.anticlockwise.moves).toEqual(here.clockwise.moves);
    expect(there.clockwise.because).toEqual(here.anticlockwise.because);
    const flow = await answer(`flow ${K} --range D --gear 1 --seen-from output`);
    expect(flow.drive.speeds['front.sun'].exact).toBe('-49/51');
    expect(flow.drive.why).toContain('is turned anticlockwise, seen from the output end');
  });

  it('check: errors and warnings with places, and exit code 1 for an error', async () => {
    const { out, exit } = await ask('check broken --json');
    expect(exit).toBe(1);
    const { errors, warnings } = JSON.parse(out);
    expect(errors).toHaveLength(3);
    expect(errors[2]).toEqual({
      line: 12,
      column: 14,
      message: 'unknown device: rnig band; did you mean ring band?',
    });
    expect(warnings).toEqual([]);
    expect((await ask(`check ${K} --json`)).exit).toBe(0);
  });
});

describe('--csv', () => {
  it('tells the application chart in the words that its marks stand for', async () => {
    const { out } = await ask(`chart ${K} --csv`);
    const lines = out.trimEnd().split('\r\n');
    expect(lines[0]).toBe(
      'gear,state,forward clutch,direct clutch,intermediate band,second brake,second roller,low brake,low sprag,ratio,engine braking',
    );
    expect(lines[1]).toBe('D 1,Under power,on,off,off,off,off,off,holds,2.4285714285714284,');
    expect(lines[3]).toBe('D 3,Under power,on,on,off,idle,over-runs,off,over-runs,1,');
    expect(lines[8]).toMatch(/^D 1,On coast,/u);
    expect(lines).toHaveLength(15);
    const { out: spanish } = await ask(`chart ${K} --csv --lang es`);
    expect(spanish.split('\r\n')[3]).toContain(',aplicado,aplicado,suelto,sin carga,gira libre,');
  });

  it('has the healthy train first, a line a fault, and as many values in each', async () => {
    const { out } = await ask(`faults ${K} --only "low sprag: backwards" --csv`);
    const [heads = '', healthy = '', fault = ''] = out.trimEnd().split('\r\n');
    expect(heads).toMatch(/^fault,class,D 1 under power,D 1 on coast,.*,on the bench$/);
    expect(healthy).toMatch(/^healthy,,2\.42857142\d*,runs free,/);
    expect(fault).toMatch(/^low sprag: backwards,1,neutral,2\.42857142\d*,tied up,tied up,/);
    const values = (line: string) => line.replaceAll(/"[^"]*"/g, '').split(',').length;
    expect([healthy, fault].map(values)).toEqual([values(heads), values(heads)]);
  });

  // A spreadsheet would run a text that begins with an equals sign.
  it('has no formulas', async () => {
    const text =
      'holdturn: 1\nname: A\ninput: a\noutput: b\nsets:\n  s: { sun: 30, ring: 60 }\njoined:\n  a: [s.sun]\n  b: [s.carrier]\ndevices:\n  "=1+2": { band: s.ring }\nranges:\n  D: { "1": ["=1+2"] }\n';
    const { out } = await ask('faults - --csv', { stdin: text });
    expect(out).toContain("\r\n'=1+2: will not apply,");
    expect(out).not.toMatch(/^=/m);
  });
});

describe('the reader', () => {
  it('is spoken to in the language of the environment, and of --lang before that', async () => {
    const first = async (typed: string, env: Record<string, string>) =>
      (await ask(typed, { env })).out.split('\n').slice(1, 3).join(' ');
    expect(await first(`flow ${K} --range D --gear 1`, { LANG: 'es_MX.UTF-8' })).toContain(
      'En tracción',
    );
    expect(await first(`flow ${K} --range D --gear 1`, { LC_ALL: 'C', LANG: 'es_ES' })).toContain(
      'Under power',
    );
    expect(await first(`flow ${K} --range D --gear 1`, { LANG: 'de_DE' })).toContain('Under power');
    expect(await first(`flow ${K} --range D --gear 1 --lang=en`, { LANG: 'es' })).toContain(
      'Under power',
    );
  });

  it('sees colour on a terminal only, NO_COLOR and FORCE_COLOR kept', async () => {
    const typed = `flow ${K} --range D --gear 1`;
    const coloured = async (terminal: boolean, env: Record<string, string> = {}) =>
      (await ask(typed, { terminal, env })).out.includes('\u001B');
    expect(await coloured(true)).toBe(true);
    expect(await coloured(false)).toBe(false);
    expect(await coloured(true, { NO_COLOR: '1' })).toBe(false);
    expect(await coloured(true, { TERM: 'dumb' })).toBe(false);
    expect(await coloured(false, { FORCE_COLOR: '1' })).toBe(true);
    expect(await coloured(true, { FORCE_COLOR: '0' })).toBe(false);
  });

  it('reads the same words with and without colour', async () => {
    const typed = `flow ${K} --on "forward clutch,direct clutch,low brake"`;
    const [plain, dressed] = [await ask(typed), await ask(typed, { terminal: true })];
    // oxlint-disable-next-line no-control-regex
    expect(dressed.out.replaceAll(/\u001B\[\d+m/g, '')).toBe(plain.out);
  });

  it('may pipe a train in', async () => {
    const text =
      'holdturn: 1\nname: Piped\ninput: a\noutput: b\nsets:\n  s: { sun: 30, ring: 60 }\njoined:\n  a: [s.sun]\n  b: [s.carrier]\ndevices:\n  band: { band: s.ring }\n';
    const { out } = await ask('flow - --on band', { stdin: text });
    expect(out).toContain('at a ratio of 3,');
  });

  it.each(['bash', 'zsh', 'fish'])('may have %s complete verbs and options', async (shell) => {
    const { out, exit } = await ask(`completion ${shell}`);
    expect(exit).toBe(0);
    for (const word of [
      'check',
      'flow',
      'chart',
      'hand',
      'faults',
      'mesh-efficiency',
      'anticlockwise',
    ])
      expect(out).toContain(word);
  });

  it('finds the version', async () => {
    expect((await ask('--version')).out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
