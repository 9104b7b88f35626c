import fc from 'fast-check';
import { expect, it } from 'vitest';
import { entryText, linesBeyond, newJobText, partsOf, readJob, textOfParts } from './index.ts';

// An invented job of invented people.
const HEADER = newJobText({
  unit: 'bench 4',
  complaint: 'slips',
  by: 'TW',
  at: '2026-11-25T08:00:00.000Z',
});
const note = (n: number, who: string) => {
  const at = `2026-11-25T09:00:${`${n}`.padStart(2, '0')}.000Z`;
  return entryText({ at, who, told: { kind: 'note', note: `note ${n}` } }).text;
};

it('a job is put together from its parts as the command had written it', () => {
  const text = HEADER + note(1, 'TW') + note(2, 'HT');
  expect(textOfParts(partsOf(text))).toBe(text);
  expect(textOfParts(partsOf(HEADER))).toBe(HEADER);
  expect(textOfParts(partsOf(text.replaceAll('\n', '\r\n')))).toBe(text);
});

it('what cannot be read stays a line of it', () => {
  const text = `${HEADER}${note(1, 'TW')}- { at: 2026-11-25T1\n# a remark\n`;
  expect(partsOf(text).lines).toHaveLength(3);
  expect(readJob(textOfParts(partsOf(text))).problems).toHaveLength(2);
});

// Union of lines, as `git merge-file --union` has it: each line of either stands once.
it('two copies that were parted lose nothing of either, whichever is united with which', () => {
  const copy = fc.record({
    ours: fc.array(fc.integer({ min: 0, max: 59 }), { maxLength: 12 }),
    theirs: fc.array(fc.integer({ min: 0, max: 59 }), { maxLength: 12 }),
  });
  fc.assert(
    fc.property(copy, ({ ours, theirs }) => {
      const [a, b] = [ours, theirs].map((all) =>
        partsOf(HEADER + all.map((n) => note(n, 'TW')).join('')),
      );
      if (!a || !b) throw new Error('two copies');
      const both = (mine: typeof a, its: typeof a) => {
        const lines = [...mine.lines, ...linesBeyond(mine.lines, its)];
        return readJob(textOfParts({ ...mine, lines })).job?.entries.map(({ id }) => id);
      };
      const wanted = new Set([...ours, ...theirs]).size;
      expect(both(a, b)).toHaveLength(wanted);
      expect(new Set(both(a, b))).toEqual(new Set(both(b, a)));
      expect(linesBeyond(b.lines, b)).toEqual([]);
    }),
    { seed: 7, numRuns: 200 },
  );
});
