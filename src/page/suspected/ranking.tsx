import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Examination } from '../../asking/faults/index.ts';
import type { Bracket } from '../../engine/suspects/index.ts';
import { growlerText, suspectText, type Voice } from '../../telling/narrative/index.ts';
import { percent } from '../../telling/report/index.ts';
import { voiceNow } from '../words/index.ts';
import type { Enquiry } from '../enquiry/index.ts';
import { Group } from './group.tsx';
import { words } from './words.ts';
import './suspected.css';

/** Who is suspected, and why. On a phone it folds. */
export function Ranking({ enquiry }: { readonly enquiry: Enquiry }) {
  const say = words();
  const voice = voiceNow();
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
  // While nothing was told nobody is suspected more than another by anything but custom.
  const isTold = found.told.observations.length > 0;
  const shown = brackets.filter(({ chance }, k) => {
    return isTold && (k === 0 || (k < MOST && chance >= 0.01));
  });
  const rest = brackets.slice(shown.length);
  const others = rest.flatMap(({ suspects }) => suspects);
  const sum = rest.reduce((all, { chance }) => all + chance, 0);
  return (
    <details class="symptoms-ranking" open={wide.value} aria-busy={enquiry.working.value}>
      <summary>
        <h2>{say.suspects}</h2>
        <span class="symptoms-leader">{leaderText(found, voice)}</span>
      </summary>
      {isTold ? (
        <ol class="symptoms-brackets">
          {shown.map((bracket, k) => (
            <Group key={bracketKey(bracket)} enquiry={enquiry} bracket={bracket} place={k} />
          ))}
        </ol>
      ) : (
        <p class="aside">{say.anyOf(others.length)}</p>
      )}
      {isTold && others.length > 0 && (
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

/**
 * What is said where the ranking is folded: nobody's name while nothing was told, nor one of
 * several that share a chance; nobody is certain who has others beside.
 */
function leaderText({ ranking, told }: Examination, voice: Voice): string {
  const say = words();
  const [leading, ...others] = ranking.brackets;
  const [first, ...sharing] = leading?.suspects ?? [];
  if (!leading || !first) return '';
  if (told.observations.length === 0) return say.nothingToldYet;
  const rounded = others.length > 0 && leading.chance > 0.994;
  const chance = rounded ? '>99' : percent(leading.chance, voice);
  if (sharing.length > 0) return say.leadingGroup(sharing.length + 1, chance);
  return `${chance} % ${suspectText(first, voice)}`;
}

function bracketKey({ suspects }: Bracket): string {
  return suspects.map(({ cause }) => JSON.stringify([cause.cause, cause.faults, cause.at])).join();
}
