import { assemble, type Train } from '../../engine/train/index.ts';
import type { SceneSubject } from '../../telling/scene/index.ts';
import type { Objection } from '../../telling/narrative/index.ts';

/** What a warning speaks of: the parts of the drawing on which it belongs. None for a gear. */
export function subjectsOf(warning: Objection, train: Train): SceneSubject[] {
  const named = (name: string) => name.split(' + ').flatMap((one) => within(one, train));
  switch (warning.problem) {
    case 'ring does not fit':
    case 'planets not evenly spaced':
    case 'planets touch':
    case 'centre distances differ':
    case 'set stands alone':
      return named(warning.set);
    case 'no room inside':
      return named(warning.within);
    case 'member carries nothing':
      return [member(warning.member, train)];
    case 'lonely name':
    case 'not carried': {
      const device = train.devices.find(({ name }) => name === warning.name.split('.')[0]);
      return [device ? { kind: 'device', name: device.name } : member(warning.name, train)];
    }
    case 'one cause': {
      if ('set' in warning) return named(warning.set);
      const devices = 'other' in warning ? [warning.device, warning.other] : [warning.device];
      return devices.map((name): SceneSubject => ({ kind: 'device', name }));
    }
    case 'device does nothing':
    case 'device never applied':
    case 'one body':
      return [{ kind: 'device', name: warning.device }];
    default:
      return [];
  }
}

function within(name: string, train: Train): SceneSubject[] {
  if (train.sets.some((set) => set.name === name)) return [{ kind: 'set', name }];
  return train.pairs.some((pair) => pair.name === name) ? [{ kind: 'pair', name }] : [];
}

// The drawing names a member by the label of its body.
function member(name: string, train: Train): SceneSubject {
  const { bodies, bodyOf } = assemble(train);
  return { kind: 'member', name: bodies[bodyOf(name) ?? -1]?.label ?? name };
}
