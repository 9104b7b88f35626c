import { SECTIONS, VERSION } from '../sections/index.ts';
import type { Train } from '../train/index.ts';
import { flowText, scalarText, sectionLines, type Value } from '../yaml/index.ts';

/**
 * A whole train in the house style: reading it gives the train again. What a fault has set
 * (`stuck`, `stripped`, `missing`, `healthy`) is no part of a train file and is not written.
 */
export function trainText(train: Train): string {
  const lines = SECTIONS.flatMap(({ key, write }) => {
    const value = write(train);
    if (value === undefined) return [];
    if (!(value instanceof Map)) return [`${scalarText(key)}: ${flowText(value, false)}`];
    const entries = value as ReadonlyMap<string, Value>;
    return entries.size > 0 ? ['', ...sectionLines(key, entries, false)] : [];
  });
  return `${[`holdturn: ${VERSION}`, ...lines].join('\n')}\n`;
}
