import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect } from 'vitest';
import { AT_THE_INPUT } from '../../../src/asking/request/index.ts';
import { askPlan } from '../../../src/asking/build/index.ts';
import {
  lastSeen,
  type Plan,
  type PlannedCheck,
  type Step,
} from '../../../src/engine/plan/index.ts';
import type { Train } from '../../../src/engine/train/index.ts';
import { readTrain } from '../../../src/engine/trainfile/index.ts';
import { ask } from '../../../src/doors/cli/asked.ts';
import { type BuildTask, buildTasks, subjectOf } from '../../../src/shop/build/index.ts';
import type { Job } from '../../../src/shop/records/index.ts';
import {
  feltText,
  mistakeText,
  startTold,
  stepTold,
  voiceOf,
} from '../../../src/telling/narrative/index.ts';
import { storesAreQuiet } from '../jobs.ts';
import type { Person } from '../person.ts';

const UNIT = 'unit 7, green tag';
const COMPLAINT = 'slips in second when hot';
const voice = voiceOf('en');

/** What was answered, in the words in which the command is told the same. */
export class Answers {
  private readonly all: (readonly string[])[] = [];

  get count(): number {
    return this.all.length;
  }

  add(...words: readonly string[]): void {
    this.all.push(words);
  }

  /** The text of the file that the command makes of them, each at its moment. */
  async told(job: Job, file: string): Promise<string> {
    const dash = (words: readonly string[]) => words.map((word) => `"${word}"`).join(' ');
    const train = path.join(path.dirname(file), job.train?.file ?? '');
    const ran = async (typed: string) => {
      const { err, exit } = await ask(typed);
      if (exit !== 0) throw new Error(`${typed}: ${err}`);
    };
    const opened = dash(['--unit', UNIT, '--complaint', COMPLAINT, '--train', train]);
    await ran(`job new "${file}" ${opened} --by TW --time ${job.at}`);
    const { length } = job.entries;
    if (this.all.length !== length)
      throw new Error(`${this.all.length} answers, ${length} entries`);
    for (const [n, words] of this.all.entries()) {
      const { at, told } = job.entries[n] ?? {};
      // Its name is of the moment at which it was taken.
      const name = told?.kind === 'photograph' ? told.name : '';
      const its = words.map((word) => word.replace('PHOTOGRAPH', name));
      // oxlint-disable-next-line no-await-in-loop -- each stands below the one before
      await ran(`job add "${file}" ${dash(its)} --by TW --time ${at}`);
    }
    return readFileSync(file, 'utf8');
  }
}

/** A unit on the bench: what it is, and what is read of it. */
export interface Bench {
  readonly text: string;
  /** A gear that drives. */
  readonly gear: string;
  /** End plays, each read three times, in mm. */
  readonly plays: Readonly<Record<string, readonly string[]>>;
  /** A pack by a feeler, the snap ring that it asks for, and what is read with it in; in mm. */
  readonly pack: {
    readonly name: string;
    readonly first: readonly string[];
    readonly ring: string;
    readonly again: readonly string[];
  };
  /** Tasks in the middle of which the page is loaded anew. */
  readonly breaks: readonly string[];
}

/** Works on a unit from what the driver says until it is signed and printed, with a reload in each room. */
export async function wholeJob(person: Person, bench: Bench): Promise<Answers> {
  const train = readTrain(bench.text).train as Train;
  const answers = new Answers();
  await person.press('Job');
  await person.type('Your initials', 'TW');
  await person.type('The unit, and how it is marked', UNIT);
  await person.type('What the driver says, if anything', COMPLAINT);
  await person.press('Begin a job');
  await person.reads(UNIT);
  await reloaded(person, 'Job');
  await person.reads(UNIT);
  await findsFault(person, answers, bench);
  await readsPlays(person, answers, bench);
  await strips(person, answers, train);
  await measures(person, answers, bench);
  await builds(person, answers, train, bench);
  await person.press('Job');
  await person.type('What do you sign?', 'build sheet');
  await reloaded(person, 'Job');
  await person.type('What do you sign?', 'build sheet');
  await person.press('Sign as TW');
  answers.add('signed', 'build sheet');
  await kept(person, answers);
  await prints(person, bench);
  await person.press('Job');
  return answers;
}

