import type { OneWayClutch, Train } from '../../engine/train/index.ts';
import { AT_THE_INPUT, type Stand } from '../../asking/request/index.ts';
import { freeWay, type Language, oneWayWords, visible, voiceOf } from '../narrative/index.ts';
import type { Json } from './json.ts';
import { type Page, paragraph } from './page.ts';

const FITTED = ['as described', 'other way up'] as const;

/** The hand check of each clutch, as described and the other way up; `turned`: those found so. */
export function oneWayText(
  train: Train,
  clutches: readonly OneWayClutch[],
  page: Page,
  turned: ReadonlySet<string> = new Set(),
): string {
  const voice = voiceOf(page.language);
  const { stand = AT_THE_INPUT, language } = page;
  const told = clutches.flatMap((clutch) => [
    '',
    page.ink.strong(visible(clutch.name)),
    ...fits(clutch).flatMap((fitted) =>
      paragraph(oneWayWords(clutch, { ...stand, fitted }, language), page),
    ),
    ...(turned.has(clutch.name) ? paragraph(voice.say('one-way.turned'), page) : []),
  ]);
  return [
    ...paragraph(visible(train.name), page).map(page.ink.strong),
    ...(clutches.length === 0 ? ['', ...paragraph(voice.say('one-way.none'), page)] : told),
    ...(clutches.length === 0 ? [] : ['', ...paragraph(voice.say('one-way.legend'), page)]),
  ].join('\n');
}

/**
 * A statement for each clutch and each way of fitting it, with the four things that it needs.
 * `found`: it was found so, by what is wrong with the train. `free` is the way in which the race
 * that is turned turns; null: both ways, or neither.
 */
export function oneWayJson(
  clutches: readonly OneWayClutch[],
  language: Language,
  stand: Stand = AT_THE_INPUT,
  turned: ReadonlySet<string> = new Set(),
): Json {
  return clutches.flatMap((clutch) =>
    fits(clutch).map((fitted): Json => {
      const inner = stand.hold === 'inner';
      const here = { ...stand, fitted };
      return {
        device: clutch.name,
        hold: stand.hold,
        held: inner ? clutch.first : clutch.second,
        turned: inner ? clutch.second : clutch.first,
        seenFrom: stand.seenFrom,
        fitted,
        found: turned.has(clutch.name) === (fitted === 'other way up'),
        free: clutch.stuck ? null : freeWay(clutch, here),
        text: oneWayWords(clutch, here, language),
      };
    }),
  );
}

// One that holds neither way, or both, does so whichever face is up.
function fits({ stuck }: OneWayClutch) {
  return stuck ? FITTED.slice(0, 1) : FITTED;
}
