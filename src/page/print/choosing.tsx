import type { ComponentChildren } from 'preact';
import type { Signal } from '@preact/signals';
import type { Train } from '../../engine/train/index.ts';
import { keyOf } from '../../telling/narrative/index.ts';
import { LargeButton, Tiles } from '../controls/index.ts';
import { voiceNow } from '../words/index.ts';
import { filling, paper, pressure, stallRatio, torque, WANTED, what } from './wanted.ts';
import { words } from './words.ts';

interface Props {
  readonly train: Train;
  /** Whether one is open. */
  readonly job: boolean;
  /** What is chosen further. */
  readonly children?: ComponentChildren;
}

/** Which sheet, on which paper, filled in or not, and at which load. */
export function Choosing({ train, job, children }: Props) {
  const say = words();
  const voice = voiceNow();
  return (
    <>
      <div class="print-what" role="group" aria-label={say.what}>
        <Tiles>
          {WANTED.map((one) => (
            <LargeButton key={one} pressed={one === what.value} onPress={() => (what.value = one)}>
              {one === 'pictures'
                ? say.picturesTile
                : voice.say('sheet.title', { sheet: keyOf(one) })}
            </LargeButton>
          ))}
        </Tiles>
      </div>
      {children}
      {what.value === 'capacity' && <Load train={train} />}
      {job && what.value !== 'pictures' && (
        <OneOf label={say.filling} of={filling} words={say.fillings} />
      )}
      <OneOf label={say.paper} of={paper} words={say.papers} />
    </>
  );
}

interface OneOfProps<Word extends string> {
  readonly label: string;
  readonly of: Signal<Word>;
  readonly words: Readonly<Record<Word, string>>;
}

function OneOf<Word extends string>({ label, of, words: its }: OneOfProps<Word>) {
  return (
    <div class="row" role="group" aria-label={label}>
      {(Object.keys(its) as Word[]).map((one) => (
        <LargeButton key={one} pressed={one === of.value} onPress={() => (of.value = one)}>
          {its[one]}
        </LargeButton>
      ))}
    </div>
  );
}

function Load({ train }: { readonly train: Train }) {
  const say = words();
  const boxes = [
    [say.pressure, pressure, '900 kPa'],
    [say.torque, torque, `${train.engine?.['torque Nm'] ?? ''} Nm`],
    [say.stallRatio, stallRatio, `${train.engine?.['stall ratio'] ?? 1}`],
  ] as const;
  return (
    <div class="print-load" role="group" aria-label={say.load}>
      {boxes.map(([label, its, usual]) => (
        <label key={label}>
          {label}{' '}
          <input
            value={its.value}
            placeholder={usual}
            onChange={({ currentTarget }) => (its.value = currentTarget.value)}
          />
        </label>
      ))}
    </div>
  );
}
