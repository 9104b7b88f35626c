import type { OneWayClutch, Train } from '../../engine/train/index.ts';
import { AT_THE_INPUT } from '../../telling/narrative/index.ts';
import { oneWayJson, oneWayText } from '../../telling/report/index.ts';
import { meant, suggestion } from './names.ts';
import { Refusal } from './refusal.ts';
import { done, json, type Options, type Reply, type Session } from './session.ts';
import { raceHeld } from './stand.ts';

/** How the races of one-way clutches turn against each other: all, or the one that is named. */
export function oneWay(train: Train, name: string | true, session: Session): Reply {
  const { options, language, page } = session;
  for (const option of OF_HANDS) {
    if (options[option] !== undefined) throw new Refusal('bad.one-way', { option: `--${option}` });
  }
  const stand = raceHeld(page.stand ?? AT_THE_INPUT, options);
  const all = train.devices.filter((device): device is OneWayClutch => device.kind === 'one-way');
  const chosen = name === true ? all : [clutchOf(all, name)];
  return options.json
    ? json(oneWayJson(chosen, language, stand))
    : done(oneWayText(train, chosen, { ...page, stand }));
}

const OF_HANDS = ['turn', 'way', 'on', 'range', 'gear'] as const satisfies (keyof Options)[];

function clutchOf(all: readonly OneWayClutch[], given: string): OneWayClutch {
  const names = all.map((clutch) => clutch.name);
  const clutch = all.find((other) => other.name === meant(given, names));
  if (!clutch) throw new Refusal('no.one-way', suggestion(given, names));
  return clutch;
}
