import { voiceNow } from '../words/index.ts';
import type { Building } from './building.ts';
import { words } from './words.ts';

/** What was measured and left open, told before it is covered and before the engine is started. */
export function LeftOpen({ building }: { readonly building: Building }) {
  const voice = voiceNow();
  const names = building.open.map((name) => voice.called(name));
  if (names.length === 0) return null;
  return (
    <p class="build-felt build-open">
      <strong>{words().leftOpen(voice.list(names))}</strong>
    </p>
  );
}
