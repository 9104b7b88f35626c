import { newWord } from '../../engine/words/index.ts';
import { OPTIONS, SHEETS, VERBS } from './verbs.ts';

/**
 * What was typed, with every verb, sheet and option that had another name before by its new one;
 * `tell` is called once for each of them.
 */
export function renamed(
  args: readonly string[],
  tell: (old: string, now: string) => void,
): string[] {
  const told = new Set<string>();
  const known = (now: string | undefined, names: object | readonly string[]) => {
    return now !== undefined && (Array.isArray(names) ? names.includes(now) : now in names);
  };
  const change = (old: string, now: string): string => {
    if (!told.has(old)) tell(old, now);
    told.add(old);
    return now;
  };
  return args.map((arg, place) => {
    const [, dashes = '', word = '', rest = ''] = /^(--)?([^=]*)(.*)$/su.exec(arg) ?? [];
    const now = newWord(word);
    if (now === undefined) return arg;
    if (dashes === '--') {
      return known(now, OPTIONS) ? `${change(`--${word}`, `--${now}`)}${rest}` : arg;
    }
    if (place === 0 && known(now, VERBS)) return change(word, now);
    const isSheet = place === 1 && args[0] === 'sheet' && known(now, SHEETS);
    return isSheet ? change(word, now) : arg;
  });
}
