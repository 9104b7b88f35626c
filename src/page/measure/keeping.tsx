import { LargeButton } from '../controls/index.ts';
import type { Measuring } from './measuring.ts';
import { words } from './words.ts';

/** Where what is written down goes: the open job, this browser, or nowhere. */
export function Keeping({ measuring }: { readonly measuring: Measuring }) {
  const say = words();
  const job = measuring.keeper.open.value;
  const count = measuring.loose.value.length;
  return (
    <>
      {!measuring.keeps.value && (
        <p class="measure-warning" role="alert">
          {say.unkept}
        </p>
      )}
      {!job && measuring.keeps.value && <p class="aside">{say.noJob}</p>}
      {job && count > 0 && (
        <div class="row">
          <LargeButton onPress={() => void measuring.handOver()}>{say.handOver(count)}</LargeButton>
        </div>
      )}
    </>
  );
}
