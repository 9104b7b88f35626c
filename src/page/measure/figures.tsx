import type { MeasuredThing } from '../../asking/build/index.ts';
import { fraction } from '../../engine/linear/index.ts';
import { digitsIn, type LengthUnit, lengthFrom } from '../../shop/length/index.ts';
import { meanGap } from '../../shop/limits/index.ts';
import { asFineAs, lengthText, torqueText } from '../../telling/narrative/index.ts';
import { voiceNow } from '../words/index.ts';
import { scaleOf } from './bar.ts';
import { LimitBar } from './limitbar.tsx';
import { standingIn, type Typed, type ReadingWay } from './ways.ts';
import { words } from './words.ts';

interface Props {
  readonly thing: MeasuredThing;
  readonly way: ReadingWay;
  readonly typed: readonly Typed[];
  /** What is being typed, in micrometres or newton metres. */
  readonly typing: number | undefined;
  readonly first: LengthUnit;
}

/** Mean and spread of what was read, and where it lies between the limits. */
export function Figures({ thing, way, typed, typing, first }: Props) {
  const say = words();
  const voice = voiceNow();
  const scale = scaleOf(thing, way, typed);
  const row = way.fields.find(({ many }) => many);
  const texts = row ? standingIn(typed, row).map(({ text }) => text) : [];
  const lengths = texts.flatMap((text) => lengthFrom(text) ?? []);
  const gap = lengths.length > 0 && way.way !== 'bore' ? meanGap(lengths, undefined) : undefined;
  const torque = thing.kind === 'preload' ? thing.judgement.torque : undefined;
  const mean = gap
    ? lengthText(gap.clearance, voice, first)
    : torque
      ? torqueText(torque, voice)
      : '';
  const end = (size: number | undefined) => {
    if (size === undefined) return '';
    if (row?.of === 'torque') return `${voice.written(size.toFixed(2))} Nm`;
    const stepUm = fraction(first === 'mm' ? 10 : 254, first === 'mm' ? 1 : 10);
    const length = { um: fraction(Math.round(size * 1000), 1000), stepUm };
    return `${voice.written(digitsIn(length, first))} ${first}`;
  };
  const [least, most] = [end(scale?.least), end(scale?.most)];
  const limits = [least, most].filter((its) => its !== '').join(' – ');
  return (
    <>
      {mean !== '' && (
        <p class="measure-figures">
          {say.mean} <b>{mean}</b>
          {gap && lengths.length > 1 && (
            <>
              {' '}
              · {say.spread}{' '}
              <b>{lengthText(asFineAs(gap.spreadUm, gap.clearance), voice, first)}</b>
            </>
          )}
        </p>
      )}
      {scale && (
        <LimitBar
          scale={scale}
          least={least}
          most={most}
          typed={row ? typing : undefined}
          label={say.bar(mean === '' ? '–' : mean, limits === '' ? say.noLimits : limits)}
        />
      )}
    </>
  );
}
