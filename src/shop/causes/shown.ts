import type { Inquiry } from '../../engine/cause/index.ts';
import type { OutcomeWord, TestWord } from '../../engine/experience/index.ts';
import type { Observation } from '../../engine/suspects/index.ts';
import { isFriction, type Train } from '../../engine/train/index.ts';
import type { Finding, FoundSign } from './finding.ts';

/** A finding as what a test showed, and the note that says so. */
export interface Shown {
  readonly observation: Observation;
  readonly said: string;
}

/**
 * What was found in notes, as observations of the tests that would show it: what a strip finds speaks
 * for suspects and against them. A device or a set is inspected once, and its gravest sign counts; what
 * a test was told of already (`seen`) is not told by a note again. Which test a sign is of is common
 * practice, no source.
 */
export function shownOf(
  { train, tests }: Inquiry,
  findings: readonly Finding[],
  seen: readonly Observation[],
): Shown[] {
  const told = new Set(seen.map(({ test }) => keyOf(test)));
  const shown = new Map<string, Shown & { readonly grave: number }>();
  for (const { sign, of, said } of findings) {
    const [kind, word] = tableFor(train, of)[sign] ?? [];
    const test = tests.find((one) => one.test === kind && subjectOf(one) === of);
    if (!test || !word || told.has(keyOf(test))) continue;
    const grave = GRAVE.indexOf(word);
    if (grave < (shown.get(keyOf(test))?.grave ?? -Infinity)) continue;
    shown.set(keyOf(test), {
      observation: { test, sight: { saw: word }, sure: 'sure' },
      said,
      grave,
    });
  }
  return [...shown.values()].map(({ observation, said }) => ({ observation, said }));
}

type Table = Readonly<Partial<Record<FoundSign, readonly [TestWord, OutcomeWord]>>>;

const UNIT: Table = {
  'burnt fluid': ['fluid', 'burnt'],
  water: ['fluid', 'milky'],
  metal: ['pan', 'metal'],
  'lining dust': ['pan', 'friction'],
  'blocked filter': ['filter', 'blocked'],
  'worn pump': ['pump', 'worn'],
  'stuck valve': ['valve body', 'sticks'],
  'worn converter': ['converter', 'worn'],
};
const FRICTION: Table = {
  burnt: ['inspection', 'worn'],
  'hot spots': ['inspection', 'worn'],
  broken: ['inspection', 'broken'],
  sound: ['inspection', 'sound'],
  'bad seal': ['seals', 'cut'],
  'worn rings': ['seal rings', 'worn'],
};
const ONE_WAY: Table = {
  'turns both ways': ['one-way check', 'turns both ways'],
  'locks both ways': ['one-way check', 'locks both ways'],
  'wrong way round': ['one-way check', 'wrong way'],
  broken: ['inspection', 'broken'],
  blued: ['inspection', 'worn'],
  sound: ['inspection', 'sound'],
};
// That one wheel of a set is sound says nothing of the others.
const SET: Table = {
  broken: ['inspection', 'broken'],
  blued: ['inspection', 'worn'],
  'worn thrust face': ['inspection', 'worn'],
};
const GRAVE: readonly OutcomeWord[] = ['sound', 'worn', 'broken'];

function tableFor({ devices, sets }: Train, of: string | undefined): Table {
  if (of === undefined) return UNIT;
  const device = devices.find(({ name }) => name === of);
  if (device) return isFriction(device) ? FRICTION : device.kind === 'one-way' ? ONE_WAY : {};
  return sets.some(({ name }) => name === of) ? SET : {};
}

type Test = Observation['test'];

function subjectOf(test: Test): string | undefined {
  return 'device' in test ? test.device : undefined;
}

function keyOf(test: Test): string {
  return `${test.test} ${subjectOf(test) ?? ''}`;
}
