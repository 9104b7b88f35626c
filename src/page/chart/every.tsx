import { useComputed, useSignal } from '@preact/signals';
import { chart, MOST_DEVICES } from '../../engine/chart/index.ts';
import { isApplied } from '../../engine/train/index.ts';
import { coastText, gearName, voiceOf } from '../../telling/narrative/index.ts';
import type { Study } from '../study/index.ts';
import { language } from '../words/index.ts';
import { words } from './words.ts';

/** Every combination of the friction devices; it is worked out when it is opened. */
export function Every({ study }: { readonly study: Study }) {
  const say = words();
  const voice = voiceOf(language.value);
  const open = useSignal(false);
  const drivesOnly = useSignal(true);
  const found = useComputed(() => {
    const train = study.file.train.value;
    if (!train || !open.value) return undefined;
    return train.devices.filter(isApplied).length > MOST_DEVICES ? undefined : chart(train);
  });
  const gears = found.value?.gears.filter((gear) => !drivesOnly.value || gear.drive === 'driving');
  return (
    <details onToggle={({ currentTarget }) => (open.value = currentTarget.open)}>
      <summary>{say.every}</summary>
      {open.value && !found.value && <p>{say.tooMany(MOST_DEVICES)}</p>}
      {gears && (
        <>
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
                  <th scope="col">{say.coast}</th>
                  <th scope="col">{say.gear}</th>
                </tr>
              </thead>
              <tbody>
                {gears.map((gear) => (
                  <tr key={gear.on.join('+')}>
                    <td>
                      <button type="button" onClick={() => study.run(gear.on, 'drive')}>
                        {gear.on.length > 0 ? gear.on.join(' + ') : voice.say('on.nothing')}
                      </button>
                    </td>
                    <td class="chart-number">
                      {gear.ratio
                        ? voice.number(gear.ratio)
                        : voice.say('state', { state: gear.drive })}
                    </td>
                    <td>{coastText(gear, voice)}</td>
                    <td>{gear.named.map(gearName).join(', ')}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </>
      )}
    </details>
  );
}
