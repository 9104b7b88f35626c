import type { OneWayClutch, Train } from '../../engine/train/index.ts';
import { AT_THE_INPUT } from '../../asking/request/index.ts';
import { fittings, oneWayWords } from '../narrative/index.ts';
import { type Page, paragraph } from '../text/index.ts';

/** The hand check of each clutch, as described and the other way up; `turned`: those found so. */
export function oneWayText(
  train: Train,
  clutches: readonly OneWayClutch[],
  page: Page,
  turned: ReadonlySet<string> = new Set(),
): string {
  const { stand = AT_THE_INPUT, voice } = page;
  const told = clutches.flatMap((clutch) => [
    '',
    page.ink.strong(voice.called(clutch.name)),
    ...fittings(clutch).flatMap((fitted) =>
      paragraph(oneWayWords(clutch, { ...stand, fitted }, voice), page),
    ),
    ...(turned.has(clutch.name) ? paragraph(voice.say('one-way.turned'), page) : []),
  ]);
  return [
    ...paragraph(voice.train(train), page).map(page.ink.strong),
    ...(clutches.length === 0 ? ['', ...paragraph(voice.say('one-way.none'), page)] : told),
    ...(clutches.length === 0 ? [] : ['', ...paragraph(voice.say('one-way.legend'), page)]),
  ].join('\n');
}
