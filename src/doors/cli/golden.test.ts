import fs from 'node:fs';
import path from 'node:path';
import width from 'fast-string-width';
import { describe, expect, it } from 'vitest';
import { expectKept } from '../../../test/kept.ts';
import { type Ran, ask } from './asked.ts';

// What is typed, and what comes back, kept in golden/ and read in a window of 80 columns.
const FOLDER = path.join(import.meta.dirname, 'golden');

const KESTREL = 'trains/kestrel-three-speed.train.yaml';
const HERON = 'trains/heron-eight-speed.train.yaml';
const WREN = 'trains/wren-plain-set.train.yaml';
const DUNLIN = 'trains/dunlin-final-drive.train.yaml';
const AVOCET = 'trains/avocet-four-speed.train.yaml';
const TERN = 'trains/tern-power-split.train.yaml';

const TYPED: Readonly<Record<string, readonly string[]>> = {
  help: ['help', 'help flow', 'help hand --lang es'],
  check: [`check ${KESTREL}`, 'check broken', 'check broken --lang es'],
  'flow first gear': [`flow ${KESTREL} --range D --gear 1`],
  'flow reverse in Spanish': [`flow ${KESTREL} --gear R --lang es`],
  'flow third gear in full': [`flow ${KESTREL} --range D --gear 3 --all`],
  'flow shared reaction': [`flow ${KESTREL} --range L --gear 1`],
  'flow tied up': [`flow ${KESTREL} --on "forward clutch,direct clutch,low brake"`],
  'flow neutral': [`flow ${KESTREL} --on ""`],
  'flow every gear': [`flow ${KESTREL}`, `flow ${KESTREL} --range L`],
  'flow at two speeds': [`flow ${TERN} --at "engine shaft=1000,generator shaft=-400" --on ""`],
  'flow with faults': [
    `flow ${KESTREL} --fault "low sprag: backwards" --fault "second brake: will not apply"`,
  ],
  'flow long and wide names': ['flow wide --on "多片式离合器一号"'],
  chart: [`chart ${KESTREL}`],
  'chart in full': [`chart ${KESTREL} --all`],
  endplay: [`endplay ${KESTREL} plays`, `endplay ${KESTREL} tight --inch --lang es`],
  'stacks by chance': [
    `endplay ${KESTREL} plays --trials 100000 --series 7`,
    `pack ${KESTREL} readings --trials 1000 --series 7 --lang es`,
  ],
  band: [`band ${KESTREL} bands`, `band ${AVOCET} rods --inch --lang es`],
  preload: [
    `preload ${DUNLIN} preloads`,
    `preload ${DUNLIN} preloads --inch --lang es`,
    `preload ${DUNLIN} wrenched`,
    `endplay ${DUNLIN} teeth`,
  ],
  wear: [`wear ${KESTREL} worn`, `wear ${KESTREL} worn --lang es`],
  'pack measured again': [`pack ${KESTREL} closed`],
  pack: [`pack ${KESTREL} readings`],
  'pack in Spanish': [`pack ${KESTREL} readings --inch --lang es`],
  'pack to be counted': [`pack ${KESTREL} miscounted`, `pack ${KESTREL} unread`],
  suspects: [
    `suspects ${KESTREL} seen`,
    `suspects ${KESTREL} doubtful`,
    `suspects ${KESTREL} seen --lang es`,
  ],
  'suspects in triage': [`suspects ${KESTREL} sick`, `suspects ${KESTREL} sick --lang es`],
  'suspects by ear and by engine speed': [
    `suspects ${KESTREL} noisy`,
    `suspects ${KESTREL} clocked`,
    `suspects ${KESTREL} noisy --lang es`,
  ],
  hand: [
    `hand ${KESTREL} --turn rear.carrier`,
    `hand ${KESTREL} --turn "turbine shaft" --hold "main shaft" --on "forward clutch" --way cw`,
    `hand ${KESTREL} --turn rear.carrier --way anticlockwise --fault "low sprag: backwards"`,
    `hand ${KESTREL} --turn "rear arm" --way anticlockwise --without "low sprag" --lang es`,
  ],
  'hand one-way': [
    `hand ${KESTREL} --one-way`,
    `hand ${KESTREL} --one-way "low sprag" --hold inner --seen-from output`,
    `hand ${KESTREL} --one-way "low sprag" --fault "low sprag: seized" --lang es`,
    `hand ${KESTREL} --turn rear.carrier --way clockwise --seen-from output`,
    `hand ${HERON} --one-way`,
  ],
  faults: [`faults ${KESTREL}`],
  'faults in Spanish': [
    `faults ${HERON} --lang es --only "drum brake: will not apply,middle.planet: seized,front tube: stripped at front.sun,locking clutch: will not release"`,
  ],
  'faults of gears with long names': [
    `faults ${WREN} --only "hold sun: will not apply,wren.planet: stripped"`,
  ],
  'faults two at once': [
    `faults ${KESTREL} --pairs --only "low sprag: seized,second brake: will not apply,low brake: will not release"`,
  ],
  'faults for the reader': [
    `faults ${KESTREL} --only "low sprag: backwards" --hold inner --seen-from output`,
  ],
  'capacity with a fault': [
    `capacity ${KESTREL} --range D --fault "low sprag: seized"`,
    `capacity ${KESTREL} --range L --without "low brake" --lang es`,
  ],
  capacity: [`capacity ${KESTREL}`, `capacity ${HERON} --torque 160 --range R`],
  'capacity of a gear': [
    `capacity ${KESTREL} --range L --gear 2 --pressure "130 psi" --lang es`,
    `capacity ${KESTREL} --gear R --torque "162 lbft" --stall-ratio 1.8 --pressure "14 bar"`,
  ],
  plan: [`plan ${KESTREL}`],
  'plan in Spanish': [`plan ${HERON} --lang es`],
  'plan seen from the output': [`plan ${AVOCET} --seen-from output`],
};

