import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { ask } from './asked.ts';
import { lineOf } from '../../shop/records/line.ts';

const K = path.resolve('trains/kestrel-three-speed.train.yaml');
const folder = fs.mkdtempSync(path.join(fs.realpathSync(os.tmpdir()), 'holdturn-cli-job-'));
const file = path.join(folder, 'bench 4.job.yaml');
afterAll(() => fs.rmSync(folder, { recursive: true }));

// An invented job of invented people.
const text = () => fs.readFileSync(file, 'utf8');
const job = async (action: string, words = '') => ask(`job ${action} "${file}" ${words}`);
const idOf = ({ out }: { out: string }) => out.slice(0, 8);
beforeEach(async () => {
  fs.rmSync(file, { force: true });
  await job('new', `--unit "bench 4" --complaint "slips when hot" --by TW --train ${K}`);
});

describe('a job', () => {
  it('is opened with the hash of its train, and never a second time', async () => {
    expect(text()).toMatch(/^train: \{ file: .*kestrel.*, hash: "[0-9a-f]{12}" \}$/mu);
    const before = text();
    const { err, exit } = await job('new', '--unit other --by HT');
    expect([exit, err]).toEqual([
      2,
      `holdturn: ${file} is there already: a job is only added to; choose another name\n`,
    ]);
    expect(text()).toBe(before);
    expect(fs.readdirSync(folder)).toEqual([path.basename(file)]);
  });

  it('shows what was added, and what was struck, as it is read at 80 columns', async () => {
    await job('add', 'seen "D 2: slips, not sure" --by TW --time 2026-11-25T09:00Z');
    const read = await job(
      'add',
      'reading "forward clutch" "feeler: [1.42 mm, 1.44 mm]" --by TW --time 2026-11-25T09:10Z',
    );
    await job('add', 'check "turn rear.carrier clockwise" locks --predicted turns --by HT');
    const id = idOf(read);
    const by = await job(
      'strike',
      `${id} reading "forward clutch" "feeler: [1.24 mm]" --by HT --because "wrong scale"`,
    );
    fs.appendFileSync(file, '- { at: 2026-11-25T1');
    const { out, exit } = await job('show');
    expect(exit).toBe(0);
    expect(out).toBe(`Job: bench 4
Train: ${path.relative(folder, K)}
Complaint: slips when hot
Opened by TW, 2026-11-25 12:40 UTC

What of the file cannot be read (it stays there)
! line 17: half written entry: it was cut short, and is left out; what was not
  kept must be added again

What was written down, in the order of time

2026-11-25 09:00 UTC  TW  ${text().match(/id: (\S+)/u)?.[1]}
  Seen, D 2: slips, not sure

2026-11-25 09:10 UTC  TW  ${id}
  ~~Read, forward clutch: feeler: [1.42 mm, 1.44 mm]~~
  struck by HT in ${idOf(by)}

${[...text().matchAll(/^- .*check: .*id: (\S+) \}$/gmu)]
  .map(
    ([, its]) =>
      `2026-11-25 12:40 UTC  HT  ${its}\n  Checked, turn rear carrier clockwise: predicted turns; felt locks\n`,
  )
  .concat(
    `2026-11-25 12:40 UTC  HT  ${idOf(by)}\n  Read, forward clutch: feeler: [1.24 mm]\n  strikes ${id}: wrong scale\n`,
  )
  .toSorted()
  .join('\n')}`);
  });

  it('shows of a photograph what it is of', async () => {
    await job('add', 'photograph a.jpg "part: sun shell, step: strip 4" --by TW');
    await job('add', 'photograph b.jpg "step: strip 5" --by TW');
    await job('add', 'photograph c.jpg --by TW');
    expect(text()).toContain('photograph: { file: a.jpg, part: sun shell, step: strip 4 }, id:');
    expect(text()).toContain('photograph: c.jpg, id:');
    const { out } = await job('show');
    expect(out).toContain('Photograph: a.jpg, of sun shell, at strip 4\n');
    expect(out).toContain('Photograph: b.jpg, at strip 5\n');
    expect(out).toContain('Photograph: c.jpg\n');
    const { err } = await job('add', 'photograph a.jpg "prat: x" --by TW');
    expect(err).toContain('unreadable: prat: x; type it as in photograph');
  });

  it('goes on on a line of its own after one that was cut', async () => {
    fs.appendFileSync(file, '- { at: 2026-11-25T1');
    const { out } = await job('add', 'note after --by TW');
    const { out: shown } = await job('show', '--json');
    const { entries, problems } = JSON.parse(shown);
    expect(entries).toMatchObject([{ id: idOf({ out }), told: { note: 'after' } }]);
    expect(problems).toMatchObject([{ line: 9, column: 1 }]);
    expect(text()).toContain('\n- { at: 2026-11-25T1\n');
  });

  it('tells the id of what was added to a program', async () => {
    const { out } = await job('add', 'signed "build sheet" --by TW --json');
    expect(text()).toContain(`id: ${JSON.parse(out).id} }\n`);
  });
});

