import type { Signal } from '@preact/signals';
import { quantityFrom, toldIn } from '../../engine/quantity/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { words } from './words.ts';

/** What is asked about, as it is typed; '' leaves it to the file. */
export interface Load {
  readonly pressure: number;
  readonly unit: PressureUnit;
  readonly torque: string;
  readonly stallRatio: string;
}

const UNITS = ['kPa', 'bar', 'psi'] as const;
type PressureUnit = (typeof UNITS)[number];

// As far as the slider goes, and in what steps; beyond it stands no piston of this trade.
const RANGE: Readonly<Record<PressureUnit, readonly [most: number, step: number]>> = {
  kPa: [2000, 10],
  bar: [20, 0.1],
  psi: [300, 1],
};

interface Props {
  readonly load: Signal<Load>;
  readonly train: Train;
}

/** The pressure at every piston, what the engine gives, and by how much the converter multiplies it. */
export function LoadEntry({ load, train }: Props) {
  const say = words();
  const { pressure, unit, torque, stallRatio } = load.value;
  const [most, step] = RANGE[unit];
  const change = (its: Partial<Load>) => (load.value = { ...load.value, ...its });
  return (
    <div class="margins-load">
      <label class="margins-pressure">
        {say.pressure}
        <input
          type="range"
          min={step}
          max={most}
          step={step}
          value={pressure}
          aria-valuetext={`${pressure} ${unit}`}
          onInput={({ currentTarget }) => change({ pressure: Number(currentTarget.value) })}
        />
        <output>
          {pressure} {unit}
        </output>
      </label>
      <div class="row" role="group" aria-label={say.unit}>
        {UNITS.map((one) => (
          <button
            key={one}
            type="button"
            aria-pressed={one === unit}
            onClick={() => change({ unit: one, pressure: inUnit(pressure, unit, one) })}
          >
            {one}
          </button>
        ))}
      </div>
      <label>
        {say.torque}{' '}
        <input
          value={torque}
          placeholder={`${train.engine?.['torque Nm'] ?? ''} Nm`}
          onInput={({ currentTarget }) => change({ torque: currentTarget.value })}
        />
      </label>
      <label>
        {say.stallRatio}{' '}
        <input
          value={stallRatio}
          placeholder={`${train.engine?.['stall ratio'] ?? 1}`}
          onInput={({ currentTarget }) => change({ stallRatio: currentTarget.value })}
        />
      </label>
    </div>
  );
}

// The same pressure in another unit, in the steps of its slider.
function inUnit(pressure: number, from: PressureUnit, to: PressureUnit): number {
  const read = quantityFrom(`${pressure} ${from}`, 'pressure');
  const [, step] = RANGE[to];
  const its = read ? toNumber(toldIn(read.size, 'pressure', to)) : pressure;
  return Number((Math.round(its / step) * step).toFixed(1));
}
