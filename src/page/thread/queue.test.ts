import { expect, it } from 'vitest';
import { Queue, type Sent, Superseded } from './queue.ts';

function started() {
  const sent: Sent[] = [];
  const queue = new Queue((its) => sent.push(its));
  return { queue, sent };
}

it('asks one thing at a time, and drops what is asked anew before it was begun', async () => {
  const { queue, sent } = started();
  const [first, second] = [1, 2].map((takes) => queue.ask({ ask: 'examine', takes }));
  const third = queue.ask({ ask: 'examine', takes: 3 });
  const fits = queue.ask({ ask: 'fits', takes: 4 });
  await expect(second).rejects.toBeInstanceOf(Superseded);
  for (const gives of ['a', 'b', 'c']) queue.came({ gives });
  expect(await Promise.all([first, fits, third])).toEqual(['a', 'b', 'c']);
  expect(sent.map(({ takes }) => takes)).toEqual([1, 4, 3]);
});

it('settles whoever waits when nothing can be read of the answer, and goes on', async () => {
  const { queue, sent } = started();
  const lost = queue.ask({ ask: 'faults', takes: 1 });
  const next = queue.ask({ ask: 'faults', takes: 2 });
  queue.came({ failed: 'not readable' });
  await expect(lost).rejects.toThrow('not readable');
  queue.came({ gives: 'there' });
  expect(await next).toBe('there');
  expect(sent).toHaveLength(2);
});
