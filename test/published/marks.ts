/**
 * Where a published figure comes from. `printed`: it stands so in the source, which was read for this.
 * `computed`: the source gives data or a rule, and the figure follows by hand. `remembered`: source and
 * figure are told from memory, which may be mistaken.
 */
const MARKS = ['printed', 'computed', 'remembered'] as const;
export type Mark = (typeof MARKS)[number];

/** The mark of a figure; throws where it has none. */
export function markOf(figure: object): Mark {
  const from = 'from' in figure ? figure.from : undefined;
  const mark = MARKS.find((its) => its === from);
  if (!mark) throw new Error(`a figure that is not marked: ${JSON.stringify(figure)}`);
  return mark;
}
