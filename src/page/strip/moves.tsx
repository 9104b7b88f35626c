import { useState } from 'preact/hooks';
import { faultsOf, type PartStanding } from '../../asking/job/index.ts';
import type { Part } from '../../engine/train/index.ts';
import { visible } from '../../telling/narrative/index.ts';
import { LargeButton, NameEntry } from '../controls/index.ts';
import type { Again, Progress } from './progress.ts';
import { words } from './words.ts';

interface Props {
  readonly part: Part;
  readonly progress: Progress;
  /** Whether it is what this way of working comes to. */
  readonly main: boolean;
  readonly refused: boolean;
}

/** Takes the part off or puts it on; one that was found faulty goes on as a new one, or with why. */
export function Moves({ part, progress, main, refused }: Props) {
  const say = words();
  const isOff = progress.stripping.off.has(part.name);
  const standing = progress.standing(part);
  const isFaulty = standing !== undefined && faultsOf(standing).length > 0;
  if (!isOff || !isFaulty) {
    return (
      <LargeButton main={main} disabled={refused} onPress={() => void progress.move(part)}>
        {isOff ? say.putOn : say.takeOff}
      </LargeButton>
    );
  }
  return (
    <GoesOn main={main} refused={refused} onAgain={(again) => void progress.move(part, again)} />
  );
}

interface GoesOnProps {
  readonly main: boolean;
  readonly refused?: boolean;
  readonly onAgain: (again: NonNullable<Again>) => void;
}

/** How a part that was found faulty goes on again: a new one, or the same, and why. */
export function GoesOn({ main, refused = false, onAgain }: GoesOnProps) {
  const say = words();
  const [asks, ask] = useState(false);
  return (
    <>
      <LargeButton main={main} disabled={refused} onPress={() => onAgain({ replaced: true })}>
        {say.newOn}
      </LargeButton>
      <LargeButton disabled={refused} pressed={asks} onPress={() => ask(!asks)}>
        {say.sameOn}
      </LargeButton>
      {asks && (
        <div class="strip-why">
          <p>{say.whyOn}</p>
          <NameEntry label={say.whyOn} onName={(why) => onAgain({ why })} />
        </div>
      )}
    </>
  );
}

/** What speaks against the part, in sight whether it is off or on again, and what was done of it. */
export function FoundFaulty({ standing }: { readonly standing: PartStanding | undefined }) {
  const say = words();
  const faults = standing?.found.filter((its) => its.isFault) ?? [];
  if (faults.length === 0) return null;
  const { on } = standing ?? {};
  const what = faults.map(({ says }) => visible(says)).join('; ');
  return (
    <p class="strip-warning strip-faulty">
      <strong>{say.faulty(what)}</strong>{' '}
      {on?.replaced ? say.isNew : on?.why !== undefined ? say.isSame(visible(on.why)) : say.replace}
    </p>
  );
}
