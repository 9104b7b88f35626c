import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CAUSES, OUTCOMES, readExperience } from './index.ts';

const OURS = fs.readFileSync(new URL('../../../experience.yaml', import.meta.url), 'utf8');

describe('the experience that comes with the package', () => {
  it('is read without a problem, and says that it is not measured', () => {
    const { experience, problems } = readExperience(OURS);
    expect(problems).toEqual([]);
    expect(Object.keys(experience?.causes ?? {}).toSorted()).toEqual([...CAUSES].toSorted());
    expect(Object.keys(experience?.tests ?? {}).toSorted()).toEqual(
      Object.keys(OUTCOMES).toSorted(),
    );
    expect(OURS).toMatch(/common practice, not measured/i);
  });

  it('reads a shop’s file that is older than a test as if it had ours', () => {
    const old = OURS.replace(/^  pump: .*?(?=^  inspection:)/msu, '');
    expect(old).not.toContain('one-way check');
    const { experience, problems } = readExperience(old);
    expect(problems).toEqual([]);
    expect(experience?.tests).toEqual(readExperience(OURS).experience?.tests);
  });

  it('lets nobody stall a train before its pressure is known to be good', () => {
    expect(readExperience(OURS).experience?.tests.stall.first).toMatchObject({ pressure: 'good' });
  });
});

// An edit of ours, and what is said of it, at which line of the edit.
const MISTAKES: readonly (readonly [from: string, to: string, said: string])[] = [
  ['seized: 3', 'seized: -3', 'expected proportion -3'],
  ['  planet seized: 1\n', '', 'missing key planet seized'],
  ['planet seized: 1', 'planet siezed: 1', 'unknown key planet seized'],
  ['sure: 1\n', 'sure: 0\n', 'expected under fifty 0'],
  ['sure: 1\n', 'sure: ten\n', 'expected under fifty ten'],
  ['hundred: 95', 'hundred: 45', 'expected over fifty 45'],
  ['minutes: 10\n', 'minutes: 0\n', 'expected minutes 0'],
  ['risk: none', 'risk: some', 'expected risk some'],
  ['at: pan off', 'at: under the car', 'expected stage under the car'],
  ['{ pressure: good }', '{ pressure: fine }', 'expected pressure fine'],
  ['{ thud: 96, hiss: 3, nothing: 1 }', '{ thud: 0 }', 'expected proportions '],
  ['{ thud: 96, hiss: 3, nothing: 1 }', '{ thump: 9 }', 'unknown key thump'],
  ['  low: 1.25', '  low: 1.25\n  low: 2', 'duplicate key low'],
];

describe('a experience with a mistake', () => {
  it.each(MISTAKES)('%j > %j', (from, to, said) => {
    expect(OURS).toContain(from);
    const { experience, problems } = readExperience(OURS.replace(from, to));
    expect(experience).toBeUndefined();
    const [problem] = problems;
    const { key, keys, near, what, found } = { ...(problem as object) } as Record<string, string>;
    const shown = [problem?.problem, keys?.[0], near ?? key, what, found];
    expect(shown.filter((word) => word !== undefined && word !== '').join(' ')).toBe(said.trim());
    expect(problem?.place.line).toBeGreaterThan(10);
  });

  it('may be empty, or no text at all', () => {
    for (const text of ['', '[]', '7', '\u0000', '{', '# nothing\n']) {
      const { experience, problems } = readExperience(text);
      expect(experience).toBeUndefined();
      expect(problems.length).toBeGreaterThan(0);
    }
  });

  it('suspects nothing where every weight is 0', () => {
    const none = OURS.replace(/(causes:.*\n(?:.*\n)*?)\ntests:/, (section) =>
      section.replaceAll(/: [\d.]+/g, ': 0'),
    );
    expect(readExperience(none).problems[0]).toMatchObject({ what: 'proportions' });
  });
});
