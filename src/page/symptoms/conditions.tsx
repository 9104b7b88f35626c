import type { Signal } from '@preact/signals';
import type { Test } from '../../engine/sight/index.ts';
import { LargeButton } from '../controls/index.ts';
import { words } from './words.ts';

/** How a test was made, as far as that was said. */
export interface Under {
  readonly heat?: 'cold' | 'hot';
  readonly load?: 'light' | 'heavy';
  readonly speed?: string;
}

const LOADED: ReadonlySet<string> = new Set(['under power', 'coast', 'noise', 'shift']);
const WARMED: ReadonlySet<string> = new Set([
  ...LOADED,
  'engagement',
  'pressure',
  'device pressure',
]);

/** Cold or hot, lightly or at full load, where that makes a difference; pressed again, neither. */
export function Conditions({
  test,
  under,
}: {
  readonly test: Test;
  readonly under: Signal<Under>;
}) {
  const say = words();
  const { heat, load } = under.value;
  const put = (its: Under) => (under.value = its);
  const { heat: _heat, ...noHeat } = under.value;
  const { load: _load, ...noLoad } = under.value;
  return (
    <div class="symptoms-conditions">
      {WARMED.has(test.test) && (
        <div class="row" role="group" aria-label={say.heat}>
          {(['cold', 'hot'] as const).map((one) => (
            <LargeButton
              key={one}
              pressed={heat === one}
              onPress={() => put(heat === one ? noHeat : { ...under.value, heat: one })}
            >
              {say.heats[one]}
            </LargeButton>
          ))}
        </div>
      )}
      {LOADED.has(test.test) && (
        <div class="row" role="group" aria-label={say.load}>
          {(['light', 'heavy'] as const).map((one) => (
            <LargeButton
              key={one}
              pressed={load === one}
              onPress={() => put(load === one ? noLoad : { ...under.value, load: one })}
            >
              {say.loads[one]}
            </LargeButton>
          ))}
        </div>
      )}
    </div>
  );
}