async function findsFault(person: Person, answers: Answers, { gear }: Bench): Promise<void> {
  await person.press('Find a fault');
  // The complaint stands in the job: it is read already.
  await person.press(/^(?:Skip|On to the questions)$/u);
  await person.reads('fluid');
  await reloaded(person, 'Find a fault');
  await person.press(/^burnt/u);
  answers.add('seen', 'fluid', 'burnt');
  await person.press('Another test');
  await person.press('line pressure');
  await person.press(/^good/u);
  answers.add('seen', 'pressure', 'good');
  await person.press('Another test');
  await person.press(new RegExp(`^${gear} under power`, 'u'));
  await person.press(/^drives/u);
  answers.add('seen', gear, 'drives');
  await kept(person, answers);
}

// Before anything comes off: it cannot be read after.
async function readsPlays(person: Person, answers: Answers, { plays }: Bench): Promise<void> {
  await person.press('Measure');
  for (const [shaft, read] of Object.entries(plays)) {
    // oxlint-disable-next-line no-await-in-loop
    await reads(person, shaft, read);
    // oxlint-disable-next-line no-await-in-loop
    await person.press('Write it down');
    answers.add('reading', shaft, read.map((its) => `${its} mm`).join(', '));
    // oxlint-disable-next-line no-await-in-loop
    await kept(person, answers);
    // oxlint-disable-next-line no-await-in-loop
    await person.press(/All that is measured/u);
  }
}

async function strips(person: Person, answers: Answers, { teardown = [] }: Train): Promise<void> {
  await person.press('Strip it');
  for (const [n, { name }] of teardown.entries()) {
    /* oxlint-disable no-await-in-loop -- one part after another */
    await person.reads(`${n + 1}. ${name}`);
    await person.press('It is off');
    answers.add('removed', name);
    if (n === 2) {
      await kept(person, answers);
      await reloaded(person, 'Strip it');
      await person.page.getByLabel('Photograph', { exact: true }).setInputFiles(PICTURE);
      answers.add('photograph', 'PHOTOGRAPH', `part: ${name}`);
      await kept(person, answers);
    }
    await person.press('Sound');
    answers.add('note', `${name}: Sound`);
    await kept(person, answers);
    await person.press('Next part');
    /* oxlint-enable no-await-in-loop */
  }
}

async function measures(person: Person, answers: Answers, { pack }: Bench): Promise<void> {
  const { name, first, ring, again } = pack;
  const list = (its: readonly string[]) => `[${its.map((one) => `${one} mm`).join(', ')}]`;
  await person.press('Measure');
  await reads(person, name, first);
  await person.press('Write it down');
  answers.add('reading', name, `feeler: ${list(first)}`);
  await kept(person, answers);
  await person.press(new RegExp(`^${ring}`, 'u'));
  await person.press(`Take the snap ring ${ring}, and write it down`);
  answers.add('chosen', name, `snap ring ${ring}`);
  await kept(person, answers);
  await adds(person, again.slice(0, 1));
  await storesAreQuiet(person.page);
  await reloaded(person, 'Measure');
  await adds(person, again.slice(1));
  await person.press('Write it down');
  const closed = `again: { fitted: ${ring}, read: ${list(again)} }`;
  answers.add('reading', name, closed);
  await kept(person, answers);
}

async function reads(person: Person, thing: string, numbers: readonly string[]): Promise<void> {
  await person.press(new RegExp(`^${thing}`, 'u'));
  await person.press('mm');
  await adds(person, numbers);
}

async function adds(person: Person, numbers: readonly string[]): Promise<void> {
  for (const number of numbers) {
    for (const key of number) {
      // oxlint-disable-next-line no-await-in-loop
      await person.press(key === '.' ? 'Decimal point' : key);
    }
    // oxlint-disable-next-line no-await-in-loop
    await person.press(/^Add this/u);
  }
}

