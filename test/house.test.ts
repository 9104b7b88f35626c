import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ROOMS } from '../src/house.ts';
import { importsOf, misplaced, type Rooms } from './plan.ts';
import { readSources } from './sources.ts';

describe('the house', () => {
  it('has every file in a listed room, which imports only rooms above it', () => {
    expect(misplaced(readSources(), ROOMS)).toEqual([]);
  });

  it('has its list of rooms at the front, which imports nothing', () => {
    const house = readSources().find((source) => source.path === 'src/house.ts');
    expect(importsOf(house?.text ?? 'lost')).toEqual([]);
  });
});

it('has every room of it named where it is told how Holdturn is built', () => {
  const told = readFileSync('ARCHITECTURE.md', 'utf8');
  expect(ROOMS.map(([room]) => room).filter((room) => !told.includes(`**${room}**`))).toEqual([]);
});

describe('the plan finds', () => {
  const rooms: Rooms = [
    ['engine/linear', ''],
    ['engine/proof', ''],
    ['engine/flow', ''],
    ['doors/cli', ''],
    ['doors/web', ''],
  ];
  // A house with nothing wrong, to which each case adds one file.
  const sound = rooms.map(([folder]) => ({ path: `src/${folder}/index.ts`, text: '' }));
  const found = (path: string, text: string) => misplaced([...sound, { path, text }], rooms);

  it.each([
    ['src/engine/linear/a.ts', "import { f } from '../flow/index.ts';", 'is listed above'],
    ['src/engine/flow/a.ts', "import { f } from '../linear/base.ts';", 'by its index.ts'],
    ['src/engine/flow/a.ts', "export * from '../linear/base.ts';", 'by its index.ts'],
    ['src/engine/flow/deep/a.ts', "import '../../linear/base.ts';", 'by its index.ts'],
    ['src/engine/flow/a.ts', "const f = await import('../linear/base.ts');", 'by its index.ts'],
    ['src/engine/flow/a.ts', "import {\n  f,\n  g,\n} from '../../doors/cli/index.ts';", 'above'],
    ['src/engine/proof/a.ts', "import { f } from '../linear/index.ts';", 'types only'],
    ['src/engine/proof/a.ts', "import { type F, f } from '../linear/index.ts';", 'types only'],
    ['src/engine/flow/a.ts', "import { readSources } from '../../../test/sources.ts';", 'outside'],
    ['src/engine/flow/a.ts', "import { ROOMS } from '../../house.ts';", 'not in a room'],
    ['src/doors/web/a.ts', "import { f } from '../cli/index.ts';", 'one another'],
    ['src/index.ts', "export { f } from './engine/linear/base.ts';", 'by its index.ts'],
    ['src/engine/attic/a.ts', '', 'no room'],
    ['src/engine/a.ts', '', 'no room'],
  ])('what is wrong with %s: %s', (path, text, said) => {
    const [sentence, ...more] = found(path, text);
    expect(sentence).toContain(path);
    expect(sentence).toContain(said);
    expect(more).toEqual([]);
  });

  it.each([
    [
      'src/engine/flow/a.ts',
      "import { f } from '../linear/index.ts';\nimport { g } from './b.ts';",
    ],
    ['src/engine/flow/deep/a.ts', "import { f } from '../b.ts';"],
    ['src/engine/proof/a.ts', "import type { F } from '../linear/index.ts';"],
    ['src/engine/proof/a.ts', "import {\n  type F,\n  type G,\n} from '../linear/index.ts';"],
    ['src/engine/linear/a.ts', "// import { f } from '../flow/index.ts'; is not for us."],
    ['src/engine/linear/a.test.ts', "import { f } from '../flow/f.ts';"],
    ['src/doors/cli/a.ts', "import pkg from '../../../package.json' with { type: 'json' };"],
    ['src/index.ts', "export { f } from './engine/flow/index.ts';"],
  ])('nothing wrong with %s: %s', (path, text) => {
    expect(found(path, text)).toEqual([]);
  });

  it('a room that is listed and not there', () => {
    expect(misplaced(sound.slice(1), rooms)).toEqual([
      'src/house.ts lists engine/linear, but there is nothing in src/engine/linear',
    ]);
  });
});
