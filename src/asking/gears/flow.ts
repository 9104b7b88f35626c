import {
  flow,
  type Flow,
  flowAt,
  type MeshEfficiency,
  type Working,
} from '../../engine/flow/index.ts';
import type { Rational } from '../../engine/linear/index.ts';
import { type MemberName, type Train, trainInGear } from '../../engine/train/index.ts';
import {
  type AsFound,
  type GearChoice,
  gearsAsked,
  lossesOf,
  NoAnswer,
  type GearSelection,
  selectionOf,
  speedsOf,
  type Stand,
  standAt,
  trainAsFound,
} from '../request/index.ts';

/** How a gear works, or every gear; or the train at speeds that are given. */
export interface FlowRequest extends AsFound, GearChoice {
  /** "engine=1000,motor=0". */
  readonly at?: string;
  /** "external=0.985,internal=0.99". */
  readonly meshEfficiency?: string;
  readonly seenFrom?: string;
}

export type FlowAnswer = {
  readonly train: Train;
  readonly stand: Stand;
} & (
  | ({ readonly asked: 'gear'; readonly flow: Flow } & Pick<GearSelection, 'gear'>)
  | { readonly asked: 'gears'; readonly gears: readonly NamedFlow[] }
  | {
      readonly asked: 'speeds';
      readonly on: readonly string[];
      readonly speeds: ReadonlyMap<MemberName, Rational>;
      readonly working: Working;
    }
);

/** A gear that a range of the train's file names, and how it works. */
export interface NamedFlow {
  readonly range: string;
  readonly gear: string;
  readonly flow: Flow;
}

export function askFlow(file: Train, request: FlowRequest): FlowAnswer {
  const { at, meshEfficiency, seenFrom } = request;
  const train = trainAsFound(file, request);
  const its = { train, stand: standAt(train, seenFrom) };
  const selection = selectionOf(train, request);
  if (at !== undefined) {
    if (meshEfficiency !== undefined) throw new NoAnswer({ refused: 'bad.at losses' });
    const on = selection?.on ?? [];
    const speeds = speedsOf(train, at);
    const given = [...speeds].map(([member, speed]) => ({ member, speed }));
    return { ...its, asked: 'speeds', on, speeds, working: flowAt(train, on, given) };
  }
  const losses = lossesOf(meshEfficiency);
  if (selection) {
    const { on, gear } = selection;
    const here = trainInGear(train, selection);
    const found = flow(here, on, losses);
    return { ...its, train: here, asked: 'gear', flow: found, ...(gear && { gear }) };
  }
  return { ...its, asked: 'gears', gears: flowsOf(train, request, losses) };
}

/** Every gear that the file names, or those of a range. */
export function flowsOf(
  train: Train,
  choice: Pick<GearChoice, 'range'> = {},
  losses?: MeshEfficiency,
): readonly NamedFlow[] {
  return gearsAsked(train, choice).map(({ range, gear, on, weak }) => {
    const here = trainInGear(train, { ...(weak && { weak }) });
    return { range, gear, flow: flow(here, on, losses) };
  });
}
