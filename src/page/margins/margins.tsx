import { faultsText } from '../figure/index.ts';
import { useComputed, useSignal } from '@preact/signals';
import {
  type MarginReport,
  marginsAsked,
  marginsAtLoad,
  USUAL_KPA,
} from '../../asking/gears/index.ts';
import { NoAnswer, type Refused } from '../../asking/request/index.ts';
import { refusedText } from '../../telling/narrative/index.ts';
import { firstToSlipText, marginSources } from '../../telling/report/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import { type Load, LoadEntry } from './load.tsx';
import { MarginTable } from './margintable.tsx';
import { words } from './words.ts';
import './margins.css';

/**
 * What slips first in each gear as the pressure is drawn up and down, with the engine's torque and
 * the stall ratio; of the wrong build too, where one stands beside.
 */
export function Margins({ study }: { readonly study: Study }) {
  const say = words();
  const voice = voiceNow();
  const load = useSignal<Load>({ pressure: USUAL_KPA, unit: 'kPa', torque: '', stallRatio: '' });
  const ofWrong = useSignal(false);
  const open = useSignal(false);
  const train = useComputed(() => {
    const wrong = ofWrong.value ? study.wrong.train.value : undefined;
    return wrong ?? study.file.train.value;
  });
  // Reckoned when it is asked for, once for every load.
  const margins = useComputed(() => {
    const its = train.value;
    return open.value && its?.capacities ? marginsAsked(its) : undefined;
  });
  const file = study.file.name.value;
  if (!train.value) return null;
  const answer = train.value.capacities ? reported(train.value) : undefined;
  return (
    <section class="margins" aria-label={say.title}>
      <h2>{say.title}</h2>
      {!train.value.capacities && (
        <p class="aside">{refusedText({ refused: 'no.capacities' }, file, voice)}</p>
      )}
      {train.value.capacities && (
        <details
          open={open.value}
          onToggle={({ currentTarget }) => (open.value = currentTarget.open)}
        >
          <summary>{say.open}</summary>
          {open.value && (
            <div class="margins-open">
              <p class="margins-caution">
                <b aria-hidden="true">⚠</b> {voice.say('margin.caution')}{' '}
                {voice.say('caution.stall')}
              </p>
              <p>{voice.say('margin.own data')}</p>
              <LoadEntry load={load} train={train.value} />
              {study.wrong.train.value && (
                <button
                  type="button"
                  aria-pressed={ofWrong.value}
                  onClick={() => (ofWrong.value = !ofWrong.value)}
                >
                  {say.wrong(faultsText(study))}
                </button>
              )}
              {answer && !('load' in answer) && (
                <p class="margins-refused" role="alert">
                  {refusedText(answer, file, voice)}
                </p>
              )}
              {answer && 'load' in answer && <Report report={answer} />}
            </div>
          )}
        </details>
      )}
    </section>
  );

  function reported(its: NonNullable<typeof train.value>): MarginReport | Refused | undefined {
    if (!margins.value) return undefined;
    const { pressure, unit, torque, stallRatio } = load.value;
    try {
      return marginsAtLoad(margins.value, its, {
        pressure: `${pressure} ${unit}`,
        ...(torque.trim() !== '' && { torque }),
        ...(stallRatio.trim() !== '' && { stallRatio }),
      });
    } catch (error) {
      if (error instanceof NoAnswer) return error.why;
      throw error;
    }
  }
}

function Report({ report }: { readonly report: MarginReport }) {
  const say = words();
  const voice = voiceNow();
  const first = firstToSlipText(report.gears, voice);
  return (
    <>
      {first !== undefined && <p class="margins-first">{first}</p>}
      <MarginTable report={report} />
      <p class="aside">{say.opens}</p>
      <h3>{voice.say('margin.sources')}</h3>
      {marginSources(report, voice).map((text) => (
        <p key={text}>{text}</p>
      ))}
      <p class="aside">{voice.say('margin.legend')}</p>
    </>
  );
}