describe('is refused, and nothing is written:', () => {
  it.each([
    ['shw', '', 'unknown thing to do with a job: shw; did you mean show?'],
    ['new', '--by TW', 'missing option: add --unit'],
    ['add', 'note x', 'missing option: add --by'],
    ['add', 'noet x --by TW', 'unknown kind of entry: noet; did you mean note?'],
    ['add', 'note --by TW', 'missing words after note: type them as in note "the drum is scored"'],
    ['add', 'note a b --by TW', 'too much: b; put names with blanks in them between quotes'],
    [
      'add',
      'reading "turbine shaft" 0.82 --by TW',
      'nothing was written down: expected a length with its unit, as in 0.42 mm, 0.017 in, 17 thou or 1/64 in, not 0.82',
    ],
    [
      'add',
      'reading "turbine shaft" "NaN mm" --by TW',
      'nothing was written down: expected a length with its unit, as in 0.42 mm, 0.017 in, 17 thou or 1/64 in, not NaN mm',
    ],
    [
      'add',
      'reading "turbine shaft" "[-0.1 mm]" --by TW',
      'nothing was written down: expected a length with its unit, as in 0.42 mm, 0.017 in, 17 thou or 1/64 in, not "-0.1 mm"',
    ],
    [
      'add',
      'reading "forward clutch" "feeler: [1 mm" --by TW',
      'unreadable: feeler: [1 mm; type it as in reading "low brake" "feeler: [0.42 mm]"',
    ],
    [
      'add',
      'reading "forwrad clutch" "feeler: [1 mm]" --by TW',
      'nothing was written down: nothing measured: forwrad clutch; did you mean forward clutch?',
    ],
    [
      'add',
      'seen "D 9: slips" --by TW',
      'nothing was written down: unknown test: D 9; did you mean D 1?',
    ],
    [
      'add',
      'check "turn rear.carier clockwise" locks --by TW',
      'nothing was written down: unknown test: turn rear.carier clockwise; did you mean turn rear.carrier clockwise?',
    ],
    [
      'add',
      'limit "forward clutch" "lest: 0.80 mm" --by TW',
      'nothing was written down: unknown key: lest; did you mean least?',
    ],
    ...['0.3 to 0.6', 'rubbish', '0.30 mm'].map((said) => [
      'add',
      `limit "turbine shaft" "${said}" --by TW`,
      `unreadable: ${said}; type it as in limit "low brake" "least: 0.80 mm, most: 1.20 mm, source: manual p. 12"`,
    ]),
    [
      'add',
      'limit "turbine shaft" "source: manual p. 12" --by TW',
      'nothing was written down: missing key: add least or most',
    ],
    [
      'add',
      'limit "turbine shaft" "least: 0.60 mm, most: 0.30 mm" --by TW',
      'nothing was written down: ends reversed: the least, 0.60 mm, is more than the most, 0.30 mm; swap or correct them',
    ],
    [
      'add',
      'limit "turbine shaft" "least: 0.3, most: 0.6" --by TW',
      'nothing was written down: expected a length with its unit, as in 0.42 mm, 0.017 in, 17 thou or 1/64 in, not "0.3"',
    ],
    [
      'add',
      'limit "low sprag" "least: 0.30 mm" --by TW',
      'nothing was written down: nothing measured: low sprag; tell in the train file what is measured of it, under packs, endplay, preload, bands or wear',
    ],
    [
      'add',
      'limit "second brake" "most: 1.20 mm" --by TW',
      'nothing was written down: missing key: add least',
    ],
    [
      'add',
      'limit "turbine shaft" "least: 0.30 mm, most: 0.60 in" --by TW',
      'nothing was written down: two units: the least is 0.30 mm and the most 0.60 in; write both in the unit of their source',
    ],
    [
      'add',
      'limit "forward clutch" "of: travel, least: 0.30 mm" --by TW',
      'nothing was written down: expected what the limit is of: clearance, each friction, friction, steel or cone of a pack; clearance or travel of a band, not travel',
    ],
    [
      'add',
      'limit "intermediate band" "of: travel, most: 3.40 mm" --by TW',
      'nothing was written down: missing key: add least',
    ],
    [
      'add',
      'note x --by TW --time 12:40',
      'unreadable time: 12:40; type it as in --time "2026-11-25 12:40"',
    ],
    [
      'add',
      'chosen "forward cluch" "5.20 mm backing plate" --by TW',
      'unknown device or shaft: forward cluch; did you mean forward clutch?',
    ],
    [
      'add',
      'note x --by TW --time 2026-02-30T08:00',
      'unreadable time: 2026-02-30T08:00; type it as in --time "2026-11-25 12:40"',
    ],
    [
      'add',
      'note "a\u202eb" --by TW',
      'nothing was written down: bad character: U+202E, which turns the letters behind it round; take it out',
    ],
    [
      'add',
      'note x --by <TW>',
      'nothing was written down: expected initials, 1 to 8 letters and digits, as in TW, not "<TW>"',
    ],
    ['strike', '', 'missing the id of an entry: holdturn job show FILE tells the ids'],
    ['strike', 'a2345678 --by TW', 'missing option: add --because'],
    [
      'strike',
      'a2345678 --by TW --because why',
      'no such entry, or several: a2345678; holdturn job show FILE tells the ids',
    ],
  ])('job %s FILE %s', async (action, words, line) => {
    const before = text();
    const { out, err, exit } = await job(action, words);
    expect([exit, out, err]).toEqual([2, '', `holdturn: ${line}\n`]);
    expect(text()).toBe(before);
  });

  it('a train file', async () => {
    const { err, exit } = await ask(`job show ${K}`);
    expect([exit, err]).toEqual([
      2,
      expect.stringContaining('unknown key: holdturn; did you mean holdturn job?'),
    ]);
  });

  it('no file at all', async () => {
    const { err } = await ask(`job add ${folder}/none.job.yaml note x --by TW`);
    expect(err).toMatch(/no such file/u);
  });
});

