import { problemText } from '../../../telling/narrative/index.ts';
import type { Doubt } from '../doubts/index.ts';
import { language } from '../words.ts';
import { words } from './words.ts';

/** The warnings of the file under the drawing, each with the sign that stands on what it is about. */
export function Warnings({ doubts }: { readonly doubts: readonly Doubt[] }) {
  const say = words();
  if (doubts.length === 0) return null;
  return (
    <ul class="plate-warnings" aria-label={say.warnings}>
      {doubts.map(({ warning }, i) => (
        <li key={i}>
          <svg viewBox="0 0 16 15" aria-hidden="true">
            <path class="plate-sign" d="M0 14.5l8 -14l8 14zm8 -10v5m0 2.5v.5" />
          </svg>
          {say.look} {problemText(warning, language.value)}
        </li>
      ))}
    </ul>
  );
}
