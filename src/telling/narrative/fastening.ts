import { toNumber } from '../../engine/linear/index.ts';
import { quantityFrom } from '../../engine/quantity/index.ts';
import type { Bolts, Fluid } from '../../engine/train/index.ts';
import { visible, type Voice } from '../voice/index.ts';

/** What bolts a part down: new ones where they must be, how they are drawn down, and the torque. */
export function boltTexts(
  { torque, count = 0, sequence, once, source, by }: Bolts,
  voice: Voice,
): string[] {
  const told = {
    count,
    has: torque === undefined ? 'no' : 'yes',
    torque: torque === undefined ? '' : torqueText(torque, voice),
    ...originOf({ source, by }),
  };
  return [
    ...(once ? [voice.say('plan.bolts once')] : []),
    voice.say('plan.draw down', {
      has: sequence ? 'yes' : 'no',
      sequence: visible(sequence ?? ''),
    }),
    voice.say('plan.bolts', told),
  ];
}

// "24 N·m (17.7 lb·ft)", the one that was written first.
function torqueText(text: string, voice: Voice): string {
  const read = quantityFrom(text, 'torque');
  if (!read) return visible(text);
  const nm = toNumber(read.size);
  // Small ones are told in pound-inches: common practice, no source.
  const inches = read.unit === 'lbf in' || (read.unit !== 'lbf ft' && nm < SMALL_NM);
  const pounds = inches ? nm / NM_OF_LBIN : nm / (12 * NM_OF_LBIN);
  const told = (value: number, unit: string) => {
    // A blank at which no line is broken.
    return `${`${Number(value.toFixed(1))}`.replace('.', voice.say('decimal'))}\u00A0${unit}`;
  };
  const metric = told(nm, 'N·m');
  const imperial = told(pounds, inches ? 'lb·in' : 'lb·ft');
  const [first, second] = read.unit.startsWith('lbf') ? [imperial, metric] : [metric, imperial];
  return voice.say('length', { first, second });
}

const SMALL_NM = 15;
// A pound-force is 4.448 221 615 260 5 N and an inch 0.0254 m, by definition.
const NM_OF_LBIN = 4.448_221_615_260_5 * 0.0254;

/** What goes in, how much of it, and who says so. */
export function fillText({ kind, fill, source, by }: Fluid, voice: Voice): string {
  return voice.say('plan.fill', {
    has: fill === undefined ? 'no' : 'yes',
    fill: voice.written(visible(fill ?? '')),
    named: kind === undefined ? 'no' : 'yes',
    kind: visible(kind ?? ''),
    ...originOf({ source, by }),
  });
}

function originOf({ source, by }: { source?: string | undefined; by?: string | undefined }) {
  return {
    sourced: source === undefined ? 'no' : 'yes',
    source: visible(source ?? ''),
    signed: by === undefined ? 'no' : 'yes',
    by: visible(by ?? ''),
  };
}
