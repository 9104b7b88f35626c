import type { Fact, Working } from '../../engine/flow/index.ts';
import { doingOf, sentences } from '../../telling/narrative/index.ts';
import { stand, voiceNow } from '../words/index.ts';
import { words } from './words.ts';

interface Props {
  readonly working: Working;
  readonly device: string;
}

/** Why a device does in a gear what the chart's cell says, in the engine's own sentences. */
export function CellReason({ working, device }: Props) {
  const say = words();
  const told = sentences(working.facts, voiceNow(), stand.value);
  const reasons = working.facts.flatMap((fact, i) => (speaksOf(fact, device) ? [told[i]] : []));
  const work = working.devices.get(device);
  return (
    <div class="chart-reason" role="status">
      <p>
        <b>{voiceNow().called(device)}</b>: {work && say.does[doingOf(work)]}
        {work && `. ${say.torque(voiceNow().quantity(work.torque))}`}
        {work && ` ${say.slip(voiceNow().quantity(work.slip))}`}
      </p>
      {reasons.map((reason) => (
        <p key={reason}>{reason}</p>
      ))}
    </div>
  );
}

function speaksOf(fact: Fact, device: string): boolean {
  if ('device' in fact) return fact.device === device;
  if (fact.fact === 'shares') return fact.devices.includes(device);
  return fact.fact === 'engine braking' && fact.overRunning.includes(device);
}
