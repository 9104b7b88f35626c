import { type Study, SIDES } from '../study/index.ts';
import { words } from './words.ts';

/** Which end turns the train, and which way; or that a hand does, until it releases. */
export function SideOf({ study }: { readonly study: Study }) {
  const say = words();
  const setting = study.setting.value;
  return (
    <fieldset class="gears-row">
      <legend>{say.turned}</legend>
      {SIDES.map((side) => (
        <button
          key={side}
          type="button"
          aria-pressed={setting.by === 'engine' && setting.side === side}
          onClick={() => study.release(side)}
        >
          {say[side]}
        </button>
      ))}
      {setting.by === 'hand' && (
        <button type="button" aria-pressed="true" onClick={() => study.release()}>
          {say.byHand}
        </button>
      )}
    </fieldset>
  );
}
