import { problemText, visible } from '../../telling/narrative/index.ts';
import { install } from '../desk/index.ts';
import {
  type FileWord,
  type Remarks,
  idleKnown,
  type JobDesk,
  keeping,
  KeptHere,
  knowIdle,
  linesOf,
} from '../job/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';

/** What is to be said of where jobs are kept, and of files; never a box in the way. */
export function Notices({ jobs }: { readonly jobs: JobDesk }) {
  const say = words();
  const { files } = jobs;
  const word = files.word.value;
  const disk = files.disk.value;
  const held = jobs.held.value;
  const unsaved = held && linesOf(held).length > (held.job.saved?.lines ?? -1);
  return (
    <div class="jobs-notices" role="status">
      <KeptHere />
      {keeping.value === 'while used' && unsaved && !idleKnown.value && (
        <p>
          {say.keepsAWhile}{' '}
          {install.value && (
            <button type="button" onClick={install.value}>
              {say.install}
            </button>
          )}{' '}
          <button type="button" onClick={knowIdle}>
            {say.known}
          </button>
        </p>
      )}
      {disk?.disk === 'asks' && (
        <p>
          {say.diskAsks(visible(held?.job.handle?.name ?? ''))}{' '}
          <button type="button" onClick={() => void files.allowDisk()}>
            {say.allow}
          </button>
        </p>
      )}
      {disk?.disk === 'written' && <p>{say.diskWritten(visible(held?.job.handle?.name ?? ''))}</p>}
      {disk?.disk === 'another' && <p class="jobs-odd">{say.diskAnother}</p>}
      {disk?.disk === 'failed' && <p class="jobs-odd">{say.diskFailed(visible(disk.why))}</p>}
      {word && (
        <p>
          {saidOf(word, say)}{' '}
          <button type="button" onClick={() => (files.word.value = undefined)}>
            {say.away}
          </button>
        </p>
      )}
    </div>
  );
}

function saidOf(word: FileWord, say: ReturnType<typeof words>): string {
  switch (word.word) {
    case 'saved':
      return say.saved(visible(word.name));
    case 'opened':
      return [say.opened(visible(word.name), word.unread), ...remarked(word, say)].join(' ');
    case 'united':
      return [say.united(visible(word.name), word.came), ...remarked(word, say)].join(' ');
    case 'several jobs':
      return say.severalJobs(listed(word.names));
    case 'no job': {
      const [first] = word.problems;
      const why = first ? problemText(first, voiceNow()) : '';
      return say.noJob(visible(word.name), why);
    }
    case 'failed':
      return say.failed(visible(word.why));
    default:
      return say.word[word.word];
  }
}

// What lay beside the job and is not as it was there.
function remarked(
  { asCame, leftOut, others }: Remarks,
  say: ReturnType<typeof words>,
): readonly string[] {
  return [
    ...(asCame.length > 0 ? [say.asCame(listed(asCame))] : []),
    ...(leftOut.length > 0 ? [say.leftOut(listed(leftOut))] : []),
    ...others.map(({ name, kept }) => say.otherPicture(visible(name), visible(kept))),
  ];
}

function listed(names: readonly string[]): string {
  return names.map(visible).join(', ');
}
