import { effect, type Signal } from '@preact/signals';
import { LANGUAGES } from '../../../telling/narrative/index.ts';
import { language, seenFrom } from '../words.ts';
import { lightPage, theme, THEMES } from './theme.ts';

/** Recalls how this reader likes the sheet, and remembers it; where nothing is kept, does not. */
export function recallReader(): void {
  const spoken = LANGUAGES.find((known) => navigator.language.startsWith(known));
  if (spoken) language.value = spoken;
  recall('language', language, LANGUAGES);
  recall('seen from', seenFrom, ['input', 'output']);
  recall('theme', theme, THEMES);
  lightPage();
  effect(() => void (document.documentElement.lang = language.value));
}

function recall<T extends string>(name: string, value: Signal<T>, known: readonly T[]): void {
  try {
    const kept = localStorage.getItem(`holdturn ${name}`);
    const found = known.find((one) => one === kept);
    if (found) value.value = found;
  } catch {
    return; // Storage is forbidden here: the sheet begins as it is.
  }
  effect(() => {
    try {
      localStorage.setItem(`holdturn ${name}`, value.value);
    } catch {
      // It is full: the choice holds until the page is closed.
    }
  });
}
