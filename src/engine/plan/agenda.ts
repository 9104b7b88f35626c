import {
  carriersOf,
  type End,
  type FrictionDevice,
  halfBuilt,
  isFriction,
  ownName,
  type Part,
  type Train,
  upOf,
} from '../train/index.ts';
import type { Doing, Measuring } from './answer.ts';

/** Something to be done, before hands have been asked what they feel there. */
export type Task = Doing & {
  readonly number: number;
  readonly up?: End;
  /** How many parts are on when it is done. */
  readonly on: number;
};

/**
 * What is done in the build, in order. After a part: its height, its bolts, the packs, bands and
 * end plays that it closes, the air checks that it makes possible. Only what the file has.
 */
export function agendaOf(train: Train): readonly Task[] {
  const { teardown = [], fluid } = train;
  const build = teardown.toReversed();
  const up = upOf(teardown);
  const tasks: Task[] = [];
  const add = (on: number, end: End | undefined, doing: Doing) => {
    tasks.push({ number: tasks.length + 1, on, ...(end && { up: end }), ...doing });
  };
  const ready = readyOf(train, build);
  build.forEach((part, i) => {
    const on = i + 1;
    const end = up(part);
    const before = i === 0 ? end : up(build[i - 1] as Part);
    if (before && end && before !== end) add(i, end, { does: 'turn over' });
    const doings: Doing[] = [
      { does: 'fit', part, checks: [] },
      ...(part.height ? [{ does: 'height', part } as const] : []),
      ...(part.bolts ? [{ does: 'tighten', part, bolts: part.bolts } as const] : []),
      ...ready.filter((its) => its.on === on).map(({ doing }) => doing),
    ];
    for (const doing of doings) add(on, end, doing);
  });
  const last = build.at(-1);
  if (fluid && last) add(build.length, up(last), { does: 'fill', fluid });
  return tasks;
}

/** What a measuring step is of: a device, a shaft, a part. */
export function subjectOf(doing: Extract<Doing, { readonly does: Measuring }>): string {
  switch (doing.does) {
    case 'height':
      return doing.part.name;
    case 'clearance':
      return doing.pack.device;
    case 'band':
      return doing.band.device;
    case 'end play':
      return doing.endPlay.shaft;
    case 'air check':
      return doing.device.name;
  }
}

interface Ready {
  readonly on: number;
  readonly doing: Doing;
}

function readyOf(train: Train, build: readonly Part[]): Ready[] {
  const { packs = [], bands = [], endPlays = [] } = train;
  const last = (is: (part: Part) => boolean | undefined) => {
    return build.findLastIndex((part) => is(part)) + 1;
  };
  // A pack or a band is carried by a part; a shaft's end play needs the whole unit, unless a
  // part is said to close it.
  const closed = (name: string) => last(({ closes }) => closes?.includes(name));
  const whole = (device: string) => {
    const carried = last(({ carries }) => carries.includes(device));
    return Math.max(closed(device), carried) || build.length;
  };
  return [
    ...packs.map((pack): Ready => ({ on: whole(pack.device), doing: { does: 'clearance', pack } })),
    ...bands.map((band): Ready => ({ on: whole(band.device), doing: { does: 'band', band } })),
    ...endPlays.map((endPlay): Ready => {
      return { on: closed(endPlay.shaft) || build.length, doing: { does: 'end play', endPlay } };
    }),
    ...train.devices.filter(isFriction).flatMap((device): Ready[] => {
      const on = airedAt(train, build, device);
      return on === undefined ? [] : [{ on, doing: { does: 'air check', device } }];
    }),
  ];
}

// The parts on when air reaches a device that is whole; one that no part carries is not checked.
function airedAt(train: Train, build: readonly Part[], device: FrictionDevice): number | undefined {
  const part = carriersOf(train).get(ownName(train)(device.name));
  if (!part) return undefined;
  const fed = build.findLastIndex(({ feeds }) => feeds?.includes(device.name)) + 1;
  for (let on = Math.max(build.indexOf(part) + 1, fed); on <= build.length; on++) {
    const there = new Set(build.slice(0, on));
    const half = halfBuilt(train, (its) => there.has(its));
    if (half.devices.find(({ name }) => name === device.name)?.stuck !== 'open') return on;
  }
  return undefined;
}
