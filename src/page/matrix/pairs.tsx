import { useSignal, useSignalEffect } from '@preact/signals';
import type { FaultsReport } from '../../asking/faults/index.ts';
import { type FaultMatrix, faultText } from '../../engine/faults/index.ts';
import { faultName } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { beside } from '../thread/index.ts';
import { voiceNow } from '../words/index.ts';
import { Rows } from './rows.tsx';
import type { Touched } from './touched.ts';
import { words } from './words.ts';

interface Props {
  readonly train: string;
  /** Every fault, of which some are chosen. */
  readonly matrix: FaultMatrix;
  readonly touched: Touched | undefined;
  readonly touch: (its: Touched) => void;
}

/** Two faults at once: of those that are chosen every pair, against every gear. */
export function Pairs({ train, matrix, touched, touch }: Props) {
  const say = words();
  const among = useSignal<readonly string[]>([]);
  const report = useSignal<FaultsReport | undefined>(undefined);
  const faults = matrix.rows.flatMap((row) => row.faults.slice(0, 1));
  const names = new Map(faults.map((fault) => [faultText(fault), faultName(fault, voiceNow())]));
  useSignalEffect(() => {
    const { value: some } = among;
    let stale = false;
    if (some.length < 2) report.value = undefined;
    else {
      beside('faults', { train, pairs: true, only: some.join(', ') }).then(
        (its) => {
          if (!stale) report.value = its;
        },
        () => {
          if (!stale) report.value = undefined;
        },
      );
    }
    return () => (stale = true);
  });
  return (
    <details class="matrix-pairs">
      <summary>
        <h3>{say.pairs}</h3>
      </summary>
      <label>
        {say.pairsHow}{' '}
        <select
          class="matrix-choice"
          value=""
          onChange={({ currentTarget }) => {
            const { value: its } = currentTarget;
            if (its !== '') among.value = [...new Set([...among.value, its])].slice(-MOST);
            currentTarget.value = '';
          }}
        >
          <option value="">{say.pairsChoose}</option>
          {[...names].map(([text, name]) => (
            <option key={text} value={text}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <div class="row">
        {among.value.map((text) => (
          <LargeButton
            key={text}
            onPress={() => (among.value = among.value.filter((other) => other !== text))}
          >
            {names.get(text) ?? text} <span aria-hidden="true">✕</span>
            <span class="unseen">{say.takeOut}</span>
          </LargeButton>
        ))}
      </div>
      {report.value && (
        <div class="matrix-frame" tabIndex={0} role="group" aria-label={say.pairs}>
          <Rows matrix={report.value.matrix} touched={touched} touch={touch} />
        </div>
      )}
    </details>
  );
}

// Their pairs are read by somebody.
const MOST = 6;
