import { effect, type Signal, useComputed } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { readTrain } from '../../engine/trainfile/index.ts';
import { problemText } from '../../telling/narrative/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import { warningsOf } from '../warnings/index.ts';
import type { Editor, Mark } from './editor.ts';
import { words } from './words.ts';

/** A place of the text that is to be shown. */
export interface Goal {
  readonly line: number;
  readonly column: number;
}

interface Props {
  readonly study: Study;
  readonly goal: Signal<Goal | undefined>;
}

/** The text of the file, with what is wrong under it and in a list that leads there. */
export function TextWay({ study, goal }: Props) {
  const say = words();
  const place = useRef<HTMLDivElement>(null);
  const made = useRef<Editor | undefined>(undefined);
  const reading = useComputed(() => readTrain(study.file.text.value));
  const marks = useComputed<readonly Mark[]>(() => {
    const { problems } = reading.value;
    // Warnings come a moment later, with those of the reading among them.
    const found = [
      ...problems.filter(({ severity }) => severity === 'error'),
      ...warningsOf(study).value.map(({ warning }) => warning),
    ];
    return study.file.text.value.trim() === ''
      ? []
      : found.map((problem) => ({
          severity: problem.severity,
          place: problem.place,
          text: problemText(problem, voiceNow()),
        }));
  });
  useEffect(() => {
    let stops: (() => void)[] = [];
    let isGone = false;
    void import('./editor.ts').then(({ Editor: Made }) => {
      if (isGone || !place.current) return;
      const editor = new Made(place.current, study.file, say.label, () => {
        return reading.peek().soFar ?? study.file.train.peek();
      });
      made.current = editor;
      stops = [
        effect(() => editor.show(study.file.text.value)),
        effect(() => editor.mark(marks.value)),
        effect(() => {
          if (!goal.value) return;
          editor.goTo(goal.value.line, goal.value.column);
          goal.value = undefined;
        }),
      ];
    });
    return () => {
      isGone = true;
      for (const stop of stops) stop();
      made.current?.close();
      made.current = undefined;
    };
  }, [study, say.label]);
  return (
    <div class="describe-text">
      <div class="describe-editor">
        <div ref={place} />
        <div class="row">
          <button type="button" onClick={() => made.current?.offer()}>
            {say.offer}
          </button>
        </div>
        <p class="aside">{say.leave}</p>
      </div>
      <section class="describe-problems" aria-label={say.problems}>
        <h2>{say.problems}</h2>
        {marks.value.length === 0 && (
          <p class="aside">{study.file.text.value.trim() === '' ? say.blank : say.noProblems}</p>
        )}
        <ul class="describe-things">
          {marks.value.map((mark) => (
            <li key={`${mark.place.line}:${mark.place.column} ${mark.text}`}>
              <button
                type="button"
                class="describe-thing"
                onClick={() => (goal.value = mark.place)}
              >
                <b>
                  {say.place(mark.place.line)} {say[mark.severity]}
                </b>{' '}
                <span>{mark.text}</span>
              </button>
            </li>
          ))}
        </ul>
      </section>
    </div>
  );
}
