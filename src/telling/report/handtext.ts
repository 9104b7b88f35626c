import type { HandAnswer } from '../../engine/hand/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { plusFor } from '../narrative/index.ts';
import { bodyRows } from './bodies.ts';
import { reasons } from './flowtext.ts';
import { type Page, paragraph, section, numberCell, table } from '../text/index.ts';

/** What the hands find, each way that was asked, under the train's name. */
export function handText(train: Train, answers: readonly HandAnswer[], page: Page): string {
  const { voice } = page;
  return [
    ...paragraph(voice.train(train), page).map(page.ink.strong),
    ...answers.flatMap((answer) => {
      const rows = answer.turns
        ? bodyRows(train, answer.moves, voice)
        : [...answer.torques].map(([name, its]) => [voice.called(name), its] as const);
      const heads = answer.turns ? (['member', 'turns'] as const) : (['part', 'torque'] as const);
      const cells = rows.map(([name, quantity]) => [
        voice.called(name),
        numberCell(quantity, voice),
      ]);
      return [
        ...section(
          voice.say(answer.turns ? 'hand.turns' : 'hand.locks'),
          reasons(answer.facts, page),
          page,
        ),
        '',
        ...(rows.length === 0 ? [] : table(heads, cells, page)),
      ];
    }),
    '',
    ...paragraph(voice.say('hand.legend', plusFor(page.stand, voice)), page).map(page.ink.faint),
  ].join('\n');
}
