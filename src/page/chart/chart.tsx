import { faultsText } from '../figure/index.ts';
import { Fragment } from 'preact';
import { useComputed, useSignal } from '@preact/signals';
import { flowsOf, type NamedFlow } from '../../asking/gears/index.ts';
import type { Working } from '../../engine/flow/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { chartCsv } from '../../telling/data/index.ts';
import { doingOf, gearName, MARKS } from '../../telling/narrative/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import { CellReason } from './cell.tsx';
import { download } from '../desk/index.ts';
import { Every } from './every.tsx';
import { words } from './words.ts';
import './chart.css';

/**
 * The application chart, derived: a row a gear of the file, a column a device, a mark for what
 * the device does there, and each cell opens its reason. Below it every other combination.
 */
export function Chart({ study }: { readonly study: Study }) {
  const say = words();
  const voice = voiceNow();
  const side = useSignal<'drive' | 'coast'>('drive');
  const open = useSignal<{ readonly gear: string; readonly device: string } | undefined>(undefined);
  const ofWrong = useSignal(false);
  const built = useComputed(() => {
    const wrong = ofWrong.value ? study.wrong.train.value : undefined;
    return wrong ?? study.file.train.value;
  });
  const rows = useComputed(() => (built.value ? flowsOf(built.value) : []));
  const train = built.value;
  if (!train) return null;
  const working = (row: NamedFlow): Working => row.flow[side.value];
  const ratio = (row: NamedFlow) => {
    const { state, ratio: number } = working(row);
    if (!number) return voice.say('state', { state });
    const own = side.value === 'drive' ? row.flow.beforeFinal : undefined;
    const whole = voice.number(number);
    return own ? voice.say('sheet.chart.ratios', { whole, own: voice.number(own) }) : whole;
  };
  const here = new Set(
    study.gears.value.map(({ range, gear }) => keyOf({ range: range.name, gear: gear.name })),
  );
  return (
    <section class="chart" aria-label={say.title}>
      <header class="chart-head">
        <h2>{say.title}</h2>
        {(['drive', 'coast'] as const).map((which) => (
          <button
            key={which}
            type="button"
            aria-pressed={side.value === which}
            onClick={() => (side.value = which)}
          >
            {say[which]}
          </button>
        ))}
        {study.wrong.train.value && (
          <button
            type="button"
            aria-pressed={ofWrong.value}
            onClick={() => (ofWrong.value = !ofWrong.value)}
          >
            {say.wrong(faultsText(study))}
          </button>
        )}
        <button type="button" onClick={() => download(...csvOf(train, rows.value))}>
          {say.csv}
        </button>
      </header>
      <div class="chart-wide" tabIndex={0} role="group" aria-label={say.title}>
        <table>
          <thead>
            <tr>
              <th scope="col">{say.gear}</th>
              {train.devices.map(({ name }) => (
                <th key={name} scope="col" class="chart-device">
                  {voice.called(name)}
                </th>
              ))}
              <th scope="col">{say.ratio}</th>
              <th scope="col">{say.braking}</th>
            </tr>
          </thead>
          <tbody>
            {rows.value.map((row) => (
              <Fragment key={keyOf(row)}>
                <tr class={here.has(keyOf(row)) ? 'chart-here' : ''}>
                  <th scope="row">
                    <button
                      type="button"
                      aria-pressed={here.has(keyOf(row))}
                      onClick={() => study.run(row.flow.on, side.value)}
                    >
                      {gearName(row, voice)}
                    </button>
                  </th>
                  {train.devices.map(({ name }) => {
                    const work = working(row).devices.get(name);
                    const doing = work ? doingOf(work) : 'off';
                    const shown = open.value?.gear === keyOf(row) && open.value.device === name;
                    return (
                      <td key={name} class={`chart-cell chart-${doing}`}>
                        <button
                          type="button"
                          aria-expanded={shown}
                          aria-label={`${voice.called(name)}: ${say.does[doing]}`}
                          onClick={() => {
                            open.value = shown ? undefined : { gear: keyOf(row), device: name };
                            if (!shown) study.pointed.value = { kind: 'device', name };
                          }}
                        >
                          {MARKS[doing] || '·'}
                        </button>
                      </td>
                    );
                  })}
                  <td class="chart-number">{ratio(row)}</td>
                  <td>{row.flow.coast.engineBraking ? say.brakes : say.runsFree}</td>
                </tr>
                {open.value?.gear === keyOf(row) && (
                  <tr>
                    <td colSpan={train.devices.length + 3}>
                      <CellReason working={working(row)} device={open.value.device} />
                    </td>
                  </tr>
                )}
              </Fragment>
            ))}
          </tbody>
        </table>
      </div>
      <p class="aside">
        {voice.say('marks.chart')} {say.opens}
      </p>
      <Every study={study} train={train} />
    </section>
  );
}

// As the command's chart --csv; the name on disk is the train's.
function csvOf(train: Train, rows: readonly NamedFlow[]): [string, Blob] {
  const text = chartCsv(train, rows, { voice: voiceNow() });
  return [`${train.name ?? 'chart'}.csv`, new Blob([text], { type: 'text/csv' })];
}

function keyOf({ range, gear }: Pick<NamedFlow, 'range' | 'gear'>): string {
  return `${range} ${gear}`;
}
