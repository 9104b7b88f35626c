import { useState } from 'preact/hooks';
import { toldText } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { voiceNow } from '../words/index.ts';
import type { Measuring } from './measuring.ts';
import { words } from './words.ts';

/** What was written down of this thing; what is wrong is struck through with its reason, and stays. */
export function WrittenDown({ measuring }: { readonly measuring: Measuring }) {
  const say = words();
  const voice = voiceNow();
  const [asked, ask] = useState<string | undefined>(undefined);
  const all = measuring.written.value;
  if (all.length === 0) return null;
  return (
    <div class="measure-written">
      <h3>{say.written}</h3>
      <ul>
        {all.map(({ id, told, who, struck }) => {
          const text = toldText({ id, told, who, at: '', line: 0 }, voice);
          return (
            <li key={id}>
              {struck === undefined ? (
                <>
                  <span>
                    {text} <span class="aside">{who}</span>
                  </span>
                  <LargeButton
                    pressed={asked === id}
                    label={`${say.strikeWritten}: ${text}`}
                    onPress={() => ask(asked === id ? undefined : id)}
                  >
                    {say.strikeWritten}
                  </LargeButton>
                </>
              ) : (
                <span>
                  <s>{text}</s> <span class="aside">{`${say.struck}: ${struck}`}</span>
                </span>
              )}
              {asked === id && struck === undefined && (
                <div class="measure-why" role="group" aria-label={say.why}>
                  <p>{say.why}</p>
                  {say.reasons.map((reason) => (
                    <LargeButton
                      key={reason}
                      onPress={() => {
                        ask(undefined);
                        void measuring.strike(id, reason);
                      }}
                    >
                      {reason}
                    </LargeButton>
                  ))}
                  <LargeButton onPress={() => ask(undefined)}>{say.cancel}</LargeButton>
                </div>
              )}
            </li>
          );
        })}
      </ul>
    </div>
  );
}
