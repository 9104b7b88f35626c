import type { Train } from '../src/engine/train/index.ts';
import { FloatCone } from './floatcone.ts';
import type { Peer } from './peers.ts';

/** What `trains/NAME.expected.yaml` says of one gear; ratios as "p/q". */
export interface Expected {
  readonly drive: State;
  readonly ratio?: string;
  readonly coast: State;
  readonly 'coast ratio'?: string;
  readonly 'engine braking': boolean;
}

export type Ranges = Readonly<Record<string, Readonly<Record<string, Expected>>>>;

type State = 'driving' | 'neutral' | 'tied up';

/**
 * What every gear of a sound train does, by a general-purpose solver on rows that are made of the
 * teeth alone: nothing of the engine but the reading of the file takes part.
 */
export function answersOf(train: Train, peer: Peer): Ranges {
  const driven = train.ranges.flatMap(({ gears }) => {
    return gears.flatMap(({ on }) => sidesOf(train, on, 1, peer).drive.speed ?? []);
  });
  const most = driven.filter((speed) => speed > 0).length * 2 >= driven.length ? 1 : -1;
  const forward = train.forward === undefined ? most : train.forward === 'clockwise' ? 1 : -1;
  const ranges = train.ranges.map(({ name, gears }) => {
    const answers = gears.map((gear) => [gear.name, answerOf(train, gear.on, forward, peer)]);
    return [name, Object.fromEntries(answers)];
  });
  return Object.fromEntries(ranges) as Ranges;
}

function answerOf(train: Train, on: readonly string[], forward: 1 | -1, peer: Peer): Expected {
  const { drive, coast } = sidesOf(train, on, forward, peer);
  return {
    drive: drive.state,
    ...(drive.speed !== undefined && { ratio: fractionOf(1 / drive.speed) }),
    coast: coast.state,
    ...(coast.speed !== undefined && { 'coast ratio': fractionOf(coast.speed * coast.way) }),
    'engine braking': coast.state === 'driving',
  };
}

function sidesOf(train: Train, on: readonly string[], forward: 1 | -1, peer: Peer) {
  const cone = new FloatCone(train, on);
  const ask = (turned: string, other: string, way: 1 | -1): { state: State; speed?: number } => {
    const answer = peer.solve(cone.reluctant(turned, other, way));
    if (answer.state !== 'optimal') return { state: 'tied up' };
    const size = Math.abs(answer.value);
    if (size < 1e-9) return { state: 'neutral' };
    // Which way: the one in which it can turn as slowly as that, and no slower.
    const slack = [[turned, way] as const, [other, size] as const];
    const positive = peer.solve(
      cone.least(
        other,
        1,
        slack.map(([name, speed]) => [name, speed]),
      ),
    );
    return { state: 'driving', speed: positive.state === 'optimal' ? size : -size };
  };
  const drive = ask(train.input, train.output, 1);
  const way = drive.speed === undefined ? forward : drive.speed < 0 ? -1 : 1;
  return { drive, coast: { ...ask(train.output, train.input, way), way } };
}

/** The fraction of numbers below a million that a float stands for, by continued fractions. */
export function fractionOf(value: number): string {
  let [rest, p, q, before, under] = [Math.abs(value), 1, 0, 0, 1];
  for (;;) {
    const whole = Math.floor(rest + 1e-5);
    [p, before] = [whole * p + before, p];
    [q, under] = [whole * q + under, q];
    if (Math.abs(p / q - Math.abs(value)) < 2e-11 * Math.abs(value)) break;
    if (q > 1e6) throw new Error(`${value} is no fraction of teeth`);
    rest = 1 / (rest - whole);
  }
  return `${value < 0 ? '-' : ''}${p}${q === 1 ? '' : `/${q}`}`;
}
