import { useState } from 'preact/hooks';
import type { MeasuredThing } from '../../asking/build/index.ts';
import { compare, signOf } from '../../engine/linear/index.ts';
import { type Length, lengthFrom, type LengthUnit } from '../../shop/length/index.ts';
import { type Chosen, sizeOf } from '../../shop/limits/index.ts';
import { asFineAs, gapTexts, keyOf, lengthText, visible } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { voiceNow } from '../words/index.ts';
import type { Measuring } from './measuring.ts';
import type { Telling } from './telling.ts';
import { limitKindsOf, shelfOf } from './ways.ts';
import { words } from './words.ts';

interface Props {
  readonly measuring: Measuring;
  readonly thing: MeasuredThing;
  readonly telling: Telling;
  readonly first: LengthUnit;
}

/** The shelf as the row of parts that it is: what each would give, which is in, which is best. */
export function Shelf({ measuring, thing, telling, first }: Props) {
  const say = words();
  const voice = voiceNow();
  const [taken, take] = useState<string | undefined>(undefined);
  const shelf = shelfOf(thing);
  const at = measuring.at.value;
  if (!at) return null;
  const edit = (
    <div class="row">
      <LargeButton
        onPress={() => measuring.go({ ...at, side: 'limits', way: limitKindsOf(thing)[0] ?? '' })}
      >
        {say.enterLimits}
      </LargeButton>
      {canHaveShelf(thing) && (
        <LargeButton onPress={() => measuring.go({ ...at, side: 'shelf' })}>
          {say.enterShelf}
        </LargeButton>
      )}
    </div>
  );
  if (!shelf) return edit;
  const { selection, tool, next } = telling;
  const fitted = fittedIn(thing) ?? lengthFrom(shelf.fitted);
  const gap = ({ predicted, verdict, safe }: Chosen, by: Length) => {
    const judged = voice.say('pack.prediction', {
      verdict: keyOf(verdict),
      safe: safe ? 'yes' : 'no',
    });
    return `${say.gives(gapTexts(predicted, by, voice, first).clearance)}, ${judged}`;
  };
  // A squeeze is a gap below nothing.
  const squeeze = ({ predicted: { um }, verdict }: Chosen, by: Length) => {
    const size = lengthText(asFineAs(sizeOf(um), by), voice, first);
    return `${signOf(um) < 0 ? say.squeezes(size) : say.leaves(size)}, ${say.tight[verdict]}`;
  };
  const part = (size: string) => `${shelf.part} ${size}`;
  return (
    <div class="measure-shelf">
      <h3>{voice.say('pack.shelf', { part: keyOf(shelf.part) })}</h3>
      {next !== undefined && <p>{next}</p>}
      <div class="measure-parts" role="group" aria-label={say.shelf}>
        {shelf.sizes.map((size) => {
          const length = lengthFrom(size) as Length;
          const its = selection?.each.find((one) => compare(one.size.um, length.um) === 0);
          const isIn = fitted !== undefined && compare(fitted.um, length.um) === 0;
          const best = its !== undefined && its === selection?.best;
          return (
            <LargeButton
              key={size}
              pressed={taken === size}
              disabled={!its}
              onPress={() => take(taken === size ? undefined : size)}
            >
              <span class={`measure-part${best ? ' measure-best' : ''}`}>
                <b>{visible(size)}</b>
                {its && tool && (
                  <span>{thing.kind === 'preload' ? squeeze(its, tool) : gap(its, tool)}</span>
                )}
                <i>{[isIn ? say.fitted : '', best ? say.best : ''].filter(Boolean).join(' · ')}</i>
              </span>
            </LargeButton>
          );
        })}
      </div>
      {taken !== undefined && selection && (
        <LargeButton
          main
          onPress={() => {
            take(undefined);
            void takeIt(measuring, shelf.part, taken);
          }}
        >
          {say.take(part(taken))}
        </LargeButton>
      )}
      {edit}
    </div>
  );
}

// What was read with the part before is written down before another is taken.
async function takeIt(measuring: Measuring, part: string, size: string): Promise<void> {
  if (measuring.draft.value && !(await measuring.write())) return;
  await measuring.choose(part, size);
}

function fittedIn({ kind, judgement }: MeasuredThing): Length | undefined {
  return kind === 'pack' || kind === 'endplay' ? judgement.again?.fitted : undefined;
}

function canHaveShelf({ kind, judgement }: MeasuredThing): boolean {
  return kind !== 'wear' && !(kind === 'endplay' && judgement.endPlay.measure === 'backlash');
}
