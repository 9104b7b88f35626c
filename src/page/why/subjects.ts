import type { Fact } from '../../engine/flow/index.ts';
import type { Assembly, MemberName } from '../../engine/train/index.ts';
import type { SceneSubject } from '../../telling/scene/index.ts';

/** What a reason speaks of, the first thing first; members by the labels of their bodies. */
export function subjectsOf(fact: Fact, assembly: Assembly | undefined): SceneSubject[] {
  const member = (name: MemberName): SceneSubject => {
    const body = assembly?.bodyOf(name);
    const label = body === undefined ? name : (assembly?.bodies[body]?.label ?? name);
    return { kind: 'member', name: label };
  };
  const device = (name: string): SceneSubject => ({ kind: 'device', name });
  switch (fact.fact) {
    case 'carries':
      return [device(fact.device), member(fact.from), member(fact.to)];
    case 'works':
    case 'as one':
      return [{ kind: 'set', name: fact.set }, ...fact.ports.map(({ label }) => member(label))];
    case 'meshes':
      return [{ kind: 'pair', name: fact.pair }, member(fact.from), member(fact.to)];
    case 'holds':
      return [device(fact.device), member(fact.member)];
    case 'shares':
      return fact.devices.map(device);
    case 'over-runs':
    case 'idle':
      return [device(fact.device)];
    case 'free':
      return fact.members.map(member);
    case 'outputs':
      return fact.shares.map((share) => member(share.member));
    case 'recirculates':
    case 'sets share':
      return fact.sets.map((name) => ({ kind: 'set', name }));
    case 'goes round':
      return [
        ...fact.sets.map((name) => ({ kind: 'set', name }) as const),
        ...fact.devices.map(device),
      ];
    case 'engine braking':
      return fact.overRunning.map(device);
    case 'rolls':
      return fact.held === null ? [] : [member(fact.held)];
    case 'checked':
      return [member(fact.turned), ...fact.held.map(member)];
    case 'turned':
    case 'given':
    case 'fixed':
    case 'result':
    case 'neutral':
    case 'tied up':
    case 'moves':
    case 'held by hand':
      return [member(fact.member)];
  }
}

export function isAbout(a: SceneSubject, b: SceneSubject): boolean {
  return a.kind === b.kind && a.name === b.name;
}
