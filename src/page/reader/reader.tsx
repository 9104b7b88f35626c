import {
  type Language,
  LANGUAGES,
  seenFrom as seenFromText,
} from '../../telling/narrative/index.ts';
import { Menu } from '../controls/index.ts';
import { language, seenFrom, stand, voiceNow } from '../words/index.ts';
import { speak } from './recalled.ts';
import { theme, THEMES } from './theme.ts';
import { words } from './words.ts';

/** For whom the sheet is written: the language, the end from which they look, light or dark. */
export function Reader() {
  const say = words();
  return (
    <Menu label={say.view}>
      <select
        aria-label={say.language}
        value={language.value}
        onChange={({ currentTarget }) => void choose(currentTarget)}
      >
        {LANGUAGES.map((name) => (
          <option key={name} value={name} lang={name}>
            {say.languages[name]}
          </option>
        ))}
      </select>
      <select
        aria-label={say.seenFrom}
        value={seenFrom.value}
        onChange={({ currentTarget }) => (seenFrom.value = currentTarget.value as 'input')}
      >
        {(['input', 'output'] as const).map((end) => (
          <option key={end} value={end}>
            {seenFromText({ ...stand.value, seenFrom: end }, voiceNow())}
          </option>
        ))}
      </select>
      <select
        aria-label={say.theme}
        value={theme.value}
        onChange={({ currentTarget }) => (theme.value = currentTarget.value as 'light')}
      >
        {THEMES.map((name) => (
          <option key={name} value={name}>
            {say.themes[name]}
          </option>
        ))}
      </select>
      <button type="button" onClick={() => print()}>
        {say.print}
      </button>
    </Menu>
  );
}

// What is not to be had is not shown as chosen.
async function choose(box: HTMLSelectElement): Promise<void> {
  await speak(box.value as Language);
  box.value = language.value;
}
