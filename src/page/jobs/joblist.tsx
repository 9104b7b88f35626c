import { howFar } from '../../asking/job/index.ts';
import { standing } from '../../shop/records/index.ts';
import { howFarTexts, timeText, toldText, visible } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { foldedOf, type Held, type JobDesk, linesOf } from '../job/index.ts';
import { voiceNow } from '../words/index.ts';
import { standingOpen } from './standingopen.ts';
import { words } from './words.ts';

/** Every job of this browser, and where each stands. */
export function JobList({ jobs }: { readonly jobs: JobDesk }) {
  const say = words();
  const all = jobs.shelf.jobs.value;
  if (all.length === 0) return null;
  return (
    <section class="jobs-list" aria-label={say.all}>
      <h2>{say.all}</h2>
      <ul>
        {all.map((held) => (
          <li key={held.job.id}>
            <LargeButton
              pressed={held.job.id === jobs.held.value?.job.id}
              onPress={() => void jobs.reopen(held.job.id)}
            >
              <b>{visible(foldedOf(held).unit)}</b>
              <Standing jobs={jobs} held={held} />
              <span class="aside">{onDisk(held, say)}</span>
            </LargeButton>
          </li>
        ))}
      </ul>
    </section>
  );
}

// What was said last, what is signed, and what was measured and stands open.
function Standing({ jobs, held }: { readonly jobs: JobDesk; readonly held: Held }) {
  const say = words();
  const voice = voiceNow();
  const job = foldedOf(held);
  const last = job.entries.at(-1);
  const signed = standing(job, 'signed').at(-1);
  const open = standingOpen(jobs, held);
  const far = howFar(job);
  return (
    <>
      <span>{say.count(job.entries.length)}</span>
      {last && <span>{`${timeText(last.at, voice)}: ${toldText(last, voice)}`}</span>}
      {howFarTexts({ off: far.off, ...(far.built !== last && far) }, voice).map((text) => (
        <span key={text}>{text}</span>
      ))}
      {open.length > 0 && <span>{say.stillOpen(voice.list(open.map(visible)))}</span>}
      {signed && <span>{say.signed(visible(signed.told.what), visible(signed.who))}</span>}
    </>
  );
}

function onDisk(held: Held, say: ReturnType<typeof words>): string {
  const { saved } = held.job;
  if (!saved) return say.notSaved;
  return say.savedAs(visible(saved.name), Math.max(0, linesOf(held).length - saved.lines));
}
