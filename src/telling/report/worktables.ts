import type { Quantity, Working } from '../../engine/flow/index.ts';
import { assemble, type Train } from '../../engine/train/index.ts';
import { keyOf, plusFor, type Voice } from '../narrative/index.ts';
import { type Page, paragraph, type Cell, type Head, numberCell, table } from '../text/index.ts';
import { bodyRows } from './bodies.ts';

/**
 * One end driving the other, as tables: devices, members and their planets, what each set
 * does to its members; with `all`, also every mesh.
 */
export function workTables(
  working: Working,
  end: 'drive' | 'coast' | 'given',
  { train, all }: { readonly train: Train; readonly all: boolean },
  page: Page,
): string[] {
  const { voice } = page;
  const barred = end === 'coast' && working.state === 'tied up';
  const unit = end === 'given' ? end : barred ? 'output' : 'input';
  const number = (quantity: Quantity) => numberCell(quantity, voice);
  const put = (heads: readonly Head[], rows: readonly (readonly Cell[])[]) => {
    return rows.length === 0 ? [] : [...table(heads, rows, page), ''];
  };
  const kinds = new Map(train.devices.map((device) => [device.name, device.kind]));
  const devices = [...working.devices].map(([name, { state, slip, torque }]) => {
    const kind = voice.say('kind', { kind: keyOf(kinds.get(name) ?? '') });
    return [
      voice.called(name),
      kind,
      voice.say('device.state', { state: keyOf(state) }),
      number(slip),
      number(torque),
    ];
  });
  const branches = working.branches.map(({ within, member, torque, power }) => {
    return [voice.called(within), voice.called(member), number(torque), number(power)];
  });
  const meshes = working.meshes.map(({ a, b, onA, onB }) => {
    return [voice.called(a), number(onA), voice.called(b), number(onB)];
  });
  return [
    ...put(['device', 'kind', 'state', 'slip', 'torque'], devices),
    ...put(['member', 'speed', 'pin'], speedRows(working, train, voice)),
    ...put(['set', 'member', 'torque', 'power'], branches),
    ...(all ? put(['wheel', 'torque', 'meshing', 'torque'], meshes) : []),
    ...paragraph(voice.say('flow.legend', { end, unit, ...plusFor(page.stand, voice) }), page).map(
      page.ink.faint,
    ),
  ];
}

// Planets come with their speed on the pin; a bevel pinion has no other.
function speedRows(working: Working, train: Train, voice: Voice): Cell[][] {
  const number = (quantity: Quantity) => numberCell(quantity, voice);
  const { bodyOf } = assemble(train);
  const pinOf = new Map([...working.onPins].map(([name, pin]) => [bodyOf(name), pin]));
  const rows = bodyRows(train, working.speeds, voice).map(([name, speed, body]): Cell[] => {
    const pin = pinOf.get(body);
    return [name, number(speed), pin ? number(pin) : ''];
  });
  const pinsOnly = [...working.onPins].filter(([name]) => !working.speeds.has(name));
  return [...rows, ...pinsOnly.map(([name, pin]) => [voice.called(name), '', number(pin)])];
}
