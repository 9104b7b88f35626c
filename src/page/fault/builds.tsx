import { useSignal, useSignalEffect } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Study } from '../study/index.ts';
import { captions } from '../figure/index.ts';
import { Gears } from '../gears/index.ts';
import { later } from '../controls/index.ts';
import { Diagram } from '../diagram/index.ts';
import { Why } from '../why/index.ts';
import { words } from './words.ts';
import './fault.css';

const FaultBeside = later(async () => (await import('./fault.tsx')).FaultBeside);

interface Props {
  readonly study: Study;
  /** What stands over the pictures where they fill the screen. */
  readonly children?: ComponentChildren;
}

/**
 * The right build with its reasons; beside it the wrong one with its own, moving together. Where
 * there is no room for two, and where they fill the screen, one lies on the other and is flipped.
 */
export function Builds({ study, children }: Props) {
  const say = words();
  const caption = captions();
  const wrong = study.wrong.train.value !== undefined;
  const flipped = useSignal(false);
  // What has just been chosen is what is seen.
  useSignalEffect(() => void (flipped.value = study.faults.value.length > 0));
  return (
    <div class="builds-room">
      <div class={`builds${wrong ? ' builds-two' : ''}${flipped.value ? ' builds-flipped' : ''}`}>
        <div class="builds-over">
          {children}
          <div class="figure-when-large">
            <Gears study={study} />
          </div>
          {wrong && (
            <div class="gears-row builds-flip" role="group" aria-label={say.flip}>
              {[false, true].map((one) => (
                <button
                  key={String(one)}
                  type="button"
                  aria-pressed={flipped.value === one}
                  onClick={() => (flipped.value = one)}
                >
                  {one ? say.wrong : say.right}
                </button>
              ))}
            </div>
          )}
        </div>
        <div class="builds-one builds-right">
          <Diagram study={study} build={study.right} caption={caption.right(study)}>
            <FaultBeside study={study} />
          </Diagram>
          <Why study={study} build={study.right} />
        </div>
        {wrong && (
          <div class="builds-one builds-wrong">
            <Diagram study={study} build={study.wrong} caption={caption.wrong(study)}>
              <div class="figure-when-large">
                <FaultBeside study={study} />
              </div>
            </Diagram>
            <Why study={study} build={study.wrong} />
          </div>
        )}
      </div>
    </div>
  );
}