async function builds(
  person: Person,
  answers: Answers,
  train: Train,
  { breaks }: Bench,
): Promise<void> {
  await person.press('Build it');
  const plan = askPlan(train);
  for (const task of buildTasks(plan)) {
    /* oxlint-disable no-await-in-loop -- one task after another */
    const { title, went, said, press } = answerOf(task, train, plan);
    const about = subjectOf(task) ?? (task.what === 'do' ? said : undefined);
    await person.reads(title);
    if (breaks.includes(task.key)) {
      await reloaded(person, 'Build it');
      await person.reads(title);
    }
    // A stop is passed by a press that is meant for it.
    if (task.what === 'stop') await person.page.waitForTimeout(1000);
    const open = await person.sees(/left open/u);
    const stands = open ? await standsIn(person, title) : '';
    await person.press(open ? /left open/u : press);
    const left = open ? [`${said}: ${stands}`] : said === about ? [] : [said];
    answers.add(
      'built',
      task.key,
      ...(about === undefined ? [] : [about]),
      ...withWent(went, left),
    );
    await kept(person, answers);
    /* oxlint-enable no-await-in-loop */
  }
}

// What the page says of a measurement that is not closed.
async function standsIn({ page }: Person, title: string): Promise<string> {
  const told = page.getByRole('region', { name: title }).getByRole('status').last();
  return (await told.textContent()) ?? '';
}

function withWent(went: string, said: readonly string[]): readonly string[] {
  return went === '' ? said : [[went, ...said].join(': ')];
}

interface Given {
  readonly title: string;
  readonly press: string | RegExp;
  readonly went: '' | 'right';
  readonly said: string;
}

// How a right build is answered for, by the words of the plan.
function answerOf(task: BuildTask, train: Train, plan: Plan): Given {
  const context = { train, plan, voice, stand: AT_THE_INPUT };
  if (task.what === 'start') {
    const { title } = startTold(task.start, voice);
    return { title: `First start: ${title}`, press: 'Done', went: '', said: title };
  }
  const { step } = task;
  const its = stepTold(step, context);
  const title = `${step.number}. ${its.title}`;
  switch (task.what) {
    case 'do':
      return { title, press: 'Done', went: '', said: its.title };
    case 'sound': {
      const [thud = ''] = its.heard;
      return { title: `${title}: what was heard`, press: thud, went: 'right', said: thud };
    }
    case 'check':
      return { title: `${title}: check by hand`, press: 'Right', ...felt(task.check, step, its) };
    case 'stop': {
      const names = lastSeen(plan, step).map(({ mistake }) =>
        mistakeText(mistake, train, voiceOf('en')),
      );
      const press = 'I have looked at each: cover them';
      return { title: `${title}: stop`, press, went: '', said: names.join('; ') };
    }
  }
}

function felt(
  check: PlannedCheck,
  step: Step,
  { checks }: ReturnType<typeof stepTold>,
): Pick<Given, 'went' | 'said'> {
  const all = step.does === 'fit' ? step.checks : [check];
  const { ask: asks } = checks[all.indexOf(check)] ?? { ask: '' };
  return { went: 'right', said: `${asks} ${feltText(check.right, voiceOf('en'))}` };
}

async function prints(person: Person, { pack }: Bench): Promise<void> {
  await person.press('Print');
  await person.press('Job card');
  await reloaded(person, 'Print');
  await person.found('As it will be printed', 'group').getByText(pack.name).first().waitFor();
}

// The browser's window is loaded anew, with no network; whoever works goes on in the same room.
async function reloaded(person: Person, room: string): Promise<void> {
  await person.page.reload();
  await person.found(room).first().waitFor();
  if ((await person.found(room).first().getAttribute('aria-current')) === null) {
    await person.press(room);
  }
}

// The page says that it is written down: so many entries are on the disk.
async function kept(person: Person, answers: Answers): Promise<void> {
  await expect.poll(() => entriesKept(person)).toBe(answers.count);
}

function entriesKept({ page }: Person): Promise<number> {
  return page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve) => {
      const asked = indexedDB.open('holdturn jobs');
      asked.addEventListener('success', () => resolve(asked.result));
    });
    const count = await new Promise<number>((resolve) => {
      const asked = database.transaction('lines').objectStore('lines').count();
      asked.addEventListener('success', () => resolve(asked.result));
    });
    database.close();
    return count;
  });
}

const PICTURE = {
  name: 'IMG_1.png',
  mimeType: 'image/png',
  // The smallest there is: one point.
  buffer: Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==',
    'base64',
  ),
};
