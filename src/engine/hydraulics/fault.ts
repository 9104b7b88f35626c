import { type Call, type Circuit, EXHAUST, type Solenoid, type Valve } from './circuit.ts';

/**
 * One thing that is wrong upstream of the devices; an edit of the circuit, or of what it is asked.
 * `never flows`, `always flows`: whatever the current does. `no current`: its wire is open.
 */
export type OilFault =
  | {
      readonly part: 'solenoid';
      readonly name: string;
      readonly is: 'never flows' | 'always flows' | 'no current';
    }
  | { readonly part: 'wires'; readonly name: string; readonly is: 'swapped'; readonly with: string }
  | { readonly part: 'valve'; readonly name: string; readonly is: 'spring broken' }
  /** In one of its positions, from 1. */
  | { readonly part: 'valve'; readonly name: string; readonly is: 'stuck'; readonly at: number }
  | { readonly part: 'line'; readonly name: string; readonly is: 'leaks' | 'blocked' }
  | { readonly part: 'line'; readonly name: string; readonly is: 'joined'; readonly with: string }
  | { readonly part: 'ball'; readonly name: string; readonly is: 'left out' }
  | { readonly part: 'orifice'; readonly name: string; readonly is: 'blocked' };

/** A circuit and what is asked of it. */
export interface Asked {
  readonly circuit: Circuit;
  readonly calls: readonly Call[];
}

/** The circuit, and what it is asked, with something wrong. Throws where the fault names nothing. */
export function withOilFault({ circuit, calls }: Asked, fault: OilFault): Asked {
  const { name } = fault;
  switch (fault.part) {
    case 'solenoid': {
      if (fault.is === 'no current') {
        return { circuit, calls: calls.map((call) => without(call, name)) };
      }
      const stuck = fault.is === 'always flows' ? 'open' : 'closed';
      const edit = (its: Solenoid): Solenoid => ({ ...its, stuck });
      return { circuit: { ...circuit, solenoids: only(circuit.solenoids, name, edit) }, calls };
    }
    case 'wires':
      return { circuit, calls: calls.map((call) => swapped(call, name, fault.with)) };
    case 'valve': {
      // A valve without its spring is moved by oil alone, and stays where that leaves it.
      const edit = (its: Valve): Valve =>
        fault.is === 'stuck' ? { ...its, stuck: fault.at - 1 } : { ...its, stays: true };
      return { circuit: { ...circuit, valves: only(circuit.valves, name, edit) }, calls };
    }
    case 'line':
      return { circuit: withLine(circuit, fault), calls };
    case 'ball':
      return { circuit: withoutBall(circuit, name), calls };
    case 'orifice': {
      fault.is satisfies 'blocked';
      const passages = circuit.passages.filter((its) => its.name !== name);
      if (passages.length === circuit.passages.length) throw new RangeError(`no orifice ${name}`);
      return { circuit: { ...circuit, passages }, calls };
    }
  }
}

function withLine(circuit: Circuit, fault: Extract<OilFault, { part: 'line' }>): Circuit {
  const { name } = fault;
  switch (fault.is) {
    case 'leaks': {
      const leak = { from: name, to: EXHAUST, size: 'leak' } as const;
      return { ...circuit, passages: [...circuit.passages, leak] };
    }
    case 'joined': {
      const through = { from: name, to: fault.with, size: 'open' } as const;
      return { ...circuit, passages: [...circuit.passages, through] };
    }
    // The plug sits before whatever the line pushes: what feeds it is as it was.
    case 'blocked': {
      const dead = `${name}, behind the plug`;
      const end = (line: string) => (line === name ? dead : line);
      return {
        ...circuit,
        valves: circuit.valves.map((valve) => {
          return { ...valve, pushes: valve.pushes.map((its) => ({ ...its, line: end(its.line) })) };
        }),
        servos: circuit.servos.map((servo) => {
          const chambers = servo.chambers.map((its) => ({ ...its, line: end(its.line) }));
          return { ...servo, chambers };
        }),
      };
    }
  }
}

// Without its ball a one-way passage is open both ways, and one with two seats joins all three lines.
function withoutBall(circuit: Circuit, name: string): Circuit {
  const passages = circuit.passages.map((its) => {
    if (its.name !== name || !its.oneWay) return its;
    const { oneWay: _, ...open } = its;
    return open;
  });
  const seats = circuit.valves.find((its) => its.name === name && its.stays);
  const joined = seats?.positions.flat() ?? [];
  const open = joined.map(([from, to]) => ({ name, from, to, size: 'open' as const }));
  return {
    ...circuit,
    valves: circuit.valves.filter((its) => its !== seats),
    passages: [...passages, ...open],
  };
}

function without(call: Call, name: string): Call {
  const current = new Map([...call.command.current].filter(([its]) => its !== name));
  return { ...call, command: { ...call.command, current } };
}

function swapped(call: Call, a: string, b: string): Call {
  const { current } = call.command;
  const other = (name: string) => (name === a ? b : name === b ? a : name);
  const crossed = new Map([...current].map(([name, level]) => [other(name), level]));
  return { ...call, command: { ...call.command, current: crossed } };
}

function only<Its extends { readonly name: string }>(
  all: readonly Its[],
  name: string,
  edit: (its: Its) => Its,
): Its[] {
  if (!all.some((its) => its.name === name)) throw new RangeError(`nothing is called ${name}`);
  return all.map((its) => (its.name === name ? edit(its) : its));
}

/** What the controller falls back to: no current anywhere. */
export function withoutCurrent({ circuit, calls }: Asked): Asked {
  const dead = calls.map((call) => ({
    ...call,
    command: { ...call.command, current: new Map() },
  }));
  return { circuit, calls: dead };
}
