import { type End, type Part, type Train, upOf } from '../train/index.ts';
import type { Doing, Measuring } from './answer.ts';
import { readyOf } from './ready.ts';

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
    case 'preload':
      return doing.preload.bearings;
    case 'air check':
    case 'pawl check':
      return doing.device.name;
  }
}
