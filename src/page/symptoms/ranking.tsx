import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Bracket } from '../../engine/suspects/index.ts';
import {
  causeText,
  growlerText,
  observationText,
  suspectText,
  voiceOf,
} from '../../telling/narrative/index.ts';
import { percent } from '../../telling/report/index.ts';
import { language } from '../words/index.ts';
import type { Enquiry } from './enquiry.ts';
import { Group } from './group.tsx';
import { words } from './words.ts';

/** Who is suspected, and why; what does not agree stands above it. On a phone it folds. */
export function Ranking({ enquiry }: { readonly enquiry: Enquiry }) {
  const say = words();
  const voice = voiceOf(language.value);
  const wide = useSignal(isWide());
  useEffect(() => {
    const watched = matchMedia(WIDE);
    const look = () => (wide.value = watched.matches);
    watched.addEventListener('change', look);
    return () => watched.removeEventListener('change', look);
  }, [wide]);
  const found = enquiry.found.value;
  if (!found) return <p role="status">{say.working}</p>;
  const { brackets } = found.ranking;
  const shown = brackets.filter(({ chance }, k) => k === 0 || (k < MOST && chance >= 0.01));
  const rest = brackets.slice(shown.length);
  const others = rest.flatMap(({ suspects }) => suspects);
  const sum = rest.reduce((all, { chance }) => all + chance, 0);
  const [first] = brackets[0]?.suspects ?? [];
  return (
    <details class="symptoms-ranking" open={wide.value} aria-busy={enquiry.working.value}>
      <summary>
        <h2>{say.suspects}</h2>
        {first && (
          <span class="symptoms-leader">
            {percent(brackets[0]?.chance ?? 0, voice)} % {suspectText(first, voice)}
          </span>
        )}
      </summary>
      <Doubts enquiry={enquiry} />
      <ol class="symptoms-brackets">
        {shown.map((bracket, k) => (
          <Group key={bracketKey(bracket)} enquiry={enquiry} bracket={bracket} place={k} />
        ))}
      </ol>
      {others.length > 0 && (
        <details>
          <summary>{say.otherSuspects(others.length, percent(sum, voice))}</summary>
          <ul class="symptoms-others">
            {others.slice(0, MOST_OTHERS).map((suspect, k) => (
              <li key={k}>
                {percent(suspect.chance, voice)} % {suspectText(suspect, voice)}
              </li>
            ))}
          </ul>
        </details>
      )}
      {found.growlers.length > 0 && (
        <>
          <h3>{say.growlers}</h3>
          <ul>
            {found.growlers.slice(0, MOST).map((growler, k) => (
              <li key={k}>{growlerText(growler, voice)}</li>
            ))}
          </ul>
        </>
      )}
    </details>
  );
}

const WIDE = '(width >= 62rem)';
const isWide = () => matchMedia(WIDE).matches;
const MOST = 6;
const MOST_OTHERS = 40;

function bracketKey({ suspects }: Bracket): string {
  return suspects.map(({ cause }) => JSON.stringify([cause.cause, cause.faults, cause.at])).join();
}

function Doubts({ enquiry }: { readonly enquiry: Enquiry }) {
  const say = words();
  const voice = voiceOf(language.value);
  const { doubts = [], pairs = [] } = enquiry.found.value ?? {};
  if (doubts.length === 0) return null;
  return (
    <div class="symptoms-doubts">
      <h3>{say.doubts}</h3>
      {pairs.length > 0 && <p>{voice.say('contradiction.pairs', { count: pairs.length })}</p>}
      {doubts.slice(0, 3).map(({ observations, causes }, k) => (
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
    </div>
  );
}
