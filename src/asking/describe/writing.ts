import { deviceValue, pairValue, setValue } from '../../engine/sections/index.ts';
import {
  CASE,
  type Device,
  type DeviceKind,
  type GearPair,
  type GearSet,
  type Train,
  type Way,
} from '../../engine/train/index.ts';
import { pathOf, type Thing } from '../../engine/trainfile/index.ts';
import { type Edited, inTurn, mend, put } from '../../engine/yaml/index.ts';
import type { Replies, Inquiry, Topic } from './asking.ts';
import { joined } from './joining.ts';
import { entryOf, entryRound } from './entries.ts';
import { wheelsSaid } from './wheels.ts';

/** The one edit of the text that a round of questions makes when all of it is answered. */
export function written(text: string, train: Train, inquiry: Inquiry): Edited {
  const versioned = /\bholdturn\b/u.test(text) ? { text } : put(text, ['holdturn'], 1);
  if ('refused' in versioned) return versioned;
  return inTurn(versioned.text, [(before) => answered(before, train, inquiry)]);
}

function answered(text: string, train: Train, inquiry: Inquiry): Edited {
  const { topic, answers, changes, member = '' } = inquiry;
  const says = sayerOf(answers);
  const path = pathOf(changes ?? fresh(topic, says));
  switch (topic) {
    case 'name':
      return put(text, ['name'], says.text('name'));
    case 'input':
    case 'output':
      return put(text, [topic], says.text('member'));
    case 'outputs': {
      const all = says.list('outputs');
      return put(text, ['output'], all.length === 1 ? (all[0] as string) : all);
    }
    case 'entry': {
      const [, at, value] = entryRound(inquiry, train);
      const isSame = changes && value === entryOf(train, at[0] ?? '', changes.name)?.value;
      return value === undefined || isSame ? { text } : mend(text, at, value);
    }
    case 'set':
      return mend(text, path, setValue(setSaid(says, inquiry)));
    case 'join': {
      const picked = says.list('with');
      if (changes) return mend(text, path, picked);
      return picked.length === 0
        ? { text }
        : joined(text, train, [member, ...picked], says.text('name'));
    }
    case 'gear pair': {
      return mend(text, path, pairValue(pairSaid(says)));
    }
    case 'device':
      return mend(text, path, deviceValue(deviceSaid(says)));
    case 'gear':
      return mend(text, path, says.list('on'));
  }
}

function fresh(topic: Topic, says: Sayer): Thing {
  const name = says.text('name');
  if (topic === 'gear')
    return { thing: 'gear', within: says.text('range'), name: says.text('gear') };
  const isThing = topic === 'set' || topic === 'join' || topic === 'device';
  return { thing: isThing ? topic : 'gear pair', name };
}

// What was said, as the train has it; the sections write it. The path has the name.
const name = '';

function deviceSaid(says: Sayer): Device {
  const kind = says.text('kind') as DeviceKind;
  switch (kind) {
    case 'clutch':
      return { kind, name, first: says.text('first'), second: says.text('second') };
    case 'brake':
    case 'band':
    case 'pawl':
      return { kind, name, first: says.text('first'), second: CASE };
    case 'one-way': {
      const lets = says.text('lets') as Way;
      return { kind, name, first: says.text('inner'), second: says.text('outer'), lets };
    }
  }
}

function pairSaid(says: Sayer): GearPair {
  return {
    name,
    driver: { member: says.text('driver'), teeth: says.counted('driver teeth') },
    driven: { member: says.text('driven'), teeth: says.counted('driven teeth') },
    kind: says.text('turns') as GearPair['kind'],
  };
}

function setSaid(says: Sayer, { before, answers }: Inquiry): GearSet {
  const kind = says.text('planets are') as GearSet['kind'];
  // Counts that are not asked for stay, while the set is of the kind that they are of.
  const kept = sayerOf(before.get('planets are') === kind ? before : new Map());
  const planets = says.number('planets');
  const wheels = () => ({ name, sun: says.counted('sun'), ring: says.counted('ring') });
  switch (kind) {
    case 'plain':
      return { kind, ...wheels(), ...given({ planets, planet: says.number('planet') }) };
    case 'pair': {
      const [inner, outer] = [kept.number('inner'), kept.number('outer')];
      return { kind, ...wheels(), pairs: says.counted('pairs'), ...given({ inner, outer }) };
    }
    case 'stepped': {
      const steps = [says.counted('first step'), says.counted('second step')] as const;
      return { kind, ...wheels(), steps, ...given({ planets }) };
    }
    case 'sharing': {
      const pairs = says.number('inner planets');
      const inner = pairs === undefined ? undefined : kept.number('inner');
      const [sun, ring] = [says.number('sun'), says.number('ring')];
      const own = given({ sun, ring, planets: kept.number('planets'), pairs, inner });
      return { kind, name, shares: says.text('shares'), ...own };
    }
    case 'wheels':
      return { kind, name, ...wheelsSaid(answers) };
    case 'bevel': {
      const sides = [says.counted('left'), says.counted('right')] as const;
      const [pinions, pinion] = [says.number('bevels'), kept.number('inner')];
      return { kind, name, sides, ...given({ pinions, pinion }) };
    }
  }
}

// Those of the counts that were given.
function given<Key extends string>(
  counts: Readonly<Record<Key, number | undefined>>,
): { readonly [Its in Key]?: number } {
  return Object.fromEntries(Object.entries(counts).filter(([, count]) => count !== undefined)) as {
    readonly [Its in Key]?: number;
  };
}

type Sayer = ReturnType<typeof sayerOf>;

function sayerOf(answers: Replies) {
  return {
    text(key: string): string {
      const said = answers.get(key);
      return typeof said === 'string' ? said : '';
    },
    number(key: string): number | undefined {
      const said = answers.get(key);
      return typeof said === 'number' ? said : undefined;
    },
    /** Of a prompt that must be answered. */
    counted(key: string): number {
      return this.number(key) ?? 1;
    },
    list(key: string): readonly string[] {
      const said = answers.get(key);
      return Array.isArray(said) ? (said as readonly string[]) : [];
    },
  };
}
