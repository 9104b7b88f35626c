import type { DeviceKind, Train } from '../../../engine/train/index.ts';
import { pathOf, type Thing } from '../../../engine/trainfile/index.ts';
import { type Edited, inTurn, mend, put, type Value } from '../../../engine/yaml/index.ts';
import type { Answers, Inquiry, Topic } from './asking.ts';
import { joined } from './joining.ts';
import type { StepKey } from './steps.ts';

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
    case 'set':
      return mend(text, path, setValue(says, inquiry));
    case 'join': {
      const picked = says.list('with');
      if (changes) return mend(text, path, picked);
      return picked.length === 0
        ? { text }
        : joined(text, train, [member, ...picked], says.text('name'));
    }
    case 'gear pair': {
      const kind = says.text('turns');
      return mend(
        text,
        path,
        mapOf({
          driver: [says.text('driver'), says.number('driver teeth') ?? 1],
          driven: [says.text('driven'), says.number('driven teeth') ?? 1],
          kind: kind === 'external' ? undefined : kind,
        }),
      );
    }
    case 'device':
      return mend(text, path, deviceValue(says));
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

function deviceValue(says: Sayer): Value {
  const kind = says.text('kind') as DeviceKind;
  switch (kind) {
    case 'clutch':
      return mapOf({ clutch: [says.text('first'), says.text('second')] });
    case 'brake':
    case 'band':
    case 'pawl':
      return mapOf({ [kind]: says.text('first') });
    case 'one-way':
      return mapOf({
        'one-way': [says.text('inner'), says.text('outer')],
        lets: says.text('lets'),
      });
  }
}

function setValue(says: Sayer, { before }: Inquiry): Value {
  const kind = says.text('planets are');
  // Counts that are not asked for stay, while the set is of the kind that they are of.
  const kept = sayerOf(before.get('planets are') === kind ? before : new Map());
  const wheels = { sun: says.number('sun'), ring: says.number('ring') };
  switch (kind) {
    case 'pair':
      return mapOf({
        ...wheels,
        pairs: says.number('pairs'),
        inner: kept.number('inner'),
        outer: kept.number('outer'),
      });
    case 'stepped': {
      const steps = [says.number('first step') ?? 1, says.number('second step') ?? 1];
      return mapOf({ ...wheels, planets: says.number('planets'), steps });
    }
    case 'sharing':
      return mapOf({
        shares: says.text('shares'),
        ...wheels,
        planets: kept.number('planets'),
        pairs: says.number('inner planets'),
        inner: says.number('inner planets') === undefined ? undefined : kept.number('inner'),
      });
    case 'bevel':
      return mapOf({
        sides: [says.number('left') ?? 1, says.number('right') ?? 1],
        pinions: says.number('bevels'),
        pinion: kept.number('inner'),
      });
    default:
      return mapOf({ ...wheels, planets: says.number('planets'), planet: says.number('planet') });
  }
}

type Sayer = ReturnType<typeof sayerOf>;

function sayerOf(answers: Answers) {
  return {
    text(key: StepKey): string {
      const said = answers.get(key);
      return typeof said === 'string' ? said : '';
    },
    number(key: StepKey): number | undefined {
      const said = answers.get(key);
      return typeof said === 'number' ? said : undefined;
    },
    list(key: StepKey): readonly string[] {
      const said = answers.get(key);
      return Array.isArray(said) ? (said as readonly string[]) : [];
    },
  };
}

function mapOf(entries: Readonly<Record<string, Value | undefined>>): Value {
  return new Map(
    Object.entries(entries).filter((entry): entry is [string, Value] => entry[1] !== undefined),
  );
}
