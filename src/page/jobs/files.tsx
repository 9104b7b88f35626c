import { useState } from 'preact/hooks';
import { visible } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { Begin, jobsOf } from '../job/index.ts';
import type { Study } from '../study/index.ts';
import { words } from './words.ts';

/** Where jobs come from and go to: disk, a colleague's copy; and discarding one, by its name. */
export function Files({ study }: { readonly study: Study }) {
  const say = words();
  const jobs = jobsOf(study);
  const { files } = jobs;
  const held = jobs.held.value;
  const [discards, discard] = useState('');
  const [begins, begin] = useState(false);
  return (
    <div class="jobs-files">
      <div class="row">
        {held && (
          <LargeButton pressed={begins} onPress={() => begin(!begins)}>
            {say.another}
          </LargeButton>
        )}
        <LargeButton onPress={() => void files.open()}>{say.openFile}</LargeButton>
        {held && (
          <>
            <LargeButton onPress={() => void files.unite()}>{say.unite}</LargeButton>
            <LargeButton onPress={() => void files.save()}>{say.save}</LargeButton>
            <LargeButton onPress={() => void files.saveAll()}>{say.saveAll}</LargeButton>
            <LargeButton other onPress={() => discard(held.job.id)}>
              {say.discardAsk}
            </LargeButton>
          </>
        )}
      </div>
      {held && begins && <Begin study={study} complaint onBegun={() => begin(false)} />}
      {held && discards === held.job.id && (
        <div class="jobs-discard" role="group" aria-label={say.discardAsk}>
          <p>{say.discardTold}</p>
          <div class="row">
            <LargeButton main onPress={() => void files.saveAll()}>
              {say.saveAll}
            </LargeButton>
            <LargeButton
              onPress={() => {
                discard('');
                void jobs.discard(held.job.id);
              }}
            >
              {say.discard(visible(held.job.name))}
            </LargeButton>
            <LargeButton onPress={() => discard('')}>{say.cancel}</LargeButton>
          </div>
        </div>
      )}
    </div>
  );
}
