import { type Part, piecesOf, setGearing, type Train } from '../src/engine/train/index.ts';
import type { Dice } from './dice.ts';

/**
 * The train with a teardown by chance: who carries what, what is under and hidden by what, and
 * which end is up. Parts that carry nothing are among them.
 */
export function withRandomTeardown(train: Train, dice: Dice): Train {
  const planets = new Set(
    train.sets.flatMap((set) => setGearing(train, set).planets.map(({ member }) => member)),
  );
  const members = new Set([
    train.input,
    train.output,
    ...train.sets.flatMap((set) => setGearing(train, set).members),
    ...train.joins.map(({ name }) => name),
  ]);
  const things = [
    ...[...members].filter((name) => name !== 'case' && !planets.has(name)),
    ...train.devices.map((device) => piecesOf(device)[0] as string),
  ];
  const shuffled = dice.several(things, things.length);
  const parts: Part[] = [];
  while (shuffled.length > 0) {
    const carries = shuffled.splice(0, dice.whole(0, 2));
    const above = parts.map(({ name }) => name);
    parts.push({
      name: `part ${parts.length + 1}`,
      carries,
      ...(dice.chance(0.3) && { face: 'the lip' }),
      ...(dice.chance(0.3) && { under: dice.several(above, dice.whole(0, 2)) }),
      ...(dice.chance(0.3) && { 'hidden by': dice.several(above, dice.whole(0, 2)) }),
      ...(dice.chance(0.15) && { up: dice.pick(['input', 'output'] as const) }),
    });
  }
  return { ...train, teardown: parts };
}
