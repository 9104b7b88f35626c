import { effect, signal } from '@preact/signals';

export const THEMES = ['as the machine', 'light', 'dark'] as const;

/** How the sheet is lit. */
export const theme = signal<(typeof THEMES)[number]>('as the machine');

/** Lights the page so from now on. */
export function lightPage(): void {
  effect(() => {
    const { dataset } = document.documentElement;
    if (theme.value === 'as the machine') delete dataset['theme'];
    else dataset['theme'] = theme.value;
  });
}
