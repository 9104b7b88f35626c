import type { Mention, NamedKind } from '../form/index.ts';
import { CASE, type GearSet, outputsOf, partsOf, type Train } from '../train/index.ts';
import { type Findings, looksLike, type NamedProblem, near } from '../yaml/index.ts';

/**
 * Does every name mean something, and one thing? `train` is what could be read; a name that
 * the file defines with a mistake is known, but nothing more is asked of it.
 */
export function checkNames(train: Train, mentions: readonly Mention[], findings: Findings): void {
  const defined = checkDefinitions(mentions, findings);
  const sets = new Map(train.sets.map((set) => [set.name, set]));
  const devices = new Map(train.devices.map((device) => [device.name, device]));
  const ownNames = (kind: NamedKind) =>
    mentions.filter(({ role }) => role.own && role.names === kind).map(({ name }) => name);
  const [setNames, deviceNames] = [new Set(ownNames('set')), new Set(ownNames('device'))];
  const pairNames = new Set(ownNames('gear pair'));
  const wheels = new Map<string | undefined, Set<string>>();
  for (const { role, name, path } of mentions) {
    if (role.own && role.names === 'wheel')
      wheels.set(path[1], (wheels.get(path[1]) ?? new Set()).add(name));
  }
  for (const mention of mentions) {
    const { role, name, at, path } = mention;
    if (role.own && role.names !== 'member') {
      if (role.names === 'wheel' && name === 'carrier')
        findings.error(at, { problem: 'reserved name', name });
      continue;
    }
    switch (role.names) {
      case 'member':
        checkMember(mention, sets, setNames, defined, findings);
        break;
      case 'set':
        if (!setNames.has(name)) {
          findings.error(at, () => ({
            problem: 'unknown set',
            set: name,
            ...near(name, setNames),
          }));
        }
        break;
      case 'device': {
        const device = devices.get(name);
        if (!deviceNames.has(name)) {
          findings.error(at, () => ({
            problem: 'unknown device',
            device: name,
            ...near(name, deviceNames),
          }));
        } else if (device && role.only?.(device) === false && role.otherwise)
          findings.error(at, role.otherwise(name));
        break;
      }
      case 'wheel': {
        const set = path[1] ?? '';
        const there = wheels.get(set) ?? new Set();
        if (!there.has(name)) {
          findings.error(at, () => ({
            problem: 'unknown wheel',
            set,
            wheel: name,
            ...near(name, there),
          }));
        }
        break;
      }
      case 'gear pair':
        if (!pairNames.has(name)) {
          findings.error(at, () => ({
            problem: 'unknown gear pair',
            pair: name,
            ...near(name, pairNames),
          }));
        }
        break;
      case 'part': // what these mean is their section's to check
      case 'anything':
      case 'carried':
      case 'gap':
      case 'range':
      case 'gear':
        break;
    }
  }
}

/** Warns of plain names that stand in one place only and look like another. */
export function lookAtNames(train: Train, mentions: readonly Mention[], findings: Findings): void {
  const places = new Map<string, Mention[]>();
  for (const mention of mentions) {
    if (mention.role.names !== 'member') continue;
    if (mention.name.includes('.')) continue;
    places.set(mention.name, [...(places.get(mention.name) ?? []), mention]);
  }
  for (const [name, [only, ...others]] of places) {
    if (!only || others.length > 0 || name === CASE) continue;
    if (name === train.input || outputsOf(train).includes(name)) continue;
    // Of two that stand once each, the later is told.
    const earlier = [...places].filter(
      ([, all]) => all.length > 1 || (all[0] as Mention).at.from < only.at.from,
    );
    const like = earlier.find(([other]) => other !== name && looksLike(name, other));
    if (like) findings.warning(only.at, { problem: 'lonely name', name, near: like[0] });
  }
}

// Sets, gear pairs and devices are told apart by their names alone; so is a gear pair from a
// join, for either can be stripped.
function checkDefinitions(
  mentions: readonly Mention[],
  findings: Findings,
): Map<string, NamedProblem> {
  const defined = new Map<string, NamedProblem>();
  for (const { role, name, at } of mentions) {
    const { own, names } = role;
    if (!own || (names !== 'set' && names !== 'gear pair' && names !== 'device')) continue;
    const by = defined.get(name);
    if (name === CASE) findings.error(at, { problem: 'reserved name', name });
    else if (by !== undefined) findings.error(at, { problem: 'name taken', name, by });
    else defined.set(name, names);
  }
  // A part may be called after the member that it is, but not after what can be left out too.
  for (const { role, name, at } of mentions) {
    const by = defined.get(name);
    if (role.names === 'part' && role.own && by !== undefined)
      findings.error(at, { problem: 'name taken', name, by });
  }
  return defined;
}

function checkMember(
  { name, at }: Mention,
  sets: ReadonlyMap<string, GearSet>,
  setNames: ReadonlySet<string>,
  defined: ReadonlyMap<string, NamedProblem>,
  findings: Findings,
): void {
  const dot = name.indexOf('.');
  if (dot < 0) {
    const is = defined.get(name);
    if (is !== undefined) findings.error(at, { problem: 'not a member', name, is });
    return;
  }
  const [setName, part] = [name.slice(0, dot), name.slice(dot + 1)];
  if (!setNames.has(setName)) {
    findings.error(at, () => ({
      problem: 'unknown set',
      set: setName,
      ...near(setName, setNames),
    }));
    return;
  }
  const set = sets.get(setName);
  const parts = set && partsOf(set);
  if (parts && !parts.includes(part)) {
    findings.error(at, () => ({
      problem: 'unknown part',
      set: setName,
      part,
      parts,
      ...near(part, parts),
    }));
  }
}
