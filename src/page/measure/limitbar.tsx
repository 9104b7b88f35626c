import type { Scale } from './bar.ts';

interface Props {
  readonly scale: Scale;
  /** What stands at each end of the limits. */
  readonly least: string;
  readonly most: string;
  /** What is being typed, on the same scale. */
  readonly typed?: number | undefined;
  readonly label: string;
}

/** Readings on a line, the limits hatched between their ends; what lies far off stands at the edge. */
export function LimitBar({ scale, least, most, typed, label }: Props) {
  const { readings } = scale;
  const [low, high] = windowOf(scale);
  const at = (size: number) => Math.min(99, Math.max(1, ((size - low) / (high - low)) * 100));
  const from = scale.least === undefined ? 0 : at(scale.least);
  const to = scale.most === undefined ? 100 : at(scale.most);
  const mean = readings.reduce((sum, its) => sum + its / readings.length, 0);
  return (
    <div class="measure-bar" role="img" aria-label={label}>
      <div class="measure-line">
        <span
          class="measure-inside"
          style={{ insetInlineStart: `${from}%`, inlineSize: `${to - from}%` }}
        />
        {readings.map((size, i) => (
          <span key={i} class="measure-tick" style={{ insetInlineStart: `${at(size)}%` }} />
        ))}
        {readings.length > 1 && (
          <span class="measure-mean" style={{ insetInlineStart: `${at(mean)}%` }} />
        )}
        {typed !== undefined && (
          <span class="measure-typed" style={{ insetInlineStart: `${at(typed)}%` }} />
        )}
      </div>
      <div class="measure-ends" aria-hidden="true">
        {scale.least !== undefined && <span style={{ insetInlineStart: `${from}%` }}>{least}</span>}
        {scale.most !== undefined && <span style={{ insetInlineStart: `${to}%` }}>{most}</span>}
      </div>
    </div>
  );
}

// The limits take the middle half; where one side is open, from nothing or to twice the limit.
function windowOf({ least, most }: Scale): [low: number, high: number] {
  const start = least ?? 0;
  const end = most ?? 2 * start;
  const width = end - start || 1;
  const low = least === undefined ? 0 : start - width / 2;
  return [low, most === undefined ? end : end + width / 2];
}
