import { type Language, LANGUAGES } from '../../telling/narrative/index.ts';
import { Misuse } from './refusal.ts';
import type { World } from './world.ts';

/** The language of --lang, else of the environment, else English. */
export function languageOf({ args, env }: World): Language {
  const wanted = langOption(args);
  if (wanted !== undefined) {
    const language = known(wanted);
    if (language) return language;
    throw new Misuse('no.language', { given: wanted, all: LANGUAGES.join(', ') });
  }
  return known(env['LC_ALL'] || env['LC_MESSAGES'] || env['LANG'] || '') ?? 'en';
}

// Looked for before anything else is read, so that whatever is wrong is said in it.
function langOption(args: readonly string[]): string | undefined {
  const end = args.indexOf('--');
  const options = end < 0 ? args : args.slice(0, end);
  const joined = options.find((arg) => arg.startsWith('--lang='));
  if (joined !== undefined) return joined.slice('--lang='.length);
  const place = options.indexOf('--lang');
  return place < 0 ? undefined : options[place + 1];
}

// "es", "es_MX.UTF-8", "ES-mx".
function known(locale: string): Language | undefined {
  const code = /^[a-z]+/i.exec(locale)?.[0].toLowerCase();
  return LANGUAGES.find((language) => language === code);
}
