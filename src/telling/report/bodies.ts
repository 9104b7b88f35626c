import type { Voice } from '../narrative/index.ts';
import { assemble, type MemberName, type Train } from '../../engine/train/index.ts';

/** A row a body, under its label with the names of all that is one with it. */
export function bodyRows<T>(
  train: Train,
  values: ReadonlyMap<MemberName, T>,
  voice: Voice,
): [name: string, value: T, body: number][] {
  return assemble(train).bodies.flatMap(({ label, names }, body) => {
    const told = names.find((name) => values.has(name));
    if (told === undefined) return [];
    const others = names.filter((name) => name !== label);
    const made = others.map((name) => voice.called(name)).join(', ');
    const all = voice.called(label) + (made === '' ? '' : ` (${made})`);
    return [[all, values.get(told) as T, body] as [string, T, number]];
  });
}
