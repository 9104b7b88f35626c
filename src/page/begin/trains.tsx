import { trains } from 'virtual:our-trains';
import { LargeButton } from '../controls/index.ts';
import type { FileDesk } from '../desk/index.ts';
import { room } from '../rooms/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';

/** Our trains, the simplest first: the first sentence of what each is about, and the rest on asking. */
export function Trains({ desk }: { readonly desk: FileDesk }) {
  const say = words();
  const open = async (file: string) => {
    await desk.openOurs(file);
    room.value = 'turn';
  };
  return (
    <ol class="begin-list">
      {trains.map(({ file, meshes, devices, ...its }) => {
        const [name, told] = [voiceNow().train(its), voiceNow().about(its)];
        const line = /^.+?[.:](?= |$)/u.exec(told)?.[0] ?? told;
        return (
          <li key={file}>
            <LargeButton onPress={() => void open(file)}>
              <b>{name}</b> <span class="aside">{say.size(meshes, devices)}</span>
              <span class="begin-does">{line.replace(/:$/u, '.')}</span>
            </LargeButton>
            <details>
              <summary aria-label={`${say.about}: ${name}`}>{say.about}</summary>
              <p>{told}</p>
            </details>
          </li>
        );
      })}
    </ol>
  );
}
