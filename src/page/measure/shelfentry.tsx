import { useState } from 'preact/hooks';
import type { MeasuredThing } from '../../asking/build/index.ts';
import { compare } from '../../engine/linear/index.ts';
import { PRELOAD_PARTS, ROD_PARTS, SHELF_PARTS, WASHER_PARTS } from '../../engine/train/index.ts';
import { putShelf } from '../../engine/trainfile/index.ts';
import { type Length, lengthFrom } from '../../shop/length/index.ts';
import { keyOf } from '../../telling/narrative/index.ts';
import { DecimalPad, LargeButton } from '../controls/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import type { Measuring } from './measuring.ts';
import { Head } from './one.tsx';
import { Readings } from './readings.tsx';
import { SHELF, shelfOf, standingIn, unitsOf } from './ways.ts';
import { words } from './words.ts';

interface Props {
  readonly measuring: Measuring;
  readonly study: Study;
  readonly thing: MeasuredThing;
}

/** The row of parts that sets a gap, as it lies on the shelf: sizes, and which one is in. */
export function ShelfEntry({ measuring, study, thing }: Props) {
  const say = words();
  const voice = voiceNow();
  const before = shelfOf(thing);
  const parts: readonly string[] = thing.kind === 'wear' ? [] : PARTS[thing.kind];
  const part = measuring.text('part') ?? before?.part ?? parts[0] ?? '';
  const fitted = measuring.text('fitted') ?? before?.fitted ?? '';
  const [edited, refuse] = useState(true);
  const [done, tell] = useState(false);
  const [at, field] = [measuring.at.value, SHELF.fields[0]];
  if (!at || !field) return null;
  const typed = standingIn(measuring.typed.value, field).map(({ text }) => text);
  const sizes = [...new Set([...(before?.sizes ?? []), ...typed])].toSorted((a, b) => {
    return compare((lengthFrom(a) as Length).um, (lengthFrom(b) as Length).um);
  });
  const tolerance = before?.tolerance;
  const shelf = { part, fitted, sizes, ...(tolerance !== undefined && { tolerance }) };
  const toJob = async () => {
    if (!(await measuring.enter({ kind: 'shelf', of: at.name, shelf }))) return;
    measuring.forget();
    tell(true);
  };
  const toFile = () => {
    const put = putShelf(study.file.text.value, at, shelf);
    refuse('text' in put);
    if (!('text' in put)) return;
    study.file.write(put.text);
    measuring.forget();
    tell(true);
  };
  return (
    <>
      <Head measuring={measuring} study={study} thing={thing} />
      <p class="aside">{say.whose}</p>
      <div class="measure-one">
        <div class="measure-entry">
          <DecimalPad
            label={say.sizes}
            units={unitsOf(field)}
            unit={measuring.unit.value}
            onUnit={(its) => measuring.setUnit(its)}
            give={say.addSize}
            onNumber={(its) => measuring.add(its)}
          />
        </div>
        <div class="measure-told">
          <h3>{say.part}</h3>
          <div role="group" aria-label={say.part} class="measure-choices">
            {parts.map((its) => (
              <LargeButton
                key={its}
                pressed={its === part}
                onPress={() => measuring.setText('part', its)}
              >
                {voice.say('shelf part', { part: keyOf(its) })}
              </LargeButton>
            ))}
          </div>
          <Readings measuring={measuring} way={SHELF} />
          <h3>{say.whichFitted}</h3>
          <div class="measure-parts" role="group" aria-label={say.whichFitted}>
            {sizes.map((size) => (
              <LargeButton
                key={size}
                pressed={size === fitted}
                onPress={() => measuring.setText('fitted', size)}
              >
                {size}
              </LargeButton>
            ))}
          </div>
          <div class="row">
            <LargeButton main disabled={!sizes.includes(fitted)} onPress={toFile}>
              {say.toFile}
            </LargeButton>
            {measuring.keeper.open.value && (
              <LargeButton disabled={!sizes.includes(fitted)} onPress={() => void toJob()}>
                {say.toJob}
              </LargeButton>
            )}
            <LargeButton onPress={() => measuring.go({ kind: at.kind, name: at.name })}>
              {say.readings}
            </LargeButton>
          </div>
          <p role="status">{done && say.kept}</p>
          {!edited && (
            <p class="measure-warning" role="alert">
              {say.notEdited}
            </p>
          )}
        </div>
      </div>
    </>
  );
}

const PARTS = {
  pack: SHELF_PARTS,
  endplay: WASHER_PARTS,
  preload: PRELOAD_PARTS,
  band: ROD_PARTS,
} as const;
