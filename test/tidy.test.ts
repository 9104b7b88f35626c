import { describe, expect, it } from 'vitest';
import config from '../vitest.config.ts';
import { readSources } from './sources.ts';
import { RULES, untidy } from './tidy.ts';

const sources = readSources();

describe('tidy', () => {
  it.each(RULES)('$name', (rule) => {
    expect(untidy(sources, [rule])).toEqual([]);
  });

  it('every test is found by its pattern', () => {
    expect(unfound(sources.map((source) => source.path))).toEqual([]);
  });
});

describe('the rules find what they are for', () => {
  it.each(RULES)('$name', (rule) => {
    for (const source of rule.wrong) expect(untidy([source], [rule])).toHaveLength(1);
    for (const source of rule.right) expect(untidy([source], [rule])).toEqual([]);
    expect(rule.wrong.length).toBeGreaterThan(0);
  });

  it('a test that never runs', () => {
    const lost = ['test/a.spec.ts', 'scripts/a.test.ts', 'src/a.test.mts', 'src/__tests__/a.ts'];
    expect(unfound([...lost, 'test/deep/a.test.ts', 'src/a.ts'])).toEqual(lost);
  });

  it('says where, with the line', () => {
    const source = { path: 'src/a.ts', text: 'const a = 1;\n// FIXME\n' };
    expect(untidy([source], RULES)).toEqual(['src/a.ts:2: do it now, or file it: FIXME']);
  });
});

// Files that look like tests and that vitest's patterns miss.
function unfound(paths: readonly string[]): string[] {
  const found = (config.test?.include ?? []).map(patternOf);
  const looksLikeOne = /\.(?:test|spec)\.\w+$|__tests__\//;
  return paths.filter((path) => looksLikeOne.test(path) && !found.some((glob) => glob.test(path)));
}

// The two signs that our patterns use: `**/` any folders, `*` any part of a name.
function patternOf(glob: string): RegExp {
  const literal = glob.replaceAll('.', '\\.');
  const any = literal.replaceAll(/\*\*\/|\*/g, (sign) => (sign === '*' ? '[^/]*' : '(?:.*/)?'));
  return new RegExp(`^${any}$`);
}
