import type { NamedFlow } from '../../asking/gears/index.ts';
import type { Working } from '../../engine/flow/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { brakingText, doingOf, gearName, keyOf } from '../narrative/index.ts';
import { csvOf } from './csv.ts';
import type { Page } from '../text/index.ts';

/**
 * The application chart as comma-separated values: a row a gear of the file under power, then one
 * on coast; a column a device, with the word that its mark stands for. A ratio is input speed over
 * output speed, or a word for the state.
 */
export function chartCsv(
  train: Train,
  gears: readonly NamedFlow[],
  { voice }: Pick<Page, 'voice'>,
): string {
  const head = (name: string) => voice.say('head', { head: name });
  const names = train.devices.map(({ name }) => name);
  const cells = (working: Working, side: 'drive' | 'coast') => [
    voice.say(side === 'drive' ? 'flow.power' : 'flow.coast'),
    ...names.map((name) => {
      const work = working.devices.get(name);
      return voice.say('doing', { doing: keyOf(work ? doingOf(work) : 'off') });
    }),
    working.ratio
      ? toNumber(working.ratio)
      : voice.say(side === 'drive' ? 'state' : 'coast', { state: working.state }),
  ];
  return csvOf([
    [
      head('gear'),
      head('state'),
      ...names.map((name) => voice.called(name)),
      head('ratio'),
      head('braking'),
    ],
    ...gears.map((gear) => [gearName(gear, voice), ...cells(gear.flow.drive, 'drive'), '']),
    ...gears.map((gear) => {
      return [
        gearName(gear, voice),
        ...cells(gear.flow.coast, 'coast'),
        brakingText(gear.flow, voice),
      ];
    }),
  ]);
}
