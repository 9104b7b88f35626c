import { effect, signal, type Signal } from '@preact/signals';
import { type Language, LANGUAGES, learn } from '../../telling/narrative/index.ts';
import { language, seenFrom } from '../words/index.ts';
import { lightPage, theme, THEMES } from './theme.ts';

/** Recalls how this reader likes the sheet, and remembers it; where nothing is kept, does not. */
export async function recallReader(): Promise<void> {
  const spoken = LANGUAGES.find((known) => navigator.language.startsWith(known));
  const asked = signal(spoken ?? language.value);
  recall('language', asked, LANGUAGES);
  await speak(asked.value);
  effect(() => void (asked.value = language.value));
  recall('seen from', seenFrom, ['input', 'output']);
  recall('theme', theme, THEMES);
  lightPage();
  effect(() => void (document.documentElement.lang = language.value));
}

/** Goes over to a language, once it is there; where it cannot be fetched, all stays as it was. */
export async function speak(wanted: Language): Promise<void> {
  try {
    await learn(wanted);
    language.value = wanted;
  } catch {
    // No network, and nothing kept: the language that is there is better than none.
  }
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
