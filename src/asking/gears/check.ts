import { check, type Warning } from '../../engine/check/index.ts';
import { type Reading, readTrain } from '../../engine/trainfile/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import { lookAtFigures, type FigureWarning } from '../../shop/figures/index.ts';

/**
 * Every error and warning of a train's text, in the order of its places, but for the one cause of
 * several, which comes first; with errors no train.
 */
export function askCheck(text: string): Pick<Reading, 'train'> & {
  readonly problems: readonly (Problem | Warning | FigureWarning)[];
} {
  const reading = readTrain(text);
  const problems = [...reading.problems, ...check(reading), ...lookAtFigures(reading)].toSorted(
    (a, b) =>
      Number(b.problem === 'one cause') - Number(a.problem === 'one cause') ||
      a.place.line - b.place.line ||
      a.place.column - b.place.column,
  );
  return { ...reading, problems };
}
