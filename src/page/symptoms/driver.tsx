import { useSignal } from '@preact/signals';
import { testText } from '../../engine/sight/index.ts';
import { observationText, visible } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { voiceNow } from '../words/index.ts';
import type { Enquiry } from '../enquiry/index.ts';
import { seenEntries } from '../enquiry/index.ts';
import { words } from './words.ts';

/** The driver's own words; what they were read as can be taken off, what said nothing is given back. */
export function Driver({ enquiry }: { readonly enquiry: Enquiry }) {
  const say = words();
  const voice = voiceNow();
  const text = useSignal('');
  const found = enquiry.found.value;
  const read = async () => {
    const said = text.value.trim();
    if (said !== '' && (await enquiry.says(said))) text.value = '';
  };
  const off = seenEntries(enquiry.sheet.value.job.value).filter(
    ({ entry, text: said }) => !entry.struckBy && /^["']?not said["']?$/u.test(said),
  );
  const { complaint } = enquiry.sheet.value.job.value;
  return (
    <section class="symptoms-card" aria-labelledby="driver-asked">
      <h2 id="driver-asked">{say.driver}</h2>
      {complaint !== '' && <blockquote class="symptoms-said">{complaint}</blockquote>}
      <textarea
        class="symptoms-words"
        aria-labelledby="driver-asked"
        aria-describedby="driver-how"
        rows={3}
        maxLength={1900}
        placeholder={say.example}
        value={text.value}
        onInput={({ currentTarget }) => (text.value = currentTarget.value)}
      />
      <p id="driver-how" class="aside">
        {say.driverHow}
      </p>
      <div class="row">
        <LargeButton main disabled={text.value.trim() === ''} onPress={() => void read()}>
          {say.read}
        </LargeButton>
        <LargeButton onPress={() => enquiry.go({ at: 'next' })}>
          {found && found.told.heard.length > 0 ? say.onward : say.skip}
        </LargeButton>
      </div>
      {found && found.told.heard.length > 0 && (
        <>
          <p>{say.readAs}</p>
          <ul class="symptoms-chips">
            {found.told.heard.map(({ observation, said }) => {
              const name = observationText(observation, voice);
              const test = testText(observation.test);
              return (
                <li key={`${test} ${name}`}>
                  <button
                    type="button"
                    class="symptoms-chip"
                    onClick={() => void enquiry.unsay(test)}
                  >
                    <span>
                      <span class="unseen">{say.takeOff} </span>
                      {name}
                    </span>
                    <small>{say.from(visible(said))}</small>
                    <span class="symptoms-cross" aria-hidden="true">
                      ✕
                    </span>
                  </button>
                </li>
              );
            })}
          </ul>
        </>
      )}
      {off.length > 0 && (
        <>
          <p>{say.takenOff}</p>
          <ul class="symptoms-chips">
            {off.map(({ entry, of }) => (
              <li key={entry.id}>
                <button
                  type="button"
                  class="symptoms-chip symptoms-off"
                  onClick={() => void enquiry.strike(entry.id, say.because)}
                >
                  <span>
                    <span class="unseen">{say.putBack} </span>
                    <s>{visible(of)}</s>
                  </span>
                  <span class="symptoms-cross" aria-hidden="true">
                    ↶
                  </span>
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      {found && found.unused.length > 0 && (
        <p class="symptoms-unused">{say.nothingOf(found.unused.map(visible).join('; '))}</p>
      )}
    </section>
  );
}
