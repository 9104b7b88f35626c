import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, it } from 'vitest';
import { exportedBy } from './front.ts';
import { ROOT } from './sources.ts';

const front = exportedBy(path.join(ROOT, 'src/index.ts'));
const short = (home: string) => path.relative(ROOT, home);

it('everything that the package exports has a docstring', () => {
  expect(front.length).toBeGreaterThan(150);
  const silent = front.filter(({ hasDocstring }) => !hasDocstring);
  expect(silent.map(({ name, home }) => `${name} (${short(home)})`)).toEqual([]);
});

it('nothing that it exports needs a type that it does not', () => {
  const known = new Set(front.map(({ home }) => home));
  expect(front.flatMap(({ mentions }) => mentions).length).toBeGreaterThan(200);
  const missing = front.flatMap(({ name, mentions }) => {
    return mentions.filter((home) => !known.has(home)).map((home) => `${short(home)}, for ${name}`);
  });
  expect(missing.toSorted()).toEqual([]);
});

it('a silent name and a hidden type are found', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'holdturn-front-'));
  const write = (name: string, text: string) => writeFileSync(path.join(folder, name), text);
  write('a.ts', 'interface Hidden {}\n/** Told. */\nexport interface Open { its: Hidden }\n');
  write('b.ts', "import type { Open } from './a.ts';\nexport function ask(of: Open): void {}\n");
  write(
    'index.ts',
    "export { ask } from './b.ts';\nexport type { Open as Asked } from './a.ts';\n",
  );
  const found = exportedBy(path.join(folder, 'index.ts')).map((its) => [
    its.name,
    its.hasDocstring,
    its.mentions.map((home) => path.basename(home)),
  ]);
  rmSync(folder, { recursive: true });
  expect(found).toEqual([
    ['ask', false, ['a.ts:Open']],
    ['Asked', true, ['a.ts:Hidden']],
  ]);
});
