import {
  type Ledger,
  ledgerOf,
  type Pushes,
  pushesOf,
  type Quantity,
} from '../../engine/flow/index.ts';
import type { MemberName, Train } from '../../engine/train/index.ts';
import type { SceneSubject } from '../../telling/scene/index.ts';
import type { Showing } from './showing.ts';

/** The ledger of an answer; none where the train is rolled back. */
export function accountsOf(train: Train, answer: Showing): Ledger | undefined {
  const pushes = answer.working ? pushesOf(train, answer.working) : pushesByHand(train, answer);
  return pushes && ledgerOf(train, pushes);
}

/** The part of a ledger that speaks of one of the subjects. */
export function about(ledger: Ledger, subjects: readonly SceneSubject[]): Ledger {
  const has = (kind: SceneSubject['kind'], name: string) =>
    subjects.some((subject) => subject.kind === kind && subject.name === name);
  const within = (name: string) => has('set', name) || has('pair', name);
  return {
    bodies: ledger.bodies.filter(
      ({ member, entries }) =>
        has('member', member) ||
        entries.some(({ by, name }) => (by === 'set' && within(name)) || has('device', name)),
    ),
    meshes: ledger.meshes.filter((mesh) => within(mesh.within)),
  };
}

function pushesByHand(train: Train, { found }: Showing): Pushes | undefined {
  if (!found) return undefined;
  const still = new Map<string, Quantity>();
  if (found.turns) return { outside: still, devices: still, branches: [], drawn: found.drawn };
  const devices = new Set(train.devices.map(({ name }) => name));
  const outside = new Map<MemberName, Quantity>();
  const byDevice = new Map<string, Quantity>();
  for (const [name, torque] of found.torques) {
    (devices.has(name) ? byDevice : outside).set(name, torque);
  }
  return { outside, devices: byDevice, branches: found.branches };
}
