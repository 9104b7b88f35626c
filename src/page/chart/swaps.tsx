import type { Chart } from '../../engine/chart/index.ts';
import { gearName, throughText } from '../../telling/narrative/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';

const HEADS = ['step', 'release', 'apply', 'both', 'neither'] as const;

/** Shifts by one device, and what an overlap or a gap between two gives. */
export function Swaps({ chart }: { readonly chart: Chart }) {
  const say = words();
  const voice = voiceNow();
  if (chart.shifts.length === 0) return null;
  const name = (place: number) => {
    const [first] = chart.gears[place]?.named ?? [];
    return first ? gearName(first, voice) : '';
  };
  const through = (place: number | undefined) => {
    const gear = place === undefined ? undefined : chart.gears[place];
    return gear ? throughText(gear, voice) : '';
  };
  return (
    <>
      <h3>{voice.say('chart.steps')}</h3>
      <div class="chart-wide" tabIndex={0} role="group" aria-label={say.swaps}>
        <table>
          <thead>
            <tr>
              {HEADS.map((head) => (
                <th key={head} scope="col">
                  {voice.say('head', { head })}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {chart.shifts.map(({ from, to, release = '', apply = '', both, neither }) => (
              <tr key={`${from} ${to}`}>
                <th scope="row">
                  {name(from)} &gt; {name(to)}
                </th>
                <td>{voice.called(release ?? '')}</td>
                <td>{voice.called(apply ?? '')}</td>
                <td>{through(both)}</td>
                <td>{through(neither)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}
