import { problemText } from '../../telling/narrative/index.ts';
import { voiceNow } from '../words/index.ts';
import type { Warned } from './warnings.ts';
import { words } from './words.ts';
import './warnings.css';

/** The warnings of the file under the drawing, each with the sign that stands on what it is about. */
export function Warnings({ warnings }: { readonly warnings: readonly Warned[] }) {
  const say = words();
  if (warnings.length === 0) return null;
  return (
    <ul class="warnings" aria-label={say.warnings}>
      {warnings.map(({ warning }, i) => (
        <li key={i}>
          <svg viewBox="0 0 16 15" aria-hidden="true">
            <path class="warning-sign" d="M0 14.5l8 -14l8 14zm8 -10v5m0 2.5v.5" />
          </svg>
          {say.look} {problemText(warning, voiceNow())}
        </li>
      ))}
    </ul>
  );
}
