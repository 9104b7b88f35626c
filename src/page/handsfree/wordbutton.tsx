import { useEffect } from 'preact/hooks';
import { LargeButton } from '../controls/index.ts';
import type { Word } from './word.ts';

type Props = Parameters<typeof LargeButton>[0] & {
  /** What may be said instead of pressing it. */
  readonly word: Word;
};

/** A button that a word presses too, for as long as it is on the screen. */
export function WordButton({ word, ...props }: Props) {
  useWord(word, props.onPress);
  return <LargeButton {...props} />;
}

/** What a word does while what is shown stands on the screen. */
export function useWord(word: Word, press: () => void): void {
  useEffect(() => {
    presses.set(word, press);
    return () => {
      if (presses.get(word) === press) presses.delete(word);
    };
  });
}

/** Presses what a word stands for; false where it stands for nothing now. */
export function pressWord(word: Word): boolean {
  const press = presses.get(word);
  press?.();
  return press !== undefined;
}

const presses = new Map<Word, () => void>();
