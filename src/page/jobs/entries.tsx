import { useState } from 'preact/hooks';
import { type FoldedEntry, type FoldedJob, signerBefore } from '../../shop/records/index.ts';
import { timeText, toldText, visible } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { type JobDesk, pendingIds } from '../job/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';

interface Props {
  readonly jobs: JobDesk;
  readonly job: FoldedJob;
}

/** All that was written down, in the order of time: when, by whom, what; what was struck too. */
export function Entries({ jobs, job }: Props) {
  const say = words();
  if (job.entries.length === 0) return <p class="jobs-none">{say.nothing}</p>;
  const held = jobs.held.value;
  const pending = held ? pendingIds(held) : new Set<string>();
  return (
    <ol class="jobs-entries" aria-label={say.entries}>
      {job.entries.map((entry) => (
        <Entry
          key={entry.id}
          jobs={jobs}
          entry={entry}
          signer={signerBefore(job, entry)}
          isPending={pending.has(entry.id)}
        />
      ))}
    </ol>
  );
}

interface EntryProps {
  readonly jobs: JobDesk;
  readonly entry: FoldedEntry;
  /** Who had signed before it was written. */
  readonly signer: string | undefined;
  /** The browser has not kept it. */
  readonly isPending: boolean;
}

function Entry({ jobs, entry, signer, isPending }: EntryProps) {
  const say = words();
  const voice = voiceNow();
  const { id, at, who, strikes, struckBy } = entry;
  const told = toldText(entry, voice);
  return (
    <li>
      <p class="jobs-when">
        <time dateTime={at}>{timeText(at, voice)}</time> <b>{visible(who)}</b> <code>{id}</code>
      </p>
      <p class="jobs-said">{struckBy ? <s>{told}</s> : told}</p>
      {signer !== undefined && (
        <p class="jobs-pending">{voice.say('sign.after', { who: visible(signer) })}</p>
      )}
      {isPending && <p class="jobs-pending">{say.pending}</p>}
      {strikes && <p class="aside">{say.strikes(strikes.id, visible(strikes.because))}</p>}
      {struckBy ? (
        <p class="aside">
          {say.struck(visible(struckBy.who), visible(struckBy.strikes?.because ?? ''))}
        </p>
      ) : (
        <Strike jobs={jobs} id={id} told={told} />
      )}
    </li>
  );
}

/** Strikes an entry through, once the reason is typed. */
function Strike({
  jobs,
  id,
  told,
}: {
  readonly jobs: JobDesk;
  readonly id: string;
  readonly told: string;
}) {
  const say = words();
  const [asks, ask] = useState(false);
  const [because, type] = useState('');
  if (!asks) {
    return (
      <button type="button" aria-label={say.strikeIt(told)} onClick={() => ask(true)}>
        {say.strike}
      </button>
    );
  }
  const strike = async () => {
    if (because.trim() === '') return;
    if ((await jobs.strike(id, because.trim())) !== 'kept') return;
    ask(false);
    type('');
  };
  return (
    <div class="row jobs-strike">
      <label class="job-field">
        {say.because}
        <input
          ref={(input) => input?.focus()}
          value={because}
          maxLength={200}
          onInput={({ currentTarget }) => type(currentTarget.value)}
          onKeyDown={({ key }) => {
            if (key === 'Enter') void strike();
            if (key === 'Escape') ask(false);
          }}
        />
      </label>
      <LargeButton main disabled={because.trim() === ''} onPress={() => void strike()}>
        {say.strike}
      </LargeButton>
      <LargeButton onPress={() => ask(false)}>{say.cancel}</LargeButton>
    </div>
  );
}
