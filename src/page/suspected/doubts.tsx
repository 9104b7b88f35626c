import { testText } from '../../engine/sight/index.ts';
import { causeText, observationText, testName } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { voiceNow } from '../words/index.ts';
import type { Enquiry } from '../enquiry/index.ts';
import { words } from './words.ts';

/**
 * Not everything that was told fits together: which of it must be mistaken, in sight above the
 * question, and what of it is worth reading again before anything else is done.
 */
export function Doubts({ enquiry }: { readonly enquiry: Enquiry }) {
  const say = words();
  const voice = voiceNow();
  const { doubts = [], pairs = [], again = [] } = enquiry.found.value ?? {};
  if (doubts.length === 0) return null;
  return (
    <section class="symptoms-doubts" aria-labelledby="doubts">
      <h2 id="doubts">{say.doubts}</h2>
      {doubts.slice(0, MOST).map(({ observations, causes }, k) => (
        <p key={k}>
          {voice.say('contradiction.doubt', {
            count: observations.length,
            observations: observations.map((one) => observationText(one, voice)).join('; '),
            causes: causes
              .slice(0, 4)
              .map((cause) => causeText(cause, voice))
              .join(', '),
          })}
        </p>
      ))}
      {pairs.length > 0 && <p>{voice.say('contradiction.pairs', { count: pairs.length })}</p>}
      <div class="row">
        {again.slice(0, MOST).map((test) => (
          <LargeButton
            key={testText(test)}
            onPress={() => enquiry.go({ at: 'test', test: testText(test) })}
          >
            {say.again(testName(test, voice))}
          </LargeButton>
        ))}
      </div>
    </section>
  );
}

const MOST = 3;
