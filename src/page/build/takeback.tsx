import type { Mistake } from '../../engine/plan/index.ts';
import { mistakeText, type StepContext, visible } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import type { Building } from './building.ts';
import { words } from './words.ts';

interface Props {
  readonly building: Building;
  readonly context: StepContext;
  readonly mistakes: readonly Mistake[];
}

/** Which mistakes it may be, and for each how far back everything comes off again. */
export function TakeBack({ building, context, mistakes }: Props) {
  const say = words();
  const { train, plan, voice } = context;
  if (mistakes.length === 0) return <p>{say.nothingKnown}</p>;
  return (
    <section class="build-back" aria-label={say.mayBe}>
      <h3>{say.mayBe}</h3>
      <ul>
        {mistakes.map((mistake) => {
          const name = mistakeText(mistake, train, voice);
          const found = mistake.what === 'one-way' ? building.foundOf(mistake.device) : [];
          const made = plan.mistakes.find((its) => its.mistake === mistake)?.made ?? 1;
          return (
            <li key={name}>
              {found.length > 0 && (
                <p class="build-felt">{say.jobFound(visible(found.join('; ')))}</p>
              )}
              <LargeButton onPress={() => void building.takeOff(made, name)}>
                <b>{name}</b>
                <br />
                {say.takeOff(made)}
              </LargeButton>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
