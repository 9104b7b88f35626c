import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fits, type Form, opened, type Role } from '../form/index.ts';
import { SECTIONS } from '../sections/index.ts';
import { put, remove, type Value } from '../yaml/index.ts';
import { discard, offersAt, readTrain, rename, trainText } from './index.ts';

// A law over the definitions: whatever section there is, it is read, written, checked, completed and
// in the schema. A new one is met here without a line of its own: what stands in it is made from its form.
const BASE = `holdturn: 1
name: A train for every section
about: What stands in the other sections is made from their forms.
input: crank
output: wheel
forward: clockwise
final drive: final
ends: [pump end, cover end]
sets:
  front: { sun: 30, ring: 66, planets: 3 }
gear pairs:
  final: { driver: [front.carrier, 17], driven: [wheel, 62] }
joined:
  drum: [front.sun]
devices:
  grip: { clutch: [crank, front.ring] }
  stopper: { brake: drum }
  strap: { band: drum }
  sprag: { one-way: [drum, case], lets: clockwise }
ranges:
  D: { "1": [grip, stopper] }
controls:
  selector: { D: [drive] }
  solenoids: { first: { bleeds: signal, normally: open } }
  valves: { shift: { away: [signal], positions: [{ apply: exhaust }, { apply: drive }] } }
  orifices: { feed: { from: drive, to: signal } }
  oil: { grip: { applies: [drive] }, stopper: { applies: [apply] } }
  asks: { D: { "1": [first] } }
teardown:
  lid: { carries: [drum, grip], feeds: [grip] }
`;
const known = readTrain(BASE).train;
if (!known) throw new Error('the base is a train');

const FULL = SECTIONS.reduce((text, { key, form }) => {
  if (text.includes(`\n${key}:`)) return text;
  const edited = put(text, [key], sample(form as unknown as Form));
  if ('refused' in edited) throw new Error(`${key}: ${edited.refused}`);
  return edited.text;
}, BASE);
const { train: full, problems } = readTrain(FULL);
const SCHEMA = JSON.parse(
  readFileSync(new URL('../../../trains/train.schema.json', import.meta.url), 'utf8'),
) as { readonly properties: Readonly<Record<string, { readonly description?: string }>> };

describe('the sections', () => {
  it('are many, and what their forms make is a train', () => {
    expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(full).toBeDefined();
    expect(SECTIONS.length).toBeGreaterThan(20);
    expect(new Set(SECTIONS.map(({ key }) => key)).size).toBe(SECTIONS.length);
  });

  it('are written so that the same train is read', () => {
    expect(readTrain(trainText(full as never)).train).toEqual(full);
  });
});

const THINGS = [
  { what: 'device', name: 'grip' },
  { what: 'device', name: 'stopper' },
  { what: 'device', name: 'strap' },
  { what: 'device', name: 'sprag' },
  { what: 'set', name: 'front' },
  { what: 'gear pair', name: 'final' },
] as const;

describe('a thing that any section may name', () => {
  const said = (name: string) => new RegExp(`(?<!\\p{L})${name}(?! drive|\\p{L})`, 'u');
  const errors = (text: string) =>
    readTrain(text).problems.filter(({ severity }) => severity === 'error');

  it.each(THINGS)('$what $name is renamed wherever it stands', ({ what, name }) => {
    const edited = rename(FULL, { what, from: name, to: 'Zaunkönig' });
    if ('refused' in edited) throw new Error(edited.refused);
    expect(edited.text).not.toMatch(said(name));
    expect(errors(edited.text)).toEqual([]);
  });

  it.each(THINGS)('$what $name goes wherever it stands', ({ what, name }) => {
    const edited = discard(FULL, full as never, { thing: what, name });
    if ('refused' in edited) throw new Error(edited.refused);
    expect(edited.text).not.toMatch(said(name));
    expect(errors(edited.text)).toEqual([]);
  });
});

describe.each(SECTIONS.map(({ key, form }) => [key, form as unknown as Form] as const))(
  'the section %s',
  (key, form) => {
    it('is read: without it another train is read, or none', () => {
      const edited = remove(FULL, [key]);
      expect('text' in edited && readTrain(edited.text).soFar).not.toEqual(full);
      expect('text' in edited).toBe(true);
    });

    it('is written', () => {
      expect(trainText(full as never)).toMatch(new RegExp(`^${key}:`, 'mu'));
    });

    it('has its mistakes told at their place', () => {
      const strange = put(FULL, [key], new Map([['never', new Map([['a key', 1]])]]));
      const text = 'text' in strange ? strange.text : FULL.replace(`\n${key}:`, `\n${key}: 5 #`);
      const lines = text.split('\n');
      const start = lines.findIndex((line) => line.startsWith(`${key}:`)) + 1;
      const end = lines.findIndex((line, i) => i >= start && /^\S/u.test(line));
      const errors = readTrain(text).problems.filter(({ severity }) => severity === 'error');
      const there = errors.filter(
        ({ place: { line } }) => line >= start && (end < 0 || line <= end),
      );
      expect(there.length).toBeGreaterThan(0);
    });

    it('is offered, and something is offered in it', () => {
      expect(offersAt('', 0, full as never)?.offers.map(({ label }) => label)).toContain(key);
      const inner = opened(form);
      if (inner.type === 'string' && inner.role === undefined) return;
      const typed = typedInto(key, form);
      expect(offersAt(typed, typed.length, full as never)?.offers.length ?? 0).toBeGreaterThan(0);
    });

    it('is in the schema, with what it is', () => {
      expect(SCHEMA.properties[key]?.description).toMatch(/\.$/u);
    });
  },
);

/** A section as far as one types before something can be offered: past names that only a person knows. */
function typedInto(key: string, form: Form): string {
  let [typed, its] = [`${key}: `, opened(form)];
  for (let depth = 0; its.type === 'record'; depth++) {
    const { role } = its.key;
    typed = depth === 0 ? `${key}:\n  ` : `${typed}{ `;
    if (role && !role.own) return typed;
    [typed, its] = [`${typed}x: `, opened(its.value)];
  }
  return typed;
}

/** What a form lets stand, with every key that it has; `i` is the place in a list. */
function sample(given: Form, i = 0): Value {
  const form = opened(given);
  switch (form.type) {
    case 'record':
      return new Map([[nameFor(form.key.role), sample(form.value)]]);
    case 'strict_object':
      return new Map(Object.entries(form.entries).map(([key, its]) => [key, sample(its)]));
    case 'array':
      return [sample(form.item)];
    case 'strict_tuple':
      return form.items.map((item, k) => sample(item, k));
    case 'union':
      return sample(form.options[0] as Form);
    case 'picklist':
      return form.options?.[0] ?? '';
    default: {
      if (form.role) return nameFor(form.role);
      // Of two sizes the first is the larger.
      const some = [4 - i, 1, 0.5, 400, '1.00 mm', '300 kPa', '24 Nm', '20 N', '5 L', 'thing'];
      const fit = some.find((value) => fits(form, value));
      if (fit === undefined) throw new Error(`no sample is right: ${JSON.stringify(form)}`);
      return fit;
    }
  }
}

function nameFor(role: Role | undefined): string {
  switch (role?.names) {
    case 'device': {
      const { only } = role;
      return known?.devices.find((device) => !only || only(device))?.name ?? '';
    }
    case 'member':
    case 'carried':
      return 'drum';
    case 'set':
    case 'anything':
      return 'front';
    case 'gear pair':
      return 'final';
    case 'gap':
      return 'grip';
    case 'part':
      return 'lid';
    default:
      return 'thing';
  }
}
