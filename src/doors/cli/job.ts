import path from 'node:path';
import { askUnsigned, type Unsigned } from '../../asking/build/index.ts';
import {
  entryMade,
  entryMeant,
  entryTold,
  howFar,
  jobIn,
  jobMade,
  openJob,
  type ToldOrStruck,
} from '../../asking/job/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { FoldedJob } from '../../shop/records/index.ts';
import { unsignedTexts, visible } from '../../telling/narrative/index.ts';
import { jobJson } from '../../telling/data/index.ts';
import { jobText } from '../../telling/report/index.ts';
import {
  localTime,
  typedTime,
  type Appender,
  Misuse,
  ours,
  reasonOf,
  type World,
} from '../../command/machine/index.ts';
import {
  suggestion,
  done,
  json,
  type Reply,
  type Session,
  givenIn,
  hashOf,
  textOf,
  trainOf,
  unwritable,
} from '../../command/session/index.ts';
import { JOB_ACTIONS } from '../../command/typed/index.ts';

/** Opens a job, adds to it, strikes an entry of it through, or shows it as it stands. */
export function job(
  given: string,
  file: string,
  words: readonly string[],
  session: Session,
): Reply {
  const action = JOB_ACTIONS.find((one) => one === given.trim().toLowerCase());
  switch (action) {
    case 'new':
      return opened(file, words, session);
    case 'add':
      return added(file, { told: entryTold(words, session.options) }, session);
    case 'strike':
      return struck(file, words, session);
    case 'show':
      return shown(file, words, session);
    default:
      throw new Misuse('no.action', {
        ...suggestion(given, JOB_ACTIONS),
        all: JOB_ACTIONS.join(', '),
      });
  }
}

function opened(file: string, words: readonly string[], session: Session): Reply {
  const { unit, train, complaint = '' } = session.options;
  spare(words);
  if (unit === undefined) throw new Misuse('bad.missing option', { option: '--unit' });
  const text = jobMade({
    unit,
    ...(train !== undefined && { train: stamped(train, file, session) }),
    complaint,
    by: initialsOf(session),
    at: timeOf(session),
  });
  kept(file, session, (ledger) => ledger.create(file, text));
  return session.options.json
    ? json({ file })
    : done(session.page.voice.say('job.new', { file: visible(file) }));
}

// Where the train file stands as seen from the job file, and the hash that sheets print too.
function stamped(train: string, file: string, session: Session): { file: string; hash: string } {
  trainOf(train, session);
  const hash = hashOf(train, session.world);
  return { file: path.relative(path.dirname(file), train) || train, hash };
}

function struck(file: string, words: readonly string[], session: Session): Reply {
  const [given, ...correction] = words;
  const { because } = session.options;
  if (given === undefined) throw new Misuse('bad.missing id');
  if (because === undefined) throw new Misuse('bad.missing option', { option: '--because' });
  const id = entryMeant(given, jobIn(givenIn(file, session.world)).job).id;
  const told = correction.length > 0 ? { told: entryTold(correction, session.options) } : {};
  return added(file, { ...told, strikes: { id, because } }, session);
}

function added(file: string, said: ToldOrStruck, session: Session): Reply {
  const { told, strikes } = said;
  const { job: before } = jobIn(givenIn(file, session.world));
  const [at, who] = [timeOf(session), initialsOf(session)];
  const fits = told && trainBeside(before, file, session);
  const { id, text } = entryMade(said, { at, who }, before, fits);
  kept(file, session, (ledger) => ledger.append(file, text));
  const values = { id, strikes: strikes ? 'yes' : 'no', struck: strikes?.id ?? '' };
  const open = told?.kind === 'signed' ? openWhere(before, file, session) : undefined;
  const { voice } = session.page;
  const more = open ? unsignedTexts(open, true, voice).map((its) => `! ${its}`) : [];
  return session.options.json
    ? json({ id, at, who, ...open })
    : done([voice.say('job.added', values), ...more].join('\n'));
}

function shown(file: string, words: readonly string[], session: Session): Reply {
  spare(words);
  const { job: its, problems } = jobIn(givenIn(file, session.world));
  return session.options.json
    ? json(jobJson(its, problems))
    : done(jobText(its, problems, howFar(its), session.page));
}

function spare(words: readonly string[]): void {
  if (words.length > 0) throw new Misuse('bad.excess', { given: visible(words.join(' ')) });
}

function initialsOf({ options: { by } }: Session): string {
  if (by === undefined) throw new Misuse('bad.missing option', { option: '--by' });
  return by.trim();
}

// Now, or when it was.
function timeOf({ options: { time }, world }: Session): string {
  if (time === undefined) return localTime(ledgerOf(world).now());
  const typed = typedTime(time);
  if (typed === undefined) throw new Misuse('bad.time', { given: visible(time) });
  return typed;
}

function kept(file: string, { world }: Session, keep: (ledger: Appender) => void): void {
  try {
    keep(ledgerOf(world));
  } catch (error) {
    if (reasonOf(error) === 'EEXIST') throw new Misuse('bad.exists', { file });
    throw unwritable(file, error);
  }
}

function ledgerOf({ ledger }: World): Appender {
  if (!ledger) throw new Error('nothing is kept here');
  return ledger;
}

// What is open where the train is there to ask: told to whoever signs, and it prevents nothing.
function openWhere(before: FoldedJob, file: string, session: Session): Unsigned | undefined {
  const its = trainBeside(before, file, session);
  return its && askUnsigned(its.train, openJob(givenIn(file, session.world)));
}

// By what an entry is looked at: the train of --train, else the job's own, where it still stands
// beside the job. Without one only the form is known to be right.
function trainBeside(
  before: FoldedJob,
  file: string,
  session: Session,
): { readonly train: Train; readonly experience: string } | undefined {
  const trainFile = session.options.train ?? beside(before, file, session);
  if (trainFile === undefined) return undefined;
  const experience = textOf(ours('experience.yaml'), session.world);
  return { train: trainOf(trainFile, session), experience };
}

function beside(
  { train }: Pick<FoldedJob, 'train'>,
  file: string,
  { world }: Session,
): string | undefined {
  if (!train) return undefined;
  const its = path.resolve(path.dirname(file), train.file);
  return world.list(path.dirname(its)).includes(path.basename(its)) ? its : undefined;
}
