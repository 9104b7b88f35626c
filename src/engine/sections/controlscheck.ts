import type { PlaceOf } from '../entries/index.ts';
import { circuitOf, EXHAUST, PUMP } from '../hydraulics/index.ts';
import { isFriction, type Train } from '../train/index.ts';
import { type Findings, near, type OilMistake } from '../yaml/index.ts';

/** Names in the controls that mean nothing, and parts of them that can do nothing. */
export function checkControls(train: Train, at: PlaceOf, findings: Findings): void {
  const { controls } = train;
  if (!controls) return;
  const { solenoids, asks, 'pressures in': levels, selector } = controls;
  const given = givenLines(train);
  const told =
    (is: OilMistake['is'], name: string, known: Iterable<string> = []) =>
    (): OilMistake => ({ problem: 'oil', is, name, ...near(name, known) });
  const mistake = (is: OilMistake['is'], name: string, path: string[], known?: Iterable<string>) =>
    findings.error(at('controls', ...path), told(is, name, known));

  for (const [line, path] of takenLines(train)) {
    if (line !== EXHAUST && !given.has(line)) mistake('unfed line', line, path, given);
  }
  for (const [range, gears] of asks ?? []) {
    for (const [gear, on] of gears) {
      on.forEach((name, i) => {
        if (solenoids?.has(name)) return;
        mistake('unknown solenoid', name, ['asks', range, gear, `${i}`], solenoids?.keys());
      });
    }
  }
  // A file without ranges has them from here.
  for (const [section, ranges] of Object.entries({ asks, 'pressures in': levels })) {
    for (const [range, gears] of (train.ranges.length > 0 ? ranges : undefined) ?? []) {
      const its = train.ranges.find(({ name }) => name === range);
      if (!its) {
        mistake(
          'unknown range',
          range,
          [section, range],
          train.ranges.map(({ name }) => name),
        );
        continue;
      }
      const known = its.gears.map(({ name }) => name);
      for (const gear of gears.keys()) {
        if (!known.includes(gear)) mistake('unknown gear', gear, [section, range, gear], known);
      }
    }
  }
  for (const { name } of train.ranges) {
    if (!selector || selector.has(name)) continue;
    mistake('range without position', name, ['selector'], selector.keys());
  }
}

/** What can be meant, but does nothing. */
export function lookAtControls(train: Train, at: PlaceOf, findings: Findings): void {
  const { controls, ranges, devices } = train;
  if (!controls) return;
  const { solenoids, asks, oil, valves } = controls;
  const odd = (is: OilMistake['is'], name: string, ...path: string[]) =>
    findings.warning(at('controls', ...path), { problem: 'oil', is, name });
  const asked = new Set([...(asks ?? [])].flatMap(([, gears]) => [...gears.values()].flat()));
  const levels = [...(controls['pressures in'] ?? [])].flatMap(([, gears]) => [...gears.values()]);
  for (const name of levels.flatMap((its) => [...its.keys()])) asked.add(name);
  for (const name of solenoids?.keys() ?? []) {
    if (!asked.has(name)) odd('never asked', name, 'solenoids', name);
  }
  const used = new Set(ranges.flatMap(({ gears }) => gears.flatMap(({ on }) => on)));
  for (const device of devices) {
    if (!isFriction(device) || !used.has(device.name) || oil?.has(device.name)) continue;
    odd('no chamber', device.name, 'oil');
  }
  const circuit = circuitOf(controls);
  for (const { name, pushes, stays } of circuit.valves) {
    const away = pushes.filter(({ to }) => to === 'away').map(({ line }) => line);
    if (stays || away.some((line) => isGivenBeside(train, line, name))) continue;
    odd('never pushed', name, valves?.has(name) ? 'valves' : 'balls', name);
  }
}

// Whether anything gives a line oil but a valve of this name itself.
function isGivenBeside(train: Train, line: string, valve: string): boolean {
  const { controls } = train;
  const valves = new Map([...(controls?.valves ?? [])].filter(([name]) => name !== valve));
  return givenLines({ ...train, ...(controls && { controls: { ...controls, valves } }) }).has(line);
}

// Lines that something joins to another line that has oil: by any position of any part.
function givenLines({ controls }: Train): Set<string> {
  const given = new Set<string>([PUMP]);
  if (!controls) return given;
  const { selector, sources, solenoids, valves, passages } = circuitOf(controls);
  for (const { line } of sources) given.add(line);
  for (const { feeds } of selector) for (const line of feeds) given.add(line);
  const ways = [
    ...solenoids.flatMap((its) => ('from' in its ? [[its.from, its.line] as const] : [])),
    ...valves.flatMap(({ positions }) =>
      positions.flat().flatMap(([a, b]) => [[a, b] as const, [b, a] as const]),
    ),
    ...passages.flatMap(({ from, to, oneWay }) =>
      oneWay ? [[from, to] as const] : [[from, to] as const, [to, from] as const],
    ),
  ];
  for (let size = -1; size !== given.size;) {
    size = given.size;
    for (const [from, to] of ways) if (given.has(from) && to !== EXHAUST) given.add(to);
  }
  return given;
}

// Every line that something takes oil from or looks at, with the keys that lead to it.
function takenLines({ controls }: Train): [line: string, path: string[]][] {
  const { solenoids, valves, balls, orifices, oil, taps, accumulators } = controls ?? {};
  const taken: [string, string[]][] = [];
  for (const [name, its] of solenoids ?? []) {
    if ('from' in its) taken.push([its.from, ['solenoids', name, 'from']]);
    else taken.push([its.bleeds, ['solenoids', name, 'bleeds']]);
  }
  for (const [name, { away = [], back = [], positions }] of valves ?? []) {
    away.forEach((line, i) => taken.push([line, ['valves', name, 'away', `${i}`]]));
    back.forEach((line, i) => taken.push([line, ['valves', name, 'back', `${i}`]]));
    positions.forEach((joined, i) => {
      for (const [outlet, line] of joined) {
        taken.push([line, ['valves', name, 'positions', `${i}`, outlet]]);
      }
    });
  }
  for (const [name, { from }] of balls ?? []) {
    from.forEach((line, i) => taken.push([line, ['balls', name, 'from', `${i}`]]));
  }
  for (const [name, { from }] of orifices ?? []) taken.push([from, ['orifices', name, 'from']]);
  for (const [name, { applies = [], releases = [] }] of oil ?? []) {
    applies.forEach((line, i) => taken.push([line, ['oil', name, 'applies', `${i}`]]));
    releases.forEach((line, i) => taken.push([line, ['oil', name, 'releases', `${i}`]]));
  }
  for (const [name, line] of taps ?? []) taken.push([line, ['taps', name]]);
  for (const [name, line] of accumulators ?? []) taken.push([line, ['accumulators', name]]);
  return taken;
}
