import { type Study, SIDES } from '../study/index.ts';
import { useRoving } from '../controls/index.ts';
import { words } from './words.ts';

/** Which end turns the train, and which way; or that a hand does, until it releases. */
export function SideOf({ study }: { readonly study: Study }) {
  const say = words();
  const setting = study.setting.value;
  const row = useRoving<HTMLFieldSetElement>();
  return (
    <fieldset class="gears-row" {...row}>
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
      <button type="button" disabled={setting.by !== 'hand'} onClick={() => study.release()}>
        {say.byHand}
      </button>
    </fieldset>
  );
}
