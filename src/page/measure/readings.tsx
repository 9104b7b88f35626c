import { useState } from 'preact/hooks';
import { LargeButton } from '../controls/index.ts';
import type { Measuring } from './measuring.ts';
import { standingIn, type ReadingWay } from './ways.ts';
import { wordOf, words } from './words.ts';

interface Props {
  readonly measuring: Measuring;
  readonly way: ReadingWay;
}

// Common practice, no source.
const FEWEST = 3;

/** The numbers as they were typed, each with its unit; one that is pressed can be struck. */
export function Readings({ measuring, way }: Props) {
  const say = words();
  const [asked, ask] = useState<number | undefined>(undefined);
  const typed = measuring.typed.value;
  const row = way.fields.find(({ many }) => many);
  const count = row ? standingIn(typed, row).length : 0;
  const chosen = asked === undefined ? undefined : typed[asked];
  const chips = typed.map((its, place) => ({ ...its, place }));
  return (
    <div class="measure-readings" role="group" aria-label={say.readings}>
      {way.fields.map(({ field, many }) => (
        <div key={field} class="measure-field">
          {field !== '' && <h3>{wordOf(say.fields, field)}</h3>}
          {chips
            .filter((its) => its.field === field)
            .map(({ place, text, struck }) =>
              struck ? (
                <s key={place} class="measure-struck">
                  {text} <span class="unseen">({say.struck})</span>
                </s>
              ) : (
                <LargeButton
                  key={place}
                  pressed={asked === place}
                  onPress={() => ask(asked === place ? undefined : place)}
                >
                  {text}
                </LargeButton>
              ),
            )}
          {many && count < FEWEST && measuring.at.value?.side === 'read' && (
            <p class="aside">{say.more(FEWEST - count)}</p>
          )}
        </div>
      ))}
      {asked !== undefined && chosen && !chosen.struck && (
        <div class="row">
          <LargeButton
            onPress={() => {
              measuring.strikeTyped([asked]);
              ask(undefined);
            }}
          >
            {say.strikeIt(chosen.text)}
          </LargeButton>
          <LargeButton onPress={() => ask(undefined)}>{say.cancel}</LargeButton>
        </div>
      )}
    </div>
  );
}
