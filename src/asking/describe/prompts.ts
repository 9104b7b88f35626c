import {
  CASE,
  DEVICE_KINDS,
  type DeviceKind,
  isApplied,
  type MemberName,
  type Train,
} from '../../engine/train/index.ts';
import type { Replies, Inquiry } from './asking.ts';
import { entryRound } from './entries.ts';
import { freshJoin } from './joining.ts';
import { piecesOf, pieceWith } from './pieces.ts';
import { number as whole, type Prompt, severalOf, text, words } from './prompt.ts';
import { wheelPrompts } from './wheels.ts';

/** The question that is next in a round; undefined: all is answered. */
export function nextPrompt(inquiry: Inquiry, train: Train): Prompt | undefined {
  return promptsOf(inquiry, train).find(({ key }) => !inquiry.answers.has(key));
}

/** The questions of a round, as far as its answers tell which there are. */
export function promptsOf(inquiry: Inquiry, train: Train): Prompt[] {
  const { topic, answers, changes } = inquiry;
  // What is there has its name: it is renamed, not asked for one.
  const named = changes ? [] : [text('name')];
  switch (topic) {
    case 'name':
      return [text('name')];
    case 'input':
    case 'output': {
      const other = topic === 'input' ? train.output : train.input;
      return [member('member', train, [CASE, other])];
    }
    case 'outputs': {
      const ends = member('outputs', train, [CASE, train.input]);
      return [{ ...ends, kind: 'several', optional: true }];
    }
    case 'entry':
      return entryRound(inquiry, train)[0];
    case 'set':
      return [...named, ...setPrompts(answers, train, changes?.name)];
    case 'join':
      return joinPrompts(inquiry, train);
    case 'gear pair': {
      const driver = memberSaid(answers, 'driver');
      return [
        ...named,
        member('driver', train, [CASE]),
        number('driver teeth'),
        member('driven', train, [CASE, driver]),
        number('driven teeth'),
        words('turns', ['external', 'internal', 'chain']),
      ];
    }
    case 'device':
      return [...devicePrompts(answers, train, named)];
    case 'gear': {
      const devices = train.devices.filter(isApplied).map(({ name }) => name);
      const on = severalOf('on', devices);
      if (changes) return [on];
      const ranges = train.ranges.map(({ name }) => name);
      return [{ ...words('range', ranges), of: 'names', open: true }, text('gear'), on];
    }
  }
}

function setPrompts(answers: Replies, train: Train, self: string | undefined): Prompt[] {
  const others = train.sets
    .filter(({ name, kind }) => name !== self && ['plain', 'pair', 'stepped'].includes(kind))
    .map(({ name }) => name);
  const kinds = [
    'plain',
    'pair',
    'stepped',
    ...(others.length > 0 ? ['sharing'] : []),
    'bevel',
    'wheels',
  ];
  const first = words('planets are', kinds);
  const wheels = [number('sun'), number('ring')];
  switch (answers.get('planets are')) {
    case 'plain':
      return [first, ...wheels, optional('planets'), optional('planet')];
    case 'pair':
      return [first, ...wheels, number('pairs')];
    case 'stepped':
      return [first, ...wheels, number('first step'), number('second step'), optional('planets')];
    case 'bevel':
      return [first, number('left'), number('right'), optional('bevels')];
    case 'wheels':
      return [first, ...wheelPrompts(answers)];
    case 'sharing': {
      const has = answers.get('has');
      const through = answers.get('reaches') === 'through';
      return [
        first,
        { ...words('shares', others), of: 'names' },
        words('has', ['sun', 'ring', 'both']),
        ...(has === 'ring' ? [] : [number('sun'), words('reaches', ['straight', 'through'])]),
        ...(has !== 'ring' && through ? [number('inner planets')] : []),
        ...(has === 'sun' ? [] : [number('ring')]),
      ];
    }
    default:
      return [first];
  }
}

function devicePrompts(answers: Replies, train: Train, named: readonly Prompt[]): Prompt[] {
  const kind = words('kind', DEVICE_KINDS);
  switch (answers.get('kind') as DeviceKind | undefined) {
    case 'clutch': {
      const first = memberSaid(answers, 'first');
      return [kind, ...named, member('first', train, [CASE]), member('second', train, [first])];
    }
    case 'brake':
    case 'band':
    case 'pawl':
      return [kind, ...named, member('first', train, [CASE])];
    case 'one-way': {
      const inner = memberSaid(answers, 'inner');
      const way: Prompt = { ...words('lets', ['clockwise', 'anticlockwise']), kind: 'way' };
      return [kind, ...named, member('inner', train), member('outer', train, [inner]), way];
    }
    case undefined:
      return [kind];
  }
}

function joinPrompts({ member: about = '', changes, answers }: Inquiry, train: Train): Prompt[] {
  const pieces = piecesOf(train);
  const own = pieceWith(pieces, about)?.names ?? [about];
  // A set's own wheels mesh: to spline two of them together would lock the set.
  const set = about.includes('.') ? `${about.split('.')[0]}.` : undefined;
  const options = changes
    ? pieces.flatMap(({ names }) => names)
    : pieces
        .filter(({ names }) => !names.includes(about))
        .filter(({ names }) => !names.every((name) => set !== undefined && name.startsWith(set)))
        .map(({ name }) => name);
  const several: Prompt = {
    ...words('with', changes ? options.filter((name) => name !== changes.name) : options),
    kind: 'several',
    of: 'members',
    open: true,
    optional: true,
  };
  const said = answers.get('with');
  const picked = Array.isArray(said) ? (said as readonly string[]) : [];
  const fresh = !changes && picked.length > 0 && freshJoin(train, own, picked);
  return fresh ? [several, text('name')] : [several];
}

function memberSaid(answers: Replies, key: string): MemberName {
  const said = answers.get(key);
  return typeof said === 'string' ? said : '';
}

function member(key: string, train: Train, without: readonly MemberName[] = []): Prompt {
  const pieces = piecesOf(train).filter(({ names }) => {
    return !names.some((name) => name !== '' && without.includes(name));
  });
  return {
    ...words(
      key,
      pieces.map(({ name }) => name),
    ),
    of: 'members',
    open: true,
    without,
  };
}

function number(key: string): Prompt {
  return whole(key, COUNTS.has(key) ? 100 : undefined);
}

const COUNTS: ReadonlySet<string> = new Set(['planets', 'pairs', 'inner planets', 'bevels']);

function optional(key: string): Prompt {
  return { ...number(key), optional: true };
}
