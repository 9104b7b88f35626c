import { useSignal } from '@preact/signals';
import type { Study } from '../study/index.ts';
import { words } from './words.ts';

const STEPS = [1, 5, 15, 90] as const;

/** Runs and stops what is turned, fast or slow, or on by a few degrees to follow one tooth. */
export function Turner({ study }: { readonly study: Study }) {
  const say = words();
  const step = useSignal<number>(15);
  const { turning } = study;
  const runs = turning.runs.value;
  const turnsAMinute = Math.round(turning.turnsPerSecond.value * 60);
  const go = (degrees: number) => {
    turning.runs.value = false;
    turning.turn(degrees / 360);
  };
  return (
    <div class="gears-row">
      <button type="button" aria-pressed={runs} onClick={() => (turning.runs.value = !runs)}>
        {runs ? say.pause : say.run}
      </button>
      <label>
        <span class="unseen">{say.speed}</span>
        <input
          type="range"
          min="1"
          max="60"
          value={turnsAMinute}
          aria-valuetext={say.perMinute(turnsAMinute)}
          onInput={({ currentTarget }) => {
            turning.turnsPerSecond.value = Number(currentTarget.value) / 60;
          }}
        />
      </label>
      <button type="button" onClick={() => go(-step.value)}>
        <span class="unseen">{say.back} </span>−{say.degrees(step.value)}
      </button>
      <button type="button" onClick={() => go(step.value)}>
        <span class="unseen">{say.on} </span>+{say.degrees(step.value)}
      </button>
      <select
        aria-label={say.step}
        value={step.value}
        onChange={({ currentTarget }) => (step.value = Number(currentTarget.value))}
      >
        {STEPS.map((degrees) => (
          <option key={degrees} value={degrees}>
            {say.degrees(degrees)}
          </option>
        ))}
      </select>
      <button type="button" onClick={() => turning.reset()}>
        {say.marks}
      </button>
    </div>
  );
}
