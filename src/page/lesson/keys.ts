import { useEffect } from 'preact/hooks';

/** What the keys of a class do: votes by letter, reveal, and from question to question. */
export interface Presses {
  vote(choice: number, by: 1 | -1): void;
  reveal(): void;
  go(by: 1 | -1): void;
}

export const LETTERS = 'ABCDE';

/**
 * A to E vote, with Shift they take a vote back; space reveals, arrows go on and back. What is
 * being typed into or pulled, and a button under the space bar, keep their keys.
 */
export function useKeys(presses: Presses): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const { key, target, repeat } = event;
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
      const on = target instanceof Element ? target : document.body;
      if (on.closest('input, textarea, select, [contenteditable], [role=slider]')) return;
      const choice = key.length === 1 ? LETTERS.indexOf(key.toUpperCase()) : -1;
      if (choice >= 0 && !repeat) presses.vote(choice, event.shiftKey ? -1 : 1);
      else if (key === ' ' && !on.closest('button, a, summary, label')) presses.reveal();
      else if (key === 'ArrowRight' && !on.closest('.diagram')) presses.go(1);
      else if (key === 'ArrowLeft' && !on.closest('.diagram')) presses.go(-1);
      else return;
      event.preventDefault();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  });
}

/** After a tap the space bar reveals; a button that keys have come to stays under it. */
export function leave({ detail, currentTarget }: MouseEvent): void {
  if (detail > 0 && currentTarget instanceof HTMLElement) currentTarget.blur();
}
