import { expect, it } from 'vitest';
import { ask } from '../../doors/cli/asked.ts';
import { EXAMPLES, GROUPS } from './groups.ts';
import { VERBS } from './verbs.ts';

const grouped: readonly string[] = Object.values(GROUPS).flat();

it('every verb stands in one group of help', () => {
  expect(grouped.toSorted()).toEqual([...Object.keys(VERBS), 'screen'].toSorted());
});

it.each(['en', 'es'])('help tells an example of each group, and of each verb: %s', async (lang) => {
  const { out } = await ask(`help --lang ${lang}`);
  for (const [first] of Object.values(GROUPS)) {
    expect(out).toContain(`  $ holdturn ${EXAMPLES[first]}`);
  }
  const asked = Object.entries(EXAMPLES).map(async ([verb, example]) => {
    const told = await ask(`help ${verb} --lang ${lang}`);
    expect(told.out.split('\n').at(-2)).toBe(`  $ holdturn ${example}`);
    expect(example.startsWith(`${verb} `)).toBe(true);
  });
  await Promise.all(asked);
});
