import type { HeldBack } from '../../engine/suspects/index.ts';
import type { StoppedTest } from '../../engine/triage/index.ts';
import { heldText, leftText, stopText } from '../../telling/narrative/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';

interface Props {
  readonly stops: readonly StoppedTest[];
  readonly heldBack: readonly HeldBack[];
}

/** What may not be done now and why, above everything that is asked. */
export function Stops({ stops, heldBack }: Props) {
  const say = words();
  const voice = voiceNow();
  const held = [...new Map(heldBack.map((its) => [its.test.test, its])).values()];
  if (stops.length + held.length === 0) return null;
  return (
    <ul class="symptoms-stops">
      {stops.map((stop) => {
        const left = stop.stops === 'road test' ? [...stop.left] : [];
        return (
          <li key={stop.stops} class={stop.stops === 'road test' ? 'symptoms-stop-road' : ''}>
            <b>{stopText(stop, voice)}</b>
            {left.length > 0 && (
              <details>
                <summary>{say.meanwhile}</summary>
                {left.map(([place, tests]) => (
                  <p key={place}>{leftText(place, tests, voice)}</p>
                ))}
              </details>
            )}
          </li>
        );
      })}
      {held.map((its) => (
        <li key={its.test.test}>
          <b>{heldText(its, voice)}</b>
        </li>
      ))}
    </ul>
  );
}
