import { type Bracket, sidesOf, type Suspect } from '../../engine/suspects/index.ts';
import { evidenceText, suspectText } from '../../telling/narrative/index.ts';
import { percent } from '../../telling/report/index.ts';
import { voiceNow } from '../words/index.ts';
import type { Enquiry } from '../enquiry/index.ts';
import { words } from './words.ts';

interface Props {
  readonly enquiry: Enquiry;
  readonly bracket: Bracket;
  /** Its place in the ranking. */
  readonly place: number;
}

/** Suspects that nothing seen so far parts, with what speaks for them and against them. */
export function Group({ enquiry, bracket, place }: Props) {
  const say = words();
  const voice = voiceNow();
  const { suspects, chance } = bracket;
  const rest = suspects.slice(MOST);
  const named = (suspect: Suspect, k: number) => (
    <Suspected key={k} {...{ enquiry, suspect, place, k, alone: suspects.length === 1 }} />
  );
  return (
    <li class="symptoms-bracket">
      <p class="symptoms-chance">
        <b>{percent(chance, voice)} %</b>
        {suspects.length > 1 && <small> {say.apart}</small>}
      </p>
      <meter class="symptoms-meter" min={0} max={1} value={chance} aria-hidden="true" />
      <ul class="symptoms-suspects">{suspects.slice(0, MOST).map(named)}</ul>
      {rest.length > 0 && (
        <details>
          <summary>{say.more(rest.length)}</summary>
          <ul class="symptoms-suspects">{rest.map((suspect, k) => named(suspect, k + MOST))}</ul>
        </details>
      )}
      <Evidence bracket={bracket} open={place === 0} />
    </li>
  );
}

const MOST = 3;
const MOST_EVIDENCE = 6;

interface SuspectedProps {
  readonly enquiry: Enquiry;
  readonly suspect: Suspect;
  readonly place: number;
  readonly k: number;
  readonly alone: boolean;
}

function Suspected({ enquiry, suspect, place, k, alone }: SuspectedProps) {
  const say = words();
  const voice = voiceNow();
  const opened = enquiry.opened.value;
  const isOpen = opened?.bracket === place && opened.suspect === k;
  const name = suspectText(suspect, voice);
  return (
    <li>
      <button
        type="button"
        class="symptoms-suspect"
        aria-pressed={isOpen}
        onClick={() => {
          enquiry.opened.value = isOpen ? undefined : { bracket: place, suspect: k };
        }}
      >
        <span class="unseen">{say.open} </span>
        <span class="symptoms-name">{name}</span>
        {!alone && <small>{percent(suspect.chance, voice)} %</small>}
      </button>
    </li>
  );
}

function Evidence({ bracket, open }: { readonly bracket: Bracket; readonly open: boolean }) {
  const say = words();
  const voice = voiceNow();
  const spoken = sidesOf(bracket.evidence);
  const sides = (['for', 'against'] as const).flatMap((side) => {
    return spoken[side].length > 0 ? [[side, spoken[side]] as const] : [];
  });
  if (sides.length === 0) return null;
  return (
    <details open={open}>
      <summary>{say.why}</summary>
      {sides.map(([side, its]) => (
        <p key={side} class="symptoms-evidence">
          <b>{say[side]}</b>{' '}
          {its
            .slice(0, MOST_EVIDENCE)
            .map((one) => evidenceText(one, voice))
            .join('; ')}
          {its.length > MOST_EVIDENCE && say.more(its.length - MOST_EVIDENCE)}
        </p>
      ))}
    </details>
  );
}
