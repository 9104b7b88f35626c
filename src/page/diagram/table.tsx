import type { Study, Build } from '../study/index.ts';
import { speedText } from '../figure/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';

/** The diagram as a table: every member, how it turns, and hands to hold and turn it by. */
export function DiagramTable({ study, build }: { readonly study: Study; readonly build: Build }) {
  const say = words();
  const voice = voiceNow();
  const assembly = build.assembly.value;
  const answer = build.answer.value;
  if (!assembly || !answer) return null;
  const bodies = assembly.bodies.filter((_, b) => b !== 0 && !assembly.onPins.has(b));
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">{say.member}</th>
          <th scope="col">{say.turns}</th>
          <th scope="col">{say.made}</th>
          <th scope="col">{say.hands}</th>
        </tr>
      </thead>
      <tbody>
        {bodies.map(({ label, names }) => {
          const speed = answer.speeds.get(label);
          return (
            <tr key={label}>
              <th scope="row">{voice.name(label)}</th>
              <td>{speedText(speed)}</td>
              <td>
                {voice.list(names.filter((name) => name !== label).map((n) => voice.name(n)))}
              </td>
              <td>
                <button
                  type="button"
                  aria-pressed={study.held.value.has(label)}
                  aria-label={`${say.hold}: ${voice.name(label)}`}
                  onClick={() => study.lay(label)}
                >
                  {say.hold}
                </button>{' '}
                {([5, -5] as const).map((degrees) => (
                  <button
                    key={degrees}
                    type="button"
                    aria-label={`${say.turn(degrees)}: ${voice.name(label)}`}
                    onClick={() => {
                      if (study.turned.value !== label) study.grab(label);
                      study.turnBy(degrees);
                    }}
                  >
                    {degrees > 0 ? '↻' : '↺'}
                  </button>
                ))}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
