import {
  carriersOf,
  coversPorts,
  type Device,
  type EndPlay,
  type FrictionDevice,
  halfBuilt,
  isApplied,
  isFriction,
  meshMeasured,
  ownName,
  type Part,
  type Pawl,
  piecesOf,
  settersOf,
  type Train,
} from '../train/index.ts';
import type { Doing } from './answer.ts';

/** Something that can be measured or tried once so many parts are on. */
export interface Ready {
  readonly on: number;
  readonly doing: Doing;
}

/**
 * When each thing can be measured: once the part is on that is said to close it, or that carries
 * it, or with the whole unit; and never before the parts that set it, the gears that mesh at a
 * backlash, the servo of a band. Then when air can be put on each device, and a pawl tried.
 */
export function readyOf(train: Train, build: readonly Part[]): Ready[] {
  const { packs = [], bands = [], endPlays = [], preloads = [] } = train;
  const last = (is: (part: Part) => boolean | undefined) => {
    return build.findLastIndex((part) => is(part)) + 1;
  };
  const measured = (name: string, carried: number, ...needs: readonly number[]) => {
    const closed = last(({ closes }) => closes?.includes(name));
    const setters = settersOf(train, name);
    const set = last((part) => setters.includes(part));
    return Math.max(Math.max(closed, carried) || build.length, set, ...needs);
  };
  const carrying = (device: string) => last(({ carries }) => carries.includes(device));
  // The servo, or whatever else pushes a band.
  const pushing = (device: string) => {
    return last((part) => part.feeds?.includes(device) && !coversPorts(train, part));
  };
  return [
    ...packs.map((pack): Ready => {
      const { device } = pack;
      return { on: measured(device, carrying(device)), doing: { does: 'clearance', pack } };
    }),
    ...bands.map((band): Ready => {
      const { device } = band;
      const on = measured(device, carrying(device), pushing(device));
      return { on, doing: { does: 'band', band } };
    }),
    ...preloads.map((preload): Ready => {
      return { on: measured(preload.bearings, 0), doing: { does: 'preload', preload } };
    }),
    ...endPlays.map((endPlay): Ready => {
      const on = measured(endPlay.shaft, 0, meshing(train, endPlay, build));
      return { on, doing: { does: 'end play', endPlay } };
    }),
    ...train.devices.filter(isApplied).flatMap((device): Ready[] => {
      const on = wholeAt(train, build, device);
      if (on === undefined) return [];
      return [{ on, doing: doingOf(device) }];
    }),
  ];
}

function doingOf(device: FrictionDevice | Pawl): Doing {
  return isFriction(device) ? { does: 'air check', device } : { does: 'pawl check', device };
}

// The parts on when both gears of a backlash are there.
function meshing(train: Train, endPlay: EndPlay, build: readonly Part[]): number {
  const parts = meshMeasured(train, endPlay);
  return build.findLastIndex((part) => parts.includes(part)) + 1;
}

/**
 * How many parts are on when a device is whole, with both its members, and what feeds it, so that
 * air reaches it, a pawl engages, a race turns in a race; undefined where no part carries it.
 */
export function wholeAt(train: Train, build: readonly Part[], device: Device): number | undefined {
  const carriers = carriersOf(train);
  const own = ownName(train);
  const parts = piecesOf(device).flatMap((piece) => carriers.get(own(piece)) ?? []);
  if (parts.length === 0) return undefined;
  const carried = Math.max(...parts.map((part) => build.indexOf(part)));
  const fed = build.findLastIndex((its) => {
    return its.feeds?.includes(device.name) && !coversPorts(train, its);
  });
  for (let on = Math.max(carried, fed) + 1; on <= build.length; on++) {
    const there = new Set(build.slice(0, on));
    const half = halfBuilt(train, (its) => there.has(its));
    if (half.devices.find(({ name }) => name === device.name)?.stuck !== 'open') return on;
  }
  return undefined;
}
