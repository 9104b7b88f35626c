import { useMemo } from 'preact/hooks';
import {
  type LedgerEntry,
  isSpan,
  type MeshAccount,
  type Quantity,
} from '../../engine/flow/index.ts';
import type { SceneSubject } from '../../telling/scene/index.ts';
import { about, accountsOf, type Build } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import { balanceOf, provedText } from './balance.ts';
import { words } from './words.ts';

interface Props {
  readonly build: Build;
  readonly subjects: readonly SceneSubject[];
}

/** Who pushes whom, and that the numbers balance: the accounts behind a reason. */
export function Proof({ build, subjects }: Props) {
  const say = words();
  const voice = voiceNow();
  const [train, answer] = [build.train.value, build.answer.value];
  const ledger = useMemo(() => train && answer && accountsOf(train, answer), [train, answer]);
  const { bodies, meshes } = ledger ? about(ledger, subjects) : { bodies: [], meshes: [] };
  if (bodies.length + meshes.length === 0) {
    const why = !ledger ? 'unlisted' : subjects.length === 0 ? 'whole' : 'nothing';
    return <p class="aside">{say.noProof[why]}</p>;
  }
  return (
    <div class="why-proof">
      {bodies.map(({ member, entries }) => (
        <table key={member}>
          <caption>{say.on(voice.name(member))}</caption>
          <tbody>
            {entries.map((entry) => (
              <tr key={entry.by + entry.name}>
                <th scope="row">{by(entry)}</th>
                <td>{exact(entry.torque)}</td>
              </tr>
            ))}
            <tr class="why-sum">
              <th scope="row">{say.together}</th>
              <td>0</td>
            </tr>
          </tbody>
        </table>
      ))}
      {meshes.map((mesh, i) => (
        <p key={i}>
          {say.mesh(voice.name(mesh.within))}{' '}
          {isSettled(mesh) ? balanceOf(mesh, voice) : say.unsettled}
        </p>
      ))}
      <p class="aside">{say.signs}</p>
    </div>
  );

  // What a free member does in one of the motions proves nothing.
  function isSettled({ terms }: MeshAccount): boolean {
    return terms.every(({ member }) => {
      const speed = answer?.speeds.get(member);
      return speed === undefined || !isSpan(speed);
    });
  }

  // A proof tells all digits; a range has ends that no sum needs.
  function exact(quantity: Quantity): string {
    return isSpan(quantity) ? voice.quantity(quantity) : provedText(quantity, voice);
  }

  function by({ by: kind, name }: LedgerEntry): string {
    switch (kind) {
      case 'set':
        return say.bySet(voice.name(name));
      case 'device':
        return voice.name(name);
      case 'end':
        return say.byEnd(voice.name(name));
      case 'ground':
        return say.byGround;
    }
  }
}
