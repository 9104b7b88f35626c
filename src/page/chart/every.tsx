import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { chart, type ChartGear, MOST_DEVICES } from '../../engine/chart/index.ts';
import { isApplied, isFriction, type Train } from '../../engine/train/index.ts';
import { coastText, gearName } from '../../telling/narrative/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import { Swaps } from './swaps.tsx';
import { words } from './words.ts';

interface Props {
  readonly study: Study;
  /** The right build, or the wrong one beside it. */
  readonly train: Train;
}

/** Every combination of the friction devices, and the swaps; worked out when it is opened. */
export function Every({ study, train }: Props) {
  const say = words();
  const voice = voiceNow();
  const open = useSignal(false);
  const drivesOnly = useSignal(true);
  const asked = open.value && train.devices.filter(isApplied).length <= MOST_DEVICES;
  const found = useMemo(() => (asked ? chart(train) : undefined), [asked, train]);
  const gears = found?.gears.filter((gear) => !drivesOnly.value || gear.drive === 'driving');
  const count = (state: ChartGear['drive']) =>
    found?.gears.filter(({ drive }) => drive === state).length ?? 0;
  const own = train.finalDrive !== undefined;
  return (
    <details onToggle={({ currentTarget }) => (open.value = currentTarget.open)}>
      <summary>{say.every}</summary>
      {open.value && !found && <p>{say.tooMany(MOST_DEVICES)}</p>}
      {found && gears && (
        <>
          <p class="chart-count">
            {voice.say('chart.title', {
              train: voice.train(train),
              devices: train.devices.filter(isFriction).length,
              pawls: train.devices.filter(({ kind }) => kind === 'pawl').length,
              combinations: found.gears.length,
              driving: count('driving'),
              neutral: count('neutral'),
              tied: count('tied up'),
            })}
          </p>
          <label class="chart-only">
            <input
              type="checkbox"
              checked={drivesOnly.value}
              onChange={({ currentTarget }) => (drivesOnly.value = currentTarget.checked)}
            />
            {say.drivesOnly}
          </label>
          <div class="chart-wide" tabIndex={0} role="group" aria-label={say.every}>
            <table>
              <thead>
                <tr>
                  <th scope="col">{say.applied}</th>
                  <th scope="col">{say.ratio}</th>
                  {own && <th scope="col">{voice.say('head', { head: 'own' })}</th>}
                  <th scope="col">{say.coast}</th>
                  <th scope="col">{say.gear}</th>
                </tr>
              </thead>
              <tbody>
                {gears.map((gear) => (
                  <tr key={gear.on.join('+')}>
                    <td>
                      <button type="button" onClick={() => study.run(gear.on, 'drive')}>
                        {gear.on.length > 0
                          ? gear.on.map((on) => voice.called(on)).join(' + ')
                          : voice.say('on.nothing')}
                      </button>
                    </td>
                    <td class="chart-number">
                      {gear.ratio
                        ? voice.number(gear.ratio)
                        : voice.say('state', { state: gear.drive })}
                    </td>
                    {own && <td>{gear.beforeFinal && voice.number(gear.beforeFinal)}</td>}
                    <td>{coastText(gear, voice)}</td>
                    <td>{gear.named.map((its) => gearName(its, voice)).join(', ')}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          <Swaps chart={found} />
        </>
      )}
    </details>
  );
}
