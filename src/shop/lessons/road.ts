import type { GearName } from '../../engine/chart/index.ts';
import {
  applyFault,
  everyFault,
  type Fault,
  faultMatrix,
  type FaultMatrix,
  type FaultRow,
  roadSign,
} from '../../engine/faults/index.ts';
import { flow } from '../../engine/flow/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { shuffled } from './chance.ts';
import type { Draft, Wrong } from './draft.ts';
import type { Answer, FirstSign } from './question.ts';

const MOST_FAULTS = 4;

/**
 * Where does a fault of a device show first on the road, and how? The seed picks the devices'
 * faults. With a gear: only the faults that show first in it.
 */
export function faultQuestions(train: Train, seed: number, only?: GearName): Draft[] {
  const ofDevices = everyFault(train).filter(({ what }) => what === 'device' || what === 'one-way');
  const faults = shuffled(ofDevices, seed, 'faults');
  const matrix = faultMatrix(train, { only: only ? faults : faults.slice(0, MOST_FAULTS) });
  const drafts = matrix.rows.flatMap((row) => faultQuestion(train, matrix, row) ?? []);
  const shown = drafts.filter(({ right }) => {
    const gear = right.answer === 'sign' && right.sign?.gear;
    return !only || (gear && gear.range === only.range && gear.gear === only.gear);
  });
  return shown.slice(0, MOST_FAULTS);
}

function faultQuestion(train: Train, matrix: FaultMatrix, row: FaultRow): Draft | undefined {
  const fault = row.faults[0] as Fault;
  const device = 'device' in fault ? fault.device : '';
  const found = roadSign(matrix, row);
  const end = found?.end ?? 'drive';
  if (end === 'inReverse') return undefined; // pushed backwards in neutral: no question for a class
  const sign = found && { gear: named(found.gear), end, ...outcome(found.now) };
  const is = (its: FirstSign | null): Answer => ({ answer: 'sign', sign: its });
  const uses = matrix.gears.find(({ on }) => on.includes(device)) ?? matrix.gears[0];
  const wrong: Wrong[] = [];
  if (sign) {
    const { gear } = sign;
    wrong.push(
      ['fault hides', is(null)],
      ['fault means no drive', is({ gear, end, state: 'neutral' })],
      ['fault ties up', is({ gear, end, state: 'tied up' })],
    );
  }
  if (uses) {
    const first = { gear: named(uses), end: 'drive' } as const;
    wrong.push(['fault shows wherever fitted', is({ ...first, state: 'neutral' })]);
    wrong.push(['fault ties up', is({ ...first, state: 'tied up' })]);
  }
  const setting = {
    on: found?.gear.on ?? [],
    end,
    hold: [],
    fault,
  } as const;
  // Where nothing shows it there is no gear to explain; the healthy first gear will do.
  const shown = flow(applyFault(train, fault), (found?.gear ?? uses)?.on ?? []);
  const { facts } = shown[end];
  const subject = [{ kind: 'device', name: device }] as const;
  return { kind: 'fault', subject, setting, right: is(sign ?? null), wrong, facts };
}

function named({ range, gear }: GearName): GearName {
  return { range, gear };
}

function outcome({ state, ratio }: Pick<FirstSign, 'state' | 'ratio'>) {
  return { state, ...(ratio && { ratio }) };
}
