import { describe, expect, it } from 'vitest';
import { OURS, ours } from '../../../test/trains.ts';
import { drive, isSpan, ledgerOf, pushesOf } from '../../engine/flow/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import { assemble, gearsOf, type Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { endsOf, standingsOf } from './index.ts';

// Invented: in its third gear and in reverse a branch goes round through both ends.
const ROUND = `holdturn: 1
name: Round
input: shaft
output: flange
sets:
  near: { sun: 37, ring: 83, planets: 3, planet: 23 }
  far: { sun: 44, ring: 76, planets: 3, planet: 16 }
joined:
  flange: [near.carrier, far.carrier]
  bell: [near.ring, far.sun]
devices:
  direct clutch: { clutch: [shaft, near.sun] }
  ring clutch: { clutch: [shaft, far.ring] }
  reverse brake: { brake: far.ring }
ranges:
  D: { "3": [ring clutch, direct clutch] }
  R: { R: [direct clutch, reverse brake] }
`;

describe('torque at a dial', () => {
  const { train } = readTrain(ROUND);
  const round = train as Train;

  it('is at the ends what goes in and out, though a branch goes round through them', () => {
    expect(saidOf(round, ['ring clutch', 'direct clutch'])).toMatchObject({
      shaft: '100',
      flange: '100',
      bell: '78',
    });
    // 1170/407 by hand: the ratio of reverse.
    expect(saidOf(round, ['direct clutch', 'reverse brake'])).toMatchObject({
      shaft: '100',
      flange: '287',
      bell: '224',
    });
  });

  it.each(OURS)('is the ratio at the output: %s', (name) => {
    const its = ours(name);
    for (const { on } of gearsOf(its)) {
      const { ratio, outputs } = drive(its, on);
      if (!ratio || outputs.size > 1) continue;
      const said = saidOf(its, on);
      const label = (end: string) => assemble(its).bodies[assemble(its).bodyOf(end) ?? 0]?.label;
      expect(said[label(its.input) ?? '']).toBe('100');
      const [torque] = outputs.values();
      if (!torque || isSpan(torque)) continue;
      expect(said[label(its.output) ?? '']).toBe(`${Math.round(Math.abs(toNumber(ratio)) * 100)}`);
    }
  });
});

function saidOf(train: Train, on: readonly string[]): Record<string, string | undefined> {
  const working = drive(train, on);
  const { speeds, devices, branches, circling } = working;
  const ledger = ledgerOf(train, pushesOf(train, working));
  const shown = { ends: endsOf(train), speeds, ledger, devices, branches, circling };
  const words = { torque: (parts: number) => `${Math.round(parts * 100)}` };
  const { members } = standingsOf(assemble(train), shown, words);
  return Object.fromEntries([...members].map(([member, { says }]) => [member, says]));
}
