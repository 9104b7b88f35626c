import type { PlannedCheck } from '../../engine/plan/index.ts';
import { voiceNow } from '../words/index.ts';
import { HAND, TURN } from './hands.ts';
import { words } from './words.ts';

/**
 * What is held and what is turned, each a dial of its own, however far away on the unit: where both
 * are one piece in the finished train, its drawing has one dial for the two.
 */
export function Grips({ check: { hold, turn } }: { readonly check: PlannedCheck }) {
  const say = words();
  const voice = voiceNow();
  return (
    // The question says the same in words.
    <div class="build-grips" aria-hidden="true">
      {hold && <Grip look="build-held" d={HAND} says={say.held} name={voice.name(hold.member)} />}
      <Grip look="build-turned" d={TURN} says={say.turned} name={voice.name(turn.member)} />
    </div>
  );
}

interface Props {
  readonly look: 'build-held' | 'build-turned';
  readonly d: string;
  readonly says: string;
  readonly name: string;
}

function Grip({ look, d, says, name }: Props) {
  return (
    <div class={`build-grip ${look}`}>
      <svg viewBox="-38 -38 76 76">
        <circle class="dial-rim" r="22" />
        <g class="dial-face">
          <path d="M0-22V-12" />
          <circle r="2.5" />
        </g>
        <path class={`build-hand ${look}`} d={d} />
      </svg>
      <p>
        <b>{says}</b>
        <br />
        {name}
      </p>
    </div>
  );
}
