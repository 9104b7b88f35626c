import { useEffect, useRef } from 'preact/hooks';

/**
 * A row of buttons is one stop of the tab key: the arrows go along it, and it is come back to
 * where it was left. To be spread on what holds the buttons.
 */
export function useRoving<Holder extends HTMLElement>() {
  const ref = useRef<Holder>(null);
  const buttons = () => [
    ...(ref.current?.querySelectorAll<HTMLButtonElement>('button:enabled') ?? []),
  ];
  const stopAt = (one: HTMLButtonElement | undefined) => {
    for (const button of buttons()) button.tabIndex = button === one ? 0 : -1;
  };
  useEffect(() => {
    const all = buttons();
    const here = all.find((button) => button === document.activeElement);
    stopAt(here ?? all.find((button) => button.matches(CHOSEN)) ?? all[0]);
  });
  return {
    ref,
    onFocusIn: ({ target }: FocusEvent) => {
      if (target instanceof HTMLButtonElement) stopAt(target);
    },
    onKeyDown: (event: KeyboardEvent) => {
      const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
      const all = buttons();
      const at = all.indexOf(event.target as HTMLButtonElement);
      if (by === undefined || at < 0) return;
      event.preventDefault();
      all[(at + by + all.length) % all.length]?.focus();
    },
  };
}

const CHOSEN = '[aria-current], [aria-pressed="true"]';