// What is typed line by line, after the command.
const INTERVIEWS: Readonly<Record<string, readonly [command: string, lines: readonly string[]]>> = {
  interview: [
    `suspects ${KESTREL}`,
    ['slips in second when hot, no reverse; third is fine', 'burnt', 'good', 'late?', 'q'],
  ],
  'interview that goes on': [`suspects ${KESTREL} seen --ask`, ['y', 'p', 'q']],
  'interview in Spanish': [
    `suspects ${KESTREL} --lang es`,
    ['ruido en primera y segunda, tercera silenciosa', 'limpio', 's', 'q'],
  ],
};

function shown(typed: string, { out, err, exit }: Ran): string {
  const error = err === '' ? '' : `(standard error) ${err}`;
  return `$ holdturn ${typed}\n${out}${error}(exit ${exit})\n`;
}

describe('the command prints what it printed', () => {
  it.each(Object.entries(TYPED))('%s', async (name, commands) => {
    const answers = await Promise.all(commands.map((typed) => ask(typed)));
    const text = commands.map((typed, i) => `${shown(typed, answers[i] as Ran)}\n`).join('');
    const file = path.join(FOLDER, `${name.replaceAll(' ', '-')}.txt`);
    expectKept(file, text);
  });

  it.each(Object.entries(INTERVIEWS))('%s', async (name, [typed, lines]) => {
    const answer = await ask(typed, { stdin: lines.join('\n') });
    const text = `${lines.map((line) => `> ${line}\n`).join('')}${shown(typed, answer)}`;
    const file = path.join(FOLDER, `${name.replaceAll(' ', '-')}.txt`);
    expectKept(file, text);
    expect(answer.out.split('\n').filter((line) => width(line) > 80)).toEqual([]);
  });

  it('leaves no golden file that no case writes', () => {
    const written = [...Object.keys(TYPED), ...Object.keys(INTERVIEWS)].map(
      (name) => `${name.replaceAll(' ', '-')}.txt`,
    );
    const kept = fs.readdirSync(FOLDER).filter((file) => !file.includes('.changed.'));
    expect(kept.toSorted()).toEqual(written.toSorted());
  });
});

describe('a page', () => {
  it.each(Object.values(TYPED).flat())('of 80 columns holds: %s', async (typed) => {
    const { out } = await ask(typed);
    const wide = out.split('\n').filter((line) => width(line) > 80 && !line.startsWith('$'));
    expect(wide).toEqual([]);
    // Nothing at the end of a line, and no colour where nobody asked for it.
    expect(out).not.toMatch(/[ \t]\n/);
    expect(out).not.toContain('\u001B');
  });
});
