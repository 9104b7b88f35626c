import {
  assemble,
  CASE,
  type GearSet,
  outputsOf,
  type SharingSet,
  type Train,
  type WheelSet,
} from '../train/index.ts';
import type { Findings } from './findings.ts';
import type { Span } from './place.ts';

/** The most that is read of one train. */
export const MOST_MEMBERS = 120;
export const MOST_DEVICES = 64;

type PlaceOf = (...path: string[]) => Span;

/** Mistakes that no single name shows: a thing joined to itself, a circle, a wheel twice. */
export function checkSense(train: Train, at: PlaceOf, findings: Findings): void {
  for (const end of ['input', 'output'] as const) {
    if (train[end] === CASE) findings.error(at(end), { problem: 'case cannot turn', end });
  }
  outputsOf(train).forEach((member, i, all) => {
    const place = () => at('output', `${i}`);
    if (i > 0 && member === CASE) {
      findings.error(place(), { problem: 'case cannot turn', end: 'output' });
    } else if (all.indexOf(member) < i) {
      findings.error(place(), { problem: 'listed twice', name: member });
    }
  });
  for (const set of train.sets) {
    if (set.kind === 'sharing') checkSharing(train, set, at, findings);
    if (set.kind === 'wheels') checkWheels(set, at, findings);
  }
  for (const { name, driver, driven } of train.pairs) {
    if (driver.member === driven.member) {
      findings.error(at('gear pairs', name, 'driven', '0'), {
        problem: 'joined to itself',
        member: driver.member,
      });
    }
  }
  for (const { name, members } of train.joins) {
    members.forEach((member, i) => {
      const place = () => at('joined', name, `${i}`);
      if (member === name) findings.error(place(), { problem: 'joined to itself', member });
      else if (members.indexOf(member) < i)
        findings.error(place(), { problem: 'listed twice', name: member });
    });
  }
  for (const { kind, name, first, second } of train.devices) {
    if (first === second) {
      findings.error(at('devices', name, kind), { problem: 'joined to itself', member: first });
    }
  }
  for (const { shaft, measure, shelf } of train.endPlays ?? []) {
    // How much a shim moves a backlash is the teeth's, and nobody wrote it.
    if (measure !== 'backlash' || !shelf) continue;
    findings.error(at('endplay', shaft, 'shelf'), {
      problem: 'misplaced key',
      key: 'shelf',
      beside: 'measure',
    });
  }
  for (const range of train.ranges) {
    for (const { name, on } of range.gears) {
      on.forEach((device, i) => {
        if (on.indexOf(device) === i) return;
        findings.error(at('ranges', range.name, name, `${i}`), {
          problem: 'listed twice',
          name: device,
        });
      });
    }
  }
}

/** Warns of devices that sit between two members of one body; for trains without mistakes. */
export function doubtDevices(train: Train, at: PlaceOf, findings: Findings): void {
  const { bodyOf } = assemble(train);
  for (const { name, first, second } of train.devices) {
    if (bodyOf(first) !== bodyOf(second)) continue;
    findings.warning(at('devices', name), {
      problem: 'one body',
      device: name,
      members: [first, second],
    });
  }
}

function checkSharing(train: Train, set: SharingSet, at: PlaceOf, findings: Findings): void {
  const place = (key: string) => at('sets', set.name, key);
  if (set.sun === undefined && set.ring === undefined) {
    findings.error(at('sets', set.name), { problem: 'missing key', keys: ['sun', 'ring'] });
  } else if (set.sun === undefined && set.pairs !== undefined) {
    findings.error(place('pairs'), { problem: 'missing key', keys: ['sun'] });
  }
  if (set.inner !== undefined && set.pairs === undefined) {
    findings.error(place('inner'), { problem: 'missing key', keys: ['pairs'] });
  }
  const passed = [set.name];
  let owner: GearSet | undefined = set;
  while (owner?.kind === 'sharing') {
    const shares: string = owner.shares;
    // A circle is told once, at the set of it that stands first.
    const start = passed.indexOf(shares);
    if (start >= 0) {
      const circle = passed.slice(start);
      const first = train.sets.find(({ name }) => circle.includes(name));
      if (first === set)
        findings.error(place('shares'), { problem: 'shares in a circle', sets: circle });
      return;
    }
    passed.push(shares);
    owner = train.sets.find(({ name }) => name === shares);
  }
  if (!owner) return;
  if (owner.kind === 'wheels' || owner.kind === 'bevel') {
    findings.error(place('shares'), { problem: 'cannot share', set: owner.name });
    return;
  }
  const there = owner.kind === 'pair' ? owner.pairs : owner.planets;
  const { planets } = set;
  if (planets === undefined || there === undefined || planets === there) return;
  findings.error(place('planets'), { problem: 'planets differ', planets, set: owner.name, there });
}

function checkWheels(set: WheelSet, at: PlaceOf, findings: Findings): void {
  set.carried.forEach((wheel, i) => {
    if (set.carried.indexOf(wheel) === i) return;
    findings.error(at('sets', set.name, 'carried', `${i}`), {
      problem: 'listed twice',
      name: wheel,
    });
  });
  set.meshes.forEach(({ a, b }, i) => {
    // A wheel that is misspelt is told elsewhere.
    const known = [a, b, ...set.carried].every((wheel) => set.wheels.has(wheel));
    const place = () => at('sets', set.name, 'meshes', `${i}`);
    if (a === b) findings.error(place(), { problem: 'meshes itself', wheel: a });
    else if (known && !set.carried.includes(a) && !set.carried.includes(b)) {
      findings.error(place(), { problem: 'none carried', wheels: [a, b] });
    }
  });
}
