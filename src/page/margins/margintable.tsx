import { Fragment } from 'preact';
import { useSignal } from '@preact/signals';
import type { MarginReport } from '../../asking/gears/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import type { GearMargin, SideMargin } from '../../engine/margin/index.ts';
import { gearName } from '../../telling/narrative/index.ts';
import { deviceCells, marginCells } from '../../telling/report/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';

const SIDES = ['drive', 'coast', 'inReverse'] as const;

/** A row a gear for either way of the load; a gear that is pressed tells its devices. */
export function MarginTable({ report }: { readonly report: MarginReport }) {
  const say = words();
  const voice = voiceNow();
  const open = useSignal('');
  const heads = ['passes', 'spare', 'first'].map((head) => voice.say('head', { head }));
  const cell = (its: ReturnType<typeof marginCells>[number] | undefined) => {
    return typeof its === 'object' ? voice.decimal(its) : its;
  };
  return (
    <div class="margins-wide" tabIndex={0} role="group" aria-label={say.title}>
      <table>
        <thead>
          <tr>
            <th scope="col">{voice.say('head', { head: 'gear' })}</th>
            <th scope="col">{say.side}</th>
            <th scope="col">{say.asked}</th>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
            <th scope="col">{voice.say('margin.least', { unit: report.pressureUnit })}</th>
          </tr>
        </thead>
        <tbody>
          {report.gears.map((gear) => (
            <Fragment key={gearName(gear, voice)}>
              {SIDES.map((side) => gear[side] && row(gear, side, gear[side]))}
              {open.value === gearName(gear, voice) && (
                <tr>
                  <td colSpan={7}>
                    <Devices gear={gear} />
                  </td>
                </tr>
              )}
            </Fragment>
          ))}
        </tbody>
      </table>
    </div>
  );

  function row(gear: GearMargin, side: (typeof SIDES)[number], its: SideMargin) {
    const { mostNm, askedNm, state } = its;
    const slips = mostNm !== null && toNumber(mostNm) < toNumber(askedNm);
    const cells = marginCells(its, report.pressureUnit, voice);
    const name = gearName(gear, voice);
    return (
      <tr key={side} class={slips ? 'margins-slips' : ''}>
        {side === 'drive' && (
          <th scope="rowgroup" rowSpan={gear.inReverse ? 3 : 2}>
            <button
              type="button"
              aria-expanded={open.value === name}
              onClick={() => (open.value = open.value === name ? '' : name)}
            >
              {name}
            </button>
          </th>
        )}
        <td>{say[side]}</td>
        {state === 'driving' ? (
          <>
            <td>{Math.ceil(toNumber(askedNm))}</td>
            <td>{cell(cells[0])}</td>
            <td>{cell(cells[1])}</td>
            <td>
              {cell(cells[2])} {slips && <b>{say.slips}</b>}
            </td>
            <td>{cell(cells[3])}</td>
          </>
        ) : (
          <td colSpan={5}>{cell(cells[0])}</td>
        )}
      </tr>
    );
  }
}

// What each device must and can carry in a gear.
function Devices({ gear }: { readonly gear: GearMargin }) {
  const say = words();
  const voice = voiceNow();
  const heads = ['device', 'must', 'can', 'spare'].map((head) => voice.say('head', { head }));
  return (
    <>
      {SIDES.map((side) => {
        const devices = gear[side]?.devices ?? [];
        if (devices.length === 0) return null;
        return (
          <table key={side} class="margins-devices">
            <caption>
              {gearName(gear, voice)}, {say[side]}
            </caption>
            <thead>
              <tr>
                {heads.map((head) => (
                  <th key={head} scope="col">
                    {head}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {devices.map((margin) => (
                <tr key={margin.device}>
                  {deviceCells(margin, voice).map((its, i) => (
                    <td key={heads[i]}>{typeof its === 'object' ? voice.decimal(its) : its}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        );
      })}
    </>
  );
}
