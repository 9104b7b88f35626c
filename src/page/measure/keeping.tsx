import { useState } from 'preact/hooks';
import { LargeButton } from '../controls/index.ts';
import { JobBar } from '../job/index.ts';
import type { Study } from '../study/index.ts';
import type { Measuring } from './measuring.ts';
import { words } from './words.ts';

interface Props {
  readonly measuring: Measuring;
  readonly study: Study;
  /** Whether a job may be begun here. */
  readonly begins?: boolean;
}

/** Where what is written down goes: the open job, this browser, or nowhere. */
export function Keeping({ measuring, study, begins }: Props) {
  const say = words();
  const [asks, ask] = useState(false);
  const job = measuring.keeper.open.value;
  const count = measuring.notes.loose.value.length;
  return (
    <>
      {!measuring.notes.keeps.value && (
        <p class="measure-warning" role="alert">
          {say.unkept}
        </p>
      )}
      {!job && !begins && measuring.notes.keeps.value && <p class="aside">{say.noJob}</p>}
      {(job || begins) && <JobBar study={study} none={say.noJob} />}
      {!job && begins && count > 0 && (
        <div class="row">
          <LargeButton pressed={asks} onPress={() => ask(!asks)}>
            {say.another}
          </LargeButton>
          {asks && (
            <LargeButton
              onPress={() => {
                measuring.notes.forget();
                ask(false);
              }}
            >
              {say.forget(count)}
            </LargeButton>
          )}
        </div>
      )}
      {job && count > 0 && (
        <div class="row">
          <LargeButton onPress={() => void measuring.notes.handOver()}>
            {say.handOver(count)}
          </LargeButton>
        </div>
      )}
    </>
  );
}
