import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { applyFault, type Fault } from '../src/engine/faults/index.ts';
import { drive } from '../src/engine/flow/index.ts';
import { type Practice, readPractice } from '../src/engine/practice/index.ts';
import { isSpan, type Quantity, sizeOf } from '../src/engine/reckon/index.ts';
import { toNumber } from '../src/engine/linear/index.ts';
import {
  accountsOf,
  type Cause,
  inquire,
  type Observation,
  rank,
  readSeen,
  type Test,
} from '../src/engine/suspects/index.ts';
import { type Device, isFriction, type Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';

// A law on every train of ours. Put a device in that holds a part of what it should, and drive
// each gear lightly, ordinarily and at full load: by `flow` alone, it slips where the train does
// otherwise without it and the load is beyond it. Then it is among those that lead, and nothing
// leads that carries nothing wherever it slipped. How much of full load light and ordinary
// driving are is common practice, with no source.
const FOLDER = new URL('../trains/', import.meta.url);
const files = fs.readdirSync(FOLDER).filter((name) => name.endsWith('.train.yaml'));
const text = fs.readFileSync(new URL('../experience.yaml', import.meta.url), 'utf8');
const practice = readPractice(text).practice as Practice;
const LOADS = { light: 0.3, ordinary: 0.5, heavy: 1 } as const;
const STRENGTHS = [0.2, 0.45, 0.75];

const trains = files.flatMap((file) => {
  const { train } = readTrain(fs.readFileSync(new URL(file, FOLDER), 'utf8'));
  return train && train.ranges.length > 0 && train.devices.some(isFriction)
    ? [[file, train] as const]
    : [];
});

describe('a slipping device', () => {
  it.each(trains)('of %s leads, and nothing that carries nothing where it slips', (_, train) => {
    const inquiry = inquire(train, practice);
    const gears = inquiry.tests.flatMap((test) => {
      return test.test === 'under power' ? [{ test: test as Test, on: test.on }] : [];
    });
    let slipped = 0;
    for (const device of train.devices.filter(isFriction)) {
      const asked = gears.map((gear) => askedOf(train, device, gear.on));
      const most = Math.max(...asked.map(({ torque }) => torque));
      for (const strength of STRENGTHS) {
        const observations = gears.flatMap((gear, k) =>
          observed(gear.test, asked[k], most * strength),
        );
        const slips = observations.filter(({ sight }) => sight.saw === 'slips');
        if (slips.length === 0) continue;
        slipped += 1;
        const [leading] = rank(inquiry, accountsOf(inquiry, observations)).brackets;
        const causes = (leading?.suspects ?? []).map(({ cause }) => cause);
        const what = `${device.name} at ${strength}: ${causes.map(named).join(', ')}`;
        expect(causes.map(named), what).toContain(`${device.name}: slips`);
        const on = slips.map(({ test }) => ('on' in test ? (test.on ?? []) : []));
        for (const cause of causes) expect(carries(train, cause, on), what).toBe(true);
      }
    }
    expect(slipped).toBeGreaterThan(0);
  });
});

interface Asked {
  /** What it carries under power at least, for one unit at the input. */
  readonly torque: number;
  /** The train does otherwise without it. */
  readonly needed: boolean;
}

function askedOf(train: Train, device: Device, on: readonly string[]): Asked {
  const whole = drive(train, on);
  if (whole.state !== 'driving') return { torque: 0, needed: false };
  const fault: Fault = isFriction(device)
    ? { what: 'device', device: device.name, is: 'will not apply' }
    : { what: 'one-way', device: device.name, is: 'slips' };
  const without = drive(applyFault(train, fault), on);
  const needed =
    JSON.stringify([without.state, without.ratio]) !== JSON.stringify([whole.state, whole.ratio]);
  const torque = whole.devices.get(device.name)?.torque;
  return { torque: torque ? leastOf(torque) : 0, needed };
}

function leastOf(torque: Quantity): number {
  const size = sizeOf(torque);
  if (!isSpan(size)) return toNumber(size);
  return size.from ? toNumber(size.from) : 0;
}

function observed(test: Test, asked: Asked | undefined, holds: number): Observation[] {
  const { torque = 0, needed = false } = asked ?? {};
  return (['light', 'ordinary', 'heavy'] as const).map((load): Observation => {
    const slips = needed && torque * LOADS[load] > holds;
    const so = load === 'ordinary' ? test : ({ ...test, load } as Test);
    return { test: so, sight: { saw: slips ? 'slips' : 'as it should' }, sure: 'sure' };
  });
}

function named({ cause, faults: [fault], at }: Cause): string {
  return fault && 'device' in fault ? `${fault.device}: ${fault.is}` : `${cause} ${at ?? ''}`;
}

// Whether the cause is of a device that carries something in each of the gears, or of none. Its
// leak may take the pressure of the others wherever it is fed.
function carries(
  train: Train,
  { cause, faults: [fault] }: Cause,
  gears: readonly (readonly string[])[],
): boolean {
  if (!fault || !('device' in fault)) return cause !== 'nothing wrong';
  const device = train.devices.find(({ name }) => name === fault.device) as Device;
  if (cause === 'device leaks') return gears.every((on) => on.includes(device.name));
  return gears.every((on) => askedOf(train, device, on).torque > 0);
}

describe('what the shop that waited for this asked', () => {
  const kestrel = trains.find(([file]) => file.startsWith('kestrel'))?.[1] as Train;
  const said = 'D 1: drives\nD 2: slips\nD 3: drives\nR: drives\npressure: good';
  const inquiry = inquire(kestrel, practice);
  const { observations } = readSeen(said, inquiry);
  const { brackets, chances } = rank(inquiry, accountsOf(inquiry, observations));
  const leading = brackets[0]?.suspects.map(({ cause }) => named(cause)) ?? [];

  it('second slips: its brake leads, and no band that carries nothing there', () => {
    expect(leading[0]).toBe('second brake: slips');
    expect(leading.filter((its) => its.startsWith('intermediate band'))).toEqual([]);
    expect(leading.some((its) => its.startsWith('nothing wrong'))).toBe(false);
    const [likeliest] = inquiry.causes
      .map((cause, c) => ({ cause, chance: chances[c] as number }))
      .toSorted((a, b) => b.chance - a.chance);
    expect(named(likeliest?.cause as Cause)).toBe('second brake: slips');
  });
});
