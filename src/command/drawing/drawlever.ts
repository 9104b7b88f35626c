import type { GearSelection } from '../../asking/request/index.ts';
import { flow, type Working } from '../../engine/flow/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { type Scene } from '../../telling/scene/index.ts';
import { leverDiagram, leverScene } from '../../telling/levers/index.ts';
import { type Voice } from '../../telling/narrative/index.ts';

/** The lever diagram of a train in a gear, or at rest where none is chosen. */
export function leverSceneOf(train: Train, { selection, side, voice }: LeverAsked): Scene {
  const working = selection && flow(train, selection.on)[side];
  return leverScene(
    leverDiagram(train, undefined, (name) => voice.called(name)),
    {
      drawn: floats(working?.drawn ?? new Map()),
      speeds: working?.speeds ?? new Map(),
      on: new Set(selection?.on ?? []),
      figure: (speed) => (working ? voice.written(speed.toFixed(2)) : ''),
      title: voice.say('drawn.lever', { train: voice.train(train) }),
    },
  );
}

interface LeverAsked {
  readonly selection: GearSelection | undefined;
  readonly side: 'drive' | 'coast';
  readonly voice: Voice;
}

function floats(drawn: Working['drawn']): ReadonlyMap<string, number> {
  return new Map([...drawn].map(([member, speed]) => [member, toNumber(speed)]));
}
