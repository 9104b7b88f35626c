import { useComputed, useSignalEffect } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { AtJob, JobBar } from '../job/index.ts';
import { keyOf, visible } from '../../telling/narrative/index.ts';
import { Matrix } from '../matrix/index.ts';
import type { Study } from '../study/index.ts';
import { Driver } from './driver.tsx';
import { Enquiry } from '../enquiry/index.ts';
import { Doubts, Failed, Opened, Ranking, Stops, ToldSoFar } from '../suspected/index.ts';
import { Question } from './question.tsx';
import { TestList } from './testlist.tsx';
import { voiceNow } from '../words/index.ts';
import { Hands } from './hands.tsx';
import { ShopFile } from './shopfile.tsx';
import { words } from './words.ts';
import './symptoms.css';

/**
 * From a complaint to the fault: what the driver says, then one question a screen, the worthiest
 * first; beside it, as it goes, who is suspected and why, and what may not be done now.
 */
export function Symptoms({ study }: { readonly study: Study }) {
  const say = words();
  const enquiry = useMemo(() => new Enquiry(study), [study]);
  useSignalEffect(() => enquiry.follow());
  if (!study.file.train.value) return <p>{say.noTrain}</p>;
  const opened = enquiry.opened.value !== undefined;
  const found = enquiry.found.value;
  return (
    <AtJob study={study}>
      <div class="symptoms">
        <div class="symptoms-ask">
          <Keeping study={study} enquiry={enquiry} />
          {enquiry.trouble.value !== undefined && (
            <p class="symptoms-trouble" role="alert">
              {enquiry.trouble.value}
            </p>
          )}
          {found?.at && (
            <p class="symptoms-stage">
              {voiceNow().say('suspects.stage', { stage: keyOf(found.at) })}
            </p>
          )}
          {found && <Stops stops={found.advice.stops} heldBack={found.advice.heldBack} />}
          <Doubts enquiry={enquiry} />
          {opened ? (
            <Opened study={study} enquiry={enquiry} />
          ) : (
            <Asking study={study} enquiry={enquiry} />
          )}
        </div>
        <aside class="symptoms-know" aria-label={say.suspects}>
          <Ranking enquiry={enquiry} />
          <ToldSoFar enquiry={enquiry} />
        </aside>
        <div class="symptoms-all">
          <Failed study={study} enquiry={enquiry} />
          <Matrix study={study} />
        </div>
        <div class="symptoms-all">
          <ShopFile />
          <p class="aside">{say.legend}</p>
        </div>
      </div>
    </AtJob>
  );
}

/** Where answers go: into the open job; else they are this browser's, and a job may be begun. */
function Keeping({ study, enquiry }: { readonly study: Study; readonly enquiry: Enquiry }) {
  const say = words();
  if (enquiry.sheet.value.ofJob) return <JobBar study={study} />;
  const { keeps, spoilt } = enquiry.loose.value;
  return (
    <>
      <details class="symptoms-keeping">
        <summary>
          {say.noJob} <b>{say.keepIt}</b>
        </summary>
        <JobBar study={study} unfolded />
      </details>
      {!keeps.value && (
        <p class="symptoms-trouble" role="alert">
          {say.notKept}
        </p>
      )}
      {spoilt.value !== undefined && (
        <div class="symptoms-trouble" role="alert">
          <p>{say.spoilt}</p>
          <pre class="symptoms-spoilt">{visible(spoilt.value.slice(0, MOST_SPOILT))}</pre>
        </div>
      )}
    </>
  );
}

const MOST_SPOILT = 2000;

/** One thing a screen. */
function Asking({ study, enquiry }: { readonly study: Study; readonly enquiry: Enquiry }) {
  const { value: screen } = enquiry.screen;
  const next = useComputed(() => enquiry.found.value?.advice.best?.test);
  switch (screen.at) {
    case 'driver':
      return <Driver enquiry={enquiry} />;
    case 'tests':
      return <TestList enquiry={enquiry} />;
    case 'hands': {
      const train = study.file.train.value;
      return train ? <Hands enquiry={enquiry} train={train} /> : null;
    }
    case 'test':
      return <Question enquiry={enquiry} test={screen.test} />;
    case 'next':
      return <Question enquiry={enquiry} next={next.value} />;
  }
}
