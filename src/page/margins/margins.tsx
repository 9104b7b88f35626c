import { useComputed, useSignal } from '@preact/signals';
import { loadAsked, marginsAsked, USUAL_KPA } from '../../asking/gears/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import type { GearMargin, SideMargin } from '../../engine/margin/index.ts';
import { gearName, voiceOf } from '../../telling/narrative/index.ts';
import type { Study } from '../study/index.ts';
import { language } from '../words/index.ts';
import { words } from './words.ts';
import './margins.css';

/**
 * What slips first in each gear as the pressure is drawn up and down. Only where the file tells
 * what its devices can carry and what the engine gives.
 */
export function Margins({ study }: { readonly study: Study }) {
  const say = words();
  const voice = voiceOf(language.value);
  const pressureKpa = useSignal(USUAL_KPA);
  const margins = useComputed(() => {
    const train = study.file.train.value;
    if (!train?.capacities || !train.engine?.['torque Nm']) return undefined;
    return marginsAsked(train);
  });
  const train = study.file.train.value;
  if (!margins.value || !train) return null;
  const load = loadAsked(train, { pressure: `${pressureKpa.value}` });
  return (
    <section class="margins" aria-label={say.title}>
      <h2>{say.title}</h2>
      <p class="aside">{say.caution}</p>
      <label class="margins-pressure">
        {say.pressure}
        <input
          type="range"
          min="50"
          max="2000"
          step="10"
          value={pressureKpa.value}
          aria-valuetext={say.kpa(pressureKpa.value)}
          onInput={({ currentTarget }) => (pressureKpa.value = Number(currentTarget.value))}
        />
        <output>{say.kpa(pressureKpa.value)}</output>
      </label>
      <div class="margins-wide" tabIndex={0} role="group" aria-label={say.title}>
        <table>
          <thead>
            <tr>
              <th scope="col">{say.gear}</th>
              <th scope="col">{say.side}</th>
              <th scope="col">{say.asked}</th>
              <th scope="col">{say.most}</th>
              <th scope="col">{say.first}</th>
              <th scope="col">{say.least}</th>
            </tr>
          </thead>
          <tbody>
            {margins.value.at(load).flatMap((gear) =>
              (['drive', 'coast', 'inReverse'] as const).map((side) => {
                return gear[side] && row(gear, side, gear[side]);
              }),
            )}
          </tbody>
        </table>
      </div>
    </section>
  );

  function row(
    gear: GearMargin,
    side: 'drive' | 'coast' | 'inReverse',
    { state, askedNm, mostNm, letsGo, leastKpa }: SideMargin,
  ) {
    const slips = mostNm !== null && toNumber(mostNm) < toNumber(askedNm);
    return (
      <tr key={`${gear.range} ${gear.gear} ${side}`} class={slips ? 'margins-slips' : ''}>
        {side === 'drive' && (
          <th scope="rowgroup" rowSpan={gear.inReverse ? 3 : 2}>
            {gearName(gear)}
          </th>
        )}
        <td>{say[side]}</td>
        {state === 'driving' ? (
          <>
            <td>{Math.ceil(toNumber(askedNm))}</td>
            <td>{mostNm ? Math.floor(toNumber(mostNm)) : say.unlimited}</td>
            <td>
              {voice.names(letsGo)} {slips && <b>{say.slips}</b>}
            </td>
            <td>{leastKpa ? Math.ceil(toNumber(leastKpa)) : say.never}</td>
          </>
        ) : (
          <td colSpan={4}>{voice.say('state', { state })}</td>
        )}
      </tr>
    );
  }
}
