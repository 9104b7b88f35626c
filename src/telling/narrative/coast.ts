import type { ChartGear } from '../../engine/chart/index.ts';
import type { Flow, Travel } from '../../engine/flow/index.ts';
import { gearName } from './signs.ts';
import type { Voice } from '../voice/index.ts';

/** What a combination does on coast; forward and in reverse, where that is otherwise. */
export function coastText({ coast, inReverse }: ChartGear, voice: Voice): string {
  const told = (state: ChartGear['coast']) => voice.say('coast', { state });
  return bothWays(told(coast), inReverse && told(inReverse), voice);
}

/** What an overlap or a gap of two devices does, and in which gear it drives; by its ratio, where none. */
export function throughText({ drive, ratio, named }: ChartGear, voice: Voice): string {
  const [first] = named;
  return voice.say('chart.through', {
    state: drive,
    named: first ? 'yes' : 'no',
    gear: first ? gearName(first, voice) : '',
    ratio: ratio ? voice.number(ratio) : '',
  });
}

/** Whether a gear brakes the engine on coast; forward and in reverse, where that is otherwise. */
export function brakingText(flow: Flow, voice: Voice): string {
  const told = ({ coast: { state, engineBraking } }: Travel) => {
    return voice.say('braking', { state, braking: engineBraking ? 'yes' : 'no' });
  };
  return bothWays(told(flow), flow.inReverse && told(flow.inReverse), voice);
}

function bothWays(forward: string, reverse: string | undefined, voice: Voice): string {
  if (reverse === undefined || reverse === forward) return forward;
  return voice.say('both ways', { forward, reverse });
}
