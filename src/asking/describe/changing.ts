import type { Device, GearSet, Train } from '../../engine/train/index.ts';
import type { Thing } from '../../engine/trainfile/index.ts';
import { entryOf } from './entries.ts';
import { startsFrom } from './formround.ts';
import { wheelsBefore } from './wheels.ts';
import { type Reply, type Replies, type Inquiry, inquire } from './asking.ts';

/**
 * The round of questions that changes a thing, each prompt starting from what the file says;
 * undefined for what the questions cannot say: it is changed in the text.
 */
export function changeOf(train: Train, thing: Thing): Inquiry | undefined {
  const { name } = thing;
  const called = <T extends { readonly name: string }>(list: readonly T[]) =>
    list.find((one) => one.name === name);
  switch (thing.thing) {
    case 'set': {
      const set = called(train.sets);
      const before = set && setBefore(set);
      return before && inquire('set', { changes: thing, before });
    }
    case 'gear pair': {
      const pair = called(train.pairs);
      if (!pair) return undefined;
      const { driver, driven, kind } = pair;
      const before = said({
        driver: driver.member,
        'driver teeth': driver.teeth,
        driven: driven.member,
        'driven teeth': driven.teeth,
        turns: kind,
      });
      return inquire('gear pair', { changes: thing, before });
    }
    case 'join': {
      const join = called(train.joins);
      const before = said({ with: join?.members });
      return join && inquire('join', { changes: thing, member: name, before });
    }
    case 'device': {
      const device = called(train.devices);
      if (!device) return undefined;
      return inquire('device', { changes: thing, before: deviceSaid(device) });
    }
    case 'gear': {
      const range = train.ranges.find((one) => one.name === thing.within);
      const gear = range && called(range.gears);
      return gear && inquire('gear', { changes: thing, before: said({ on: gear.on }) });
    }
    case 'range':
      return undefined;
    case 'entry': {
      const { within: section } = thing;
      const its = entryOf(train, section, name);
      if (!its) return undefined;
      const before = new Map(startsFrom(section, its.value));
      // What is to be changed is picked: nothing of it is asked again by itself.
      if (its.value instanceof Map) before.delete(`${section}?`);
      return inquire('entry', { changes: thing, section, before });
    }
  }
}

function deviceSaid(device: Device): Replies {
  const { kind, first, second } = device;
  switch (kind) {
    case 'clutch':
      return said({ kind, first, second });
    case 'brake':
    case 'band':
    case 'pawl':
      return said({ kind, first });
    case 'one-way':
      return said({ kind, inner: first, outer: second, lets: device.lets });
  }
}

function setBefore(set: GearSet): Replies | undefined {
  const { kind } = set;
  switch (kind) {
    case 'plain': {
      const { sun, ring, planets, planet } = set;
      return said({ 'planets are': kind, sun, ring, planets, planet });
    }
    case 'pair': {
      const { sun, ring, pairs, inner, outer } = set;
      return said({ 'planets are': kind, sun, ring, pairs, inner, outer });
    }
    case 'stepped': {
      const { sun, ring, planets, steps } = set;
      const [first, second] = steps;
      return said({
        'planets are': kind,
        sun,
        ring,
        planets,
        'first step': first,
        'second step': second,
      });
    }
    case 'sharing': {
      const { shares, sun, ring, planets, pairs, inner } = set;
      const has = sun === undefined ? 'ring' : ring === undefined ? 'sun' : 'both';
      const reaches = pairs === undefined ? 'straight' : 'through';
      const own = { shares, has, sun, ring, reaches, 'inner planets': pairs };
      return said({ 'planets are': kind, ...own, planets, inner });
    }
    case 'bevel': {
      const [left, right] = set.sides;
      const { pinions: bevels, pinion: inner } = set;
      return said({ 'planets are': kind, left, right, bevels, inner });
    }
    case 'wheels':
      return said({ 'planets are': kind, ...Object.fromEntries(wheelsBefore(set)) });
  }
}

function said(answers: Readonly<Record<string, Reply | undefined>>): Replies {
  return new Map(
    Object.entries(answers).filter((entry): entry is [string, Reply] => entry[1] !== undefined),
  );
}
