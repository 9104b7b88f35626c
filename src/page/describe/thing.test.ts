import { expect, it } from 'vitest';
import { namesOf } from '../../engine/train/index.ts';
import { voiceOf } from '../../telling/narrative/index.ts';
import { ours } from '../../../test/trains.ts';
import { language } from '../words/index.ts';
import { describedIn, entriesIn } from './thing.ts';
import { words } from './words.ts';

it.each(['kestrel-three-speed', 'curlew-four-speed-overdrive'])(
  'what %s says is told in the reader’s names and words',
  (name) => {
    const train = ours(name);
    const before = language.value;
    language.value = 'es';
    const voice = voiceOf('es', train);
    const things = describedIn(train, words(), voice).flatMap(([, its]) => its);
    const figures = entriesIn(train, voice).filter(
      ({ thing }) => !('within' in thing && ['about', 'languages'].includes(thing.within)),
    );
    language.value = before;
    const told = [...things, ...figures].map((its) => `${its.name}: ${its.says}`).join('\n');
    const own = namesOf(train).filter((its) => its.length > 3 && voice.called(its) !== its);
    expect(own.length).toBeGreaterThan(20);
    const past = own.filter((its) => new RegExp(`(?<!\\p{L})${its}(?!\\p{L})`, 'u').test(told));
    expect(past.filter((its) => its !== 'pump')).toEqual([]);
    expect(told).not.toMatch(
      /\b(?:clockwise|washer|bushing|bleeds|applies|positions|size|away)\b/u,
    );
    expect(told).toMatch(/\bD (?:línea de avance|1 embrague de avance)/u);
  },
);
