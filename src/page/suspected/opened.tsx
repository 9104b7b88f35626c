import { signal, useSignalEffect } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { Explanation } from '../../asking/faults/index.ts';
import { type Fault, faultText } from '../../engine/faults/index.ts';
import {
  causeText,
  observationText,
  outcomeText,
  roadSignText,
  visible,
} from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { Builds } from '../fault/index.ts';
import { Gears } from '../gears/index.ts';
import type { Study } from '../study/index.ts';
import { beside } from '../thread/index.ts';
import { isCalm, voiceNow } from '../words/index.ts';
import type { Enquiry } from '../enquiry/index.ts';
import { words } from './words.ts';

interface Props {
  readonly study: Study;
  readonly enquiry: Enquiry;
}

/** A suspect: what it would show of all that was seen, and the train with it beside the right one. */
export function Opened({ study, enquiry }: Props) {
  const say = words();
  const voice = voiceNow();
  const known = useMemo(() => signal<Explanation | undefined>(undefined), []);
  useSignalEffect(() => {
    const [told, opened] = [enquiry.told.value, enquiry.opened.value];
    let stale = false;
    if (told && opened) {
      beside('explain', { ...told, ...opened }).then(
        (its) => {
          if (stale) return;
          known.value = its;
          show(study, its);
        },
        () => {
          // It is suspected no more, now that more is known.
          if (!stale) enquiry.opened.value = undefined;
        },
      );
    }
    return () => (stale = true);
  });
  useEffect(() => () => study.spoil([]), [study]);
  useEffect(() => {
    const head = document.getElementById('suspect-opened');
    head?.focus({ preventScroll: true });
    head?.scrollIntoView({ block: 'nearest' });
  }, [known.value?.cause]);
  const its = known.value;
  if (!its) return <p role="status">{say.working}</p>;
  const { cause, explained, road } = its;
  const missed = explained.filter(({ agrees }) => !agrees).length;
  return (
    <section class="symptoms-opened" aria-labelledby="suspect-opened">
      <div class="row symptoms-opened-head">
        <h2 id="suspect-opened" tabIndex={-1}>
          {visible(causeText(cause, voice))}
        </h2>
        <LargeButton onPress={() => (enquiry.opened.value = undefined)}>{say.close}</LargeButton>
      </div>
      <h3>{say.explains}</h3>
      <p>{missed === 0 ? say.explainsAll : say.explainsNot(missed)}</p>
      <div class="symptoms-proof" tabIndex={0} role="group" aria-label={say.explains}>
        <table>
          <thead>
            <tr>
              <th scope="col">{say.columns.seen}</th>
              <th scope="col">{say.columns.shows}</th>
              <th scope="col">{say.columns.by}</th>
            </tr>
          </thead>
          <tbody>
            {explained.map(({ observation, shows, agrees, by }, k) => (
              <tr key={k} class={agrees ? '' : 'symptoms-unexplained'}>
                <td>{observationText(observation, voice)}</td>
                <td>
                  {agrees ? '✓' : '✗'} {outcomeText(shows, voice)}{' '}
                  <span class="unseen">{agrees ? say.agrees.yes : say.agrees.no}</span>
                </td>
                <td>{say.by[by]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {cause.faults.length === 0 ? (
        <p class="aside">{say.beside}</p>
      ) : (
        <>
          <h3>{say.rightWrong}</h3>
          <p>{road ? roadSignText(road, voice) : say.noGear}</p>
          <div class="page-controls" role="group" aria-label={say.onRoad}>
            <Gears study={study} />
          </div>
          <Builds study={study} />
        </>
      )}
    </section>
  );
}

function show(study: Study, { cause, road }: Explanation): void {
  study.spoil(cause.faults.map(textOf));
  if (cause.faults.length === 0 || !road) return;
  study.run(road.gear.on, road.end === 'drive' ? 'drive' : 'coast');
  study.turning.runs.value = !isCalm();
}

// What leaks slips, as an edit of the train; only that has a name there.
function textOf(fault: Fault): string {
  const slips = fault.what === 'device' && fault.is === 'leaks';
  return faultText(slips ? { ...fault, is: 'slips' } : fault);
}
