import type { Train } from '../../engine/train/index.ts';
import type { Inquiry, Reply } from './asking.ts';

/** Whether something else has the name: sets, gear pairs, devices and members share names. */
export function memberTaken(train: Train, inquiry: Inquiry, key: string, said: Reply): boolean {
  if (key === 'gear') {
    const range = train.ranges.find(({ name }) => name === inquiry.answers.get('range'));
    return range?.gears.some(({ name }) => name === said) ?? false;
  }
  if (key !== 'name' || inquiry.topic === 'name') return false;
  const { sets, pairs, devices, joins, input, output } = train;
  const members = [
    input,
    output,
    'case',
    ...joins.flatMap(({ name, members: its }) => [name, ...its]),
    ...devices.flatMap(({ first, second }) => [first, second]),
    ...pairs.flatMap(({ driver, driven }) => [driver.member, driven.member]),
  ];
  return [...[...sets, ...pairs, ...devices].map(({ name }) => name), ...members].includes(
    said as string,
  );
}
