import { type ReadonlySignal, signal, useSignalEffect } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { TestQuestion } from '../../asking/faults/index.ts';
import { ownExperience } from '../desk/index.ts';
import { beside } from '../thread/index.ts';
import type { Enquiry } from '../enquiry/index.ts';

/** A test as a question, by its name, as things stand; the one of before while it is worked out. */
export function useQuestion(
  enquiry: Enquiry,
  test: string | undefined,
): ReadonlySignal<TestQuestion | undefined> {
  const [question, asked] = useMemo(
    () =>
      [signal<TestQuestion | undefined>(undefined), signal<string | undefined>(undefined)] as const,
    [],
  );
  asked.value = test;
  useSignalEffect(() => {
    const [told] = [enquiry.told.value, ownExperience.value];
    const { value: named } = asked;
    let stale = false;
    if (told && named !== undefined) {
      beside('question', { ...told, test: named }).then(
        (its) => {
          if (!stale) question.value = its;
        },
        () => {
          if (!stale) question.value = undefined;
        },
      );
    }
    return () => (stale = true);
  });
  return question;
}
