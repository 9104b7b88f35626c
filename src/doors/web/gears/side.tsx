import { type Bench, SIDES } from '../bench/index.ts';
import { words } from './words.ts';

/** Which end turns the train, and which way; or that a hand does, until it releases. */
export function SideOf({ bench }: { readonly bench: Bench }) {
  const say = words();
  const setting = bench.setting.value;
  return (
    <fieldset class="gears-row">
      <legend>{say.turned}</legend>
      {SIDES.map((side) => (
        <button
          key={side}
          type="button"
          aria-pressed={setting.by === 'engine' && setting.side === side}
          onClick={() => bench.release(side)}
        >
          {say[side]}
        </button>
      ))}
      {setting.by === 'hand' && (
        <button type="button" aria-pressed="true" onClick={() => bench.release()}>
          {say.byHand}
        </button>
      )}
    </fieldset>
  );
}
