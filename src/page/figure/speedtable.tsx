import { isSpan, type Quantity } from '../../engine/flow/index.ts';
import { spoken, voiceNow } from '../words/index.ts';

interface Props {
  readonly members: readonly string[];
  /** None, where the answer is that nothing can turn. */
  readonly speeds: ReadonlyMap<string, Quantity> | undefined;
}

/** Members, and how each turns: the twin of a picture in which they turn. */
export function SpeedTable({ members, speeds }: Props) {
  const voice = voiceNow();
  return (
    <table>
      <tbody>
        {members.map((member) => (
          <tr key={member}>
            <th scope="row">{voice.name(member)}</th>
            <td>{speedText(speeds?.get(member))}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** How a member turns: its speed, or how far it is free to. */
export function speedText(speed: Quantity | undefined): string {
  const voice = voiceNow();
  const say = words();
  if (speed === undefined) return say.still;
  return isSpan(speed) ? say.free(voice.quantity(speed)) : voice.number(speed);
}

const words = spoken({
  en: { still: 'stands still, or locks', free: (span: string) => `free: ${span}` },
  es: { still: 'quieto, o se bloquea', free: (span: string) => `libre: ${span}` },
});
