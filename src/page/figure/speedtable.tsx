import type { Quantity } from '../../engine/flow/index.ts';
import { voiceNow } from '../words/index.ts';
import { speedText } from './speedtext.ts';

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
