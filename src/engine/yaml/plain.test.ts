import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Dice, seedOfRun, tries } from '../../../test/dice.ts';
import { composedTree } from './composed.ts';
import { Findings } from './findings.ts';
import { Lines } from './place.ts';
import { plainTree } from './plain.ts';

const ROOT = new URL('../../../', import.meta.url);

// Each library checks the other: what the fast one reads, both read alike, with the same places.
describe('what is read at once', () => {
  it('is every train of ours and the experience', () => {
    expect(texts.length).toBeGreaterThan(10);
    for (const [name, text] of texts) {
      expect(plainTree(text), name).toBeDefined();
      expect(composed(text), name).toEqual({ tree: plainTree(text), problems: [] });
    }
  });

  it.each([
    'a: b',
    'a: b # why\n\n# to the next\nc: 1.50\n',
    'a:   # why\n  b c: "#1: [x]"\n  # of the next\n  d: it\'s, really:so\n',
    "'a': 'b # c'\n\"2\" : [ ]\n",
    'a:\n  b:\n    c: 007\n\n# left\n  d: 3.\ne: x#y\n',
    'a: [true, false, [d], { e: f, g: "h" }]   # i\n',
    'a: { b: c,   # d]\n     e: [1.40 mm,\n   2] }\nf: g\n',
    'a:   # why\n  { b: c }\nd:\n  [e,\n   f]\n',
    '- a\n- b: c\n  d: [e]\n-   { f: g }\n',
    'a:\n  - b\n\n  - c: d\n    e: f\ng: h',
    'a: >-\n  one\n  two # no remark\n\n  three\n\n\n  four\n\nb: |\n c: d\n e\nf: >\n    g\n',
    'about: >-\n  last\n\n\n',
    'a:\nb: { c: , d: }\ne:\n',
    'a: "\\u0041 \\"b\\""\nc: \'it\'\'s\'\n',
    'a: yes\r\nb: >-\r\n  c\r\n  d\r\n',
    'a: 0x1F\nb: -1\nc: 1e3\nd: ~\ne: True\nf: .5\ng: -.inf\nh: 1_000\ni: 0o17\nj: +2\nk: -0\n',
    'a: b\n  c\nd: [e\n f, g ]\n',
    'a:\n- b\n- c\n',
    '[a, { "b":1, c: 2 },]',
    'word',
    '? a\n: b\n',
    'a: |+\n  b\n\n\nc: |\n  d  \n\n',
    'a: |2\n    b\n   c\n',
  ])('%j is read alike', (text) => {
    expect(plainTree(text)).toBeDefined();
    expect(composed(text)).toEqual({ tree: plainTree(text), problems: [] });
  });

  it.each([
    '',
    '# nothing\n',
    'a: b\na: c\n',
    'a: b: c\n',
    'a: [b, , c]\n',
    'a: [b: c]\n',
    'a: &b c\n',
    'a: !!str b\n',
    'a: &b c\nd: *b\n',
    '<<: { a: b }\n',
    '? a\n',
    '---\na: b\n',
    'a: b\n---\nc: d\n',
    '%YAML 1.1\n---\na: b\n',
    'a: "\\u0007"\n',
    `a: ${'['.repeat(13)}${']'.repeat(13)}\n`,
    'a: 1e999\n',
    `a: ${'9'.repeat(400)}\n`,
    'a: [b\n',
    'a: "b\n',
    '\ta: b\n',
  ])('%j is not', (text) => {
    expect(plainTree(text)).toBeUndefined();
  });

  const seed = seedOfRun();
  it(`is read alike in files that are spoilt (seed ${seed})`, () => {
    const dice = new Dice(seed);
    let read = 0;
    const cases = tries(2000);
    for (let k = 0; k < cases; k++) {
      const text = spoilt(excerpt(dice.pick(texts)[1], dice), dice);
      const tree = plainTree(text);
      if (tree === undefined) continue;
      read += 1;
      expect(composed(text), JSON.stringify(text)).toEqual({ tree, problems: [] });
    }
    expect(read).toBeGreaterThan(cases / 5);
  });
});

const files = readdirSync(new URL('trains', ROOT)).filter((name) => name.endsWith('.train.yaml'));
const texts = [...files.map((name) => `trains/${name}`), 'experience.yaml'].map((file) => {
  return [file, readFileSync(new URL(file, ROOT), 'utf8')] as const;
});

function composed(text: string) {
  const findings = new Findings(new Lines(text));
  return { tree: composedTree(text, findings), problems: findings.list() };
}

// Some lines that follow one another, from one at the left edge.
function excerpt(text: string, dice: Dice): string {
  const sections = text.split(/^(?=[^\s#])/m);
  const first = dice.whole(0, sections.length - 1);
  return sections.slice(first, first + dice.whole(1, 2)).join('');
}

// Characters that mean something put in, left out or doubled, and lines moved.
function spoilt(text: string, dice: Dice): string {
  let now = text;
  for (let k = dice.whole(0, 3); k > 0; k--) {
    const at = dice.whole(0, now.length);
    const to = Math.min(now.length, at + dice.whole(0, 2));
    if (dice.chance(0.8)) now = now.slice(0, at) + dice.pick(MARKS) + now.slice(to);
    else {
      const lines = now.split('\n');
      const [line = ''] = lines.splice(dice.whole(0, lines.length - 1), 1);
      lines.splice(dice.whole(0, lines.length), 0, dice.pick(['', ' ', '  ']) + line);
      now = lines.join('\n');
    }
  }
  return now;
}

const MARKS = [...' \n:#,-[]{}"\'>|&*!?%@~.0e', ': ', ' #', '\n\n', '\n  ', '\n# ', '- ', '  ', ''];
