import type { NamedFlow } from '../../asking/gears/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { brakingText, gearName } from '../narrative/index.ts';
import { type Page, paragraph, type Cell, table } from '../text/index.ts';

/** Every declared gear, a row each. */
export function gearsText(train: Train, gears: readonly NamedFlow[], page: Page): string {
  const { voice } = page;
  const rows = gears.map(({ range, gear, flow }): Cell[] => {
    const { drive, on } = flow;
    const holding = [...drive.devices].filter(([, { state }]) => state === 'holding');
    return [
      gearName({ range, gear }, voice),
      on.map((name) => voice.called(name)).join(' + '),
      drive.ratio ?? voice.say('state', { state: drive.state }),
      holding.map(([name]) => voice.called(name)).join(' + '),
      brakingText(flow, voice),
    ];
  });
  const heads = ['gear', 'on', 'ratio', 'holding', 'braking'] as const;
  return [
    ...paragraph(voice.train(train), page).map(page.ink.strong),
    '',
    ...(rows.length === 0 ? paragraph(voice.say('gears.none'), page) : table(heads, rows, page)),
    '',
    ...paragraph(voice.say('gears.more'), page).map(page.ink.faint),
  ].join('\n');
}
