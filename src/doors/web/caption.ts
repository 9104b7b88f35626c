import { gearName, voiceOf } from '../../telling/narrative/index.ts';
import type { Bench, Build } from './bench/index.ts';
import { language, spoken } from './words.ts';

/** What stands under the plates: the gear, its ratio, and what is wrong with the wrong build. */
export const captions = spoken({
  en: {
    right: (bench: Bench) => `Fig. 1. ${told(bench, bench.right)}`,
    wrong: (bench: Bench) =>
      `Fig. 2. ${bench.faults.value.join(', ')}. ${told(bench, bench.wrong)}`,
  },
  es: {
    right: (bench: Bench) => `Fig. 1. ${told(bench, bench.right)}`,
    wrong: (bench: Bench) =>
      `Fig. 2. ${bench.faults.value.join(', ')}. ${told(bench, bench.wrong)}`,
  },
});

// "D 1, L 1: 27/11 = 2.455", or what state it is in.
function told(bench: Bench, build: Build): string {
  const voice = voiceOf(language.value);
  const gears = bench.gears.value.map(({ range, gear }) => {
    return gearName({ range: range.name, gear: gear.name });
  });
  const on = gears.length > 0 ? gears.join(', ') : voice.names(bench.on.value);
  const working = build.answer.value?.working;
  if (!working) return `${on}.`;
  const { ratio, state } = working;
  return `${on}: ${ratio ? voice.number(ratio) : voice.say('state', { state })}`;
}