describe('--job', () => {
  const told = async (verb: string) => ask(`${verb} ${K} --job "${file}"`);

  it('gives pack the latest readings that stand, and the limits', async () => {
    await job('add', 'reading "forward clutch" "feeler: [1.42 mm, 1.44 mm]" --by TW');
    const late = '--by TW --time 2027-01-01T00:00Z';
    const { out } = await job('add', `reading "forward clutch" "feeler: [9.99 mm]" ${late}`);
    await job('strike', `${idOf({ out })} --by TW --because "wrong pack"`);
    await job('add', 'limit "forward clutch" "least: 1.41 mm, most: 1.45 mm" --by HT');
    const { out: json, exit } = await ask(`pack ${K} --job "${file}" --json`);
    expect(JSON.parse(json)).toMatchObject([
      { device: 'forward clutch', clearance: { mm: '1.43' }, verdict: 'inside' },
    ]);
    expect(exit).toBe(0);
    expect((await told('pack')).out).toContain('unsourced');
  });

  it('never lets a limit that says nothing, or only half, hide what the file says', async () => {
    await job('add', 'reading "turbine shaft" "0.83 mm" --by TW');
    await job('add', 'limit "turbine shaft" "least: 0.20 mm" --by TW');
    // As older versions wrote them: spoilt, and newer than the good one.
    for (const said of ['{ by: TW }', '{ least: "0.9 mm", most: "0.1 mm" }', 'rubbish']) {
      const { line } = lineOf(
        `at: 2027-01-01T00:00:00.000Z, who: TW, limit: { turbine shaft: ${said} }`,
      );
      fs.appendFileSync(file, `\n${line}\n`);
    }
    const { line } = lineOf(
      'at: 2027-01-01T00:00:00.000Z, who: TW, limit: { low sprag: { most: "9 mm" } }',
    );
    fs.appendFileSync(file, `\n${line}\n`);
    const { out, exit } = await ask(`endplay ${K} --job "${file}" --json`);
    const limits = { least: { mm: '0.20' }, most: { mm: '0.65' }, source: null };
    expect(JSON.parse(out)).toMatchObject([{ verdict: 'too big', limits }]);
    expect(exit).toBe(1);
    expect((await told('endplay')).out).toMatch(
      /! 4 lines of the job are left out:.*job\.yaml:14/su,
    );
  });

  it('gives endplay what was read, behind a file of readings', async () => {
    await job('add', 'reading "turbine shaft" "0.41 mm" --by TW');
    const { out } = await ask(`endplay ${K} --job "${file}" --json`);
    expect(JSON.parse(out)).toMatchObject([{ shaft: 'turbine shaft' }]);
    const { out: both } = await ask(`endplay ${K} plays --job "${file}" --json`);
    expect(JSON.parse(both)).toHaveLength(2);
    expect(both).toContain('"0.83"');
    expect(both).not.toContain('"0.41"');
  });

  it('gives band and wear what was read, with the limits of the job', async () => {
    await job('add', 'reading "intermediate band" "turns: 2" --by TW');
    await job('add', 'reading "stator bushing" "bore: [38,10 mm], shaft: [38,03 mm]" --by TW');
    await job(
      'add',
      'limit "intermediate band" "of: travel, least: 1.00 mm, most: 9.00 mm, sure: yes" --by HT',
    );
    await job('add', 'limit "stator bushing" "most: 0.06 mm" --by HT');
    const { out: bands, exit } = await ask(`band ${K} --job "${file}" --json`);
    expect(JSON.parse(bands)).toMatchObject([
      { verdict: 'inside', limits: { least: { mm: '1.00' }, most: { mm: '9.00' } } },
    ]);
    const { out: worn, exit: bad } = await ask(`wear ${K} --job "${file}" --json`);
    expect(JSON.parse(worn)).toMatchObject([
      { verdict: 'too big', limits: { least: { mm: '0.03' } } },
    ]);
    expect([exit, bad]).toEqual([0, 1]);
    const { out } = await told('wear');
    expect(out.replaceAll(/\s+/gu, ' ')).toMatch(
      /! The limit of stator bushing is the job’s: 0\.03 mm .* to 0\.06 mm .*The train file has 0\.03/u,
    );
  });

  it('closes an end play by what was read again', async () => {
    await job('add', 'reading "turbine shaft" "0,83 mm" --by TW');
    await job(
      'add',
      'reading "turbine shaft" "again: { fitted: 2.00 mm, read: [0.43 mm] }" --by TW',
    );
    const { out, exit } = await ask(`endplay ${K} --job "${file}" --json`);
    expect(JSON.parse(out)).toMatchObject([
      { endPlay: { mm: '0.83' }, again: { verdict: 'inside', agrees: true } },
    ]);
    expect(exit).toBe(0);
    expect((await told('endplay')).out).toMatch(/That\s+closes\s+it\./u);
  });

  it('gives preload what was read', async () => {
    const dunlin = path.resolve('trains/dunlin-final-drive.train.yaml');
    await job(
      'add',
      `reading "differential bearings" "turning: [2,5 Nm]" --by TW --train ${dunlin}`,
    );
    const { out, exit } = await ask(`preload ${dunlin} --job "${file}" --json`);
    expect(JSON.parse(out)).toMatchObject([{ torque: { Nm: '2.5' }, verdict: 'too big' }]);
    expect(exit).toBe(1);
  });

  it('reads pressures in any unit', async () => {
    const air = (pressure: string) => `on air: { pressure: ${pressure}, strokes: [1.55 mm] }`;
    for (const pressure of ['300 kPa', '3,0 bar', '0.3 MPa', '43.5 psi', '3.06 kgf/cm2']) {
      // One after another, as a person types.
      // oxlint-disable-next-line no-await-in-loop
      await job('add', `reading "forward clutch" "${air(pressure)}" --by TW`);
      // oxlint-disable-next-line no-await-in-loop
      const { out } = await ask(`pack ${K} --job "${file}" --json`);
      expect([pressure, JSON.parse(out)[0].remarks]).toEqual([pressure, []]);
    }
  });

  it('gives suspects what was seen', async () => {
    await job('add', 'seen "D 2: slips" --by TW');
    const { out } = await told('suspects');
    expect(out).toMatch(/D 2/u);
  });

  it('with nothing in it refuses, and tells what of it was left out', async () => {
    expect((await told('pack')).err).toContain(`no readings in ${file}`);
    fs.appendFileSync(file, '- { at: 2026');
    const { out } = await told('suspects');
    expect(out).toContain('half written');
  });
});
