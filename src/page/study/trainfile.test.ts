import { readFileSync } from 'node:fs';
import { expect, it, vi } from 'vitest';
import { fetchReader, TrainFile } from './trainfile.ts';

// It is made when the page is built.
vi.mock('virtual:first-train', () => ({ text: '', train: undefined }));

it('is the same train while what is read stays the same, so that nothing is laid out anew', async () => {
  await fetchReader();
  const text = readFileSync('trains/albatross-ten-speed.train.yaml', 'utf8');
  const file = new TrainFile();
  file.open('a.train.yaml', text, text);
  const train = file.train.value;
  expect(train?.sets.length).toBe(4);
  file.write(`# counted twice\n${text}`);
  expect(file.train.value).toBe(train);
  file.write(`\n${text}\n`);
  expect(file.train.value).toBe(train);
  file.write(text.replace(/sun: (\d+)/u, (_, teeth: string) => `sun: ${Number(teeth) + 1}`));
  expect(file.train.value).not.toBe(train);
  const other = file.train.value;
  file.undo();
  expect(file.train.value).not.toBe(other);
  expect(file.train.value).toEqual(train);
});

it('is another train where the wheels of a set are', async () => {
  await fetchReader();
  const text = `holdturn: 1
input: a
output: b
sets:
  odd: { wheels: { sun: 30, p: 20, ring: 70 }, carried: [p], meshes: [[sun, p], [ring, p, internal]] }
joined: { a: [odd.sun], b: [odd.carrier] }
`;
  const file = new TrainFile();
  file.open('b.train.yaml', text, text);
  const train = file.train.value;
  file.write(text.replace('p: 20', 'p: 21'));
  expect(file.train.value).not.toBe(train);
});
