import { useSignal } from '@preact/signals';
import type { FaultCell, FaultMatrix, FaultRow } from '../../engine/faults/index.ts';
import { faultName, gearName } from '../../telling/narrative/index.ts';
import { faultMarks, soundMarks } from '../../telling/report/index.ts';
import { voiceNow } from '../words/index.ts';
import { type Fold, type Folded, foldsOf } from './folds.ts';
import type { Touched } from './touched.ts';
import { words } from './words.ts';

interface Props {
  readonly matrix: FaultMatrix;
  readonly touched: Touched | undefined;
  readonly touch: (its: Touched) => void;
}

/** The picture: gears across, faults down, folded; the heads stay while it is scrolled. */
export function Rows({ matrix, touched, touch }: Props) {
  const say = words();
  const voice = voiceNow();
  const { folds, silent } = foldsOf(matrix);
  return (
    <table class="matrix-table">
      <thead>
        <tr>
          <th scope="col">{say.fault}</th>
          {matrix.gears.map((gear) => (
            <th scope="col" key={gearName(gear, voice)}>
              {gearName(gear, voice)}
            </th>
          ))}
        </tr>
        <tr class="matrix-healthy">
          <th scope="row">{say.healthy}</th>
          {matrix.gears.map((gear) => (
            <td key={gearName(gear, voice)}>
              {soundMarks(gear, voice).map((mark, k) => (
                <span key={k}>{mark}</span>
              ))}
            </td>
          ))}
        </tr>
      </thead>
      {folds.map((fold) => (
        <FoldRows key={fold.device} {...{ fold, matrix, touched, touch }} />
      ))}
      {silent.length > 0 && (
        <tbody>
          <tr>
            <th scope="row" colSpan={matrix.gears.length + 1}>
              <details>
                <summary>{say.silent(silent.length)}</summary>
                {silent.map(namesOf).join(', ')}
              </details>
            </th>
          </tr>
        </tbody>
      )}
    </table>
  );
}

function FoldRows({ fold, ...rest }: Props & { readonly fold: Fold }) {
  const say = words();
  const isDevice = fold.device !== '';
  const open = useSignal(isDevice);
  const { gears } = rest.matrix;
  return (
    <tbody>
      <tr class="matrix-fold">
        <th scope="colgroup" colSpan={gears.length + 1}>
          <button
            type="button"
            aria-expanded={open.value}
            onClick={() => (open.value = !open.value)}
          >
            {open.value ? '▾' : '▸'} {isDevice ? voiceNow().called(fold.device) : say.parts} (
            {fold.classes.length})
          </button>
        </th>
      </tr>
      {open.value &&
        fold.classes.map((folded) => (
          <FaultLine key={namesOf(folded.rows[0])} folded={folded} {...rest} />
        ))}
    </tbody>
  );
}

function FaultLine({ folded, matrix, touched, touch }: Props & { readonly folded: Folded }) {
  const say = words();
  const voice = voiceNow();
  const [row, ...others] = folded.rows;
  const name = namesOf(row);
  return (
    <tr>
      <th scope="row">
        {name}
        {others.length > 0 && (
          <details>
            <summary>{say.more(others.length)}</summary>
            {others.map(namesOf).join(', ')}
          </details>
        )}
      </th>
      {matrix.gears.map((gear, k) => {
        const cell = row.cells[k] as FaultCell;
        const marks = faultMarks(cell, voice);
        const isTouched = touched?.row === row && touched.gear === gear;
        return (
          <td key={gearName(gear, voice)} class={lookOf(cell)}>
            <button
              type="button"
              aria-pressed={isTouched}
              onClick={() => touch({ row, gear, cell })}
            >
              <span class="unseen">
                {name}, {gearName(gear, voice)}: {say.drive}
              </span>
              <Mark mark={marks[0]} />
              <span class="unseen">{say.coast}</span>
              <Mark mark={marks[1]} />
            </button>
          </td>
        );
      })}
    </tr>
  );
}

function Mark({ mark }: { readonly mark: string }) {
  if (mark !== '.') return <span>{mark}</span>;
  return (
    <span class="matrix-same">
      <span aria-hidden="true">·</span>
      <span class="unseen">{words().same}</span>
    </span>
  );
}

// A heavy edge for what locks, a fill for what drives nothing; the words say it too.
function lookOf({ drive, coast, inReverse = coast }: FaultCell): string {
  const worst = [drive, coast, inReverse].find(({ is }) => is !== 'same')?.is ?? 'same';
  return `matrix-cell matrix-${worst.replaceAll(' ', '-')}`;
}

function namesOf({ faults }: FaultRow): string {
  return faults.map((fault) => faultName(fault, voiceNow())).join(' + ');
}
