import fs from 'node:fs';
import { ask, words } from '../src/doors/cli/asked.ts';
import { callOf } from '../src/command/typed/program.ts';
import { voiceOf } from '../src/telling/narrative/index.ts';

/** A fenced block of a page. */
export interface Block {
  /** Of the opening fence, counted from 1. */
  readonly line: number;
  readonly language: string;
  readonly text: string;
}

export function blocksOf(page: string): Block[] {
  return [...page.matchAll(/^```(\w*)\n([^]*?)^```$/gmu)].map(
    ({ index, 1: language, 2: text }) => ({
      line: page.slice(0, index).split('\n').length,
      language: language as string,
      text: text as string,
    }),
  );
}

/**
 * Does in the folder where the process stands what the blocks of a page tell its reader to do:
 * writes its files, types its commands and compares what it quotes of their answers. Returns what
 * is wrong, each with its line. A block of
 *
 * - `yaml` is a file, named by its first line (`# seen.yaml`), or goes behind one (`# behind …`);
 * - `sh` is typed, a line a command;
 * - `text` is quoted from the answers to the `sh` before it, lines that follow one another;
 * - `ts` is a program: `programsOf` gives it.
 */
export async function follow(blocks: readonly Block[]): Promise<string[]> {
  const wrong: string[] = [];
  let answered = '';
  for (const { line, language, text } of blocks) {
    const against = (what: string) => void wrong.push(`line ${line}: ${what}`);
    if (language === 'yaml') {
      const [, behind, file] =
        /^# (behind )?(\S+\.yaml)$/mu.exec(text.split('\n', 1)[0] ?? '') ?? [];
      if (file === undefined) against('a file without a name');
      else if (behind) fs.appendFileSync(file, text);
      else fs.writeFileSync(file, text);
    } else if (language === 'sh') {
      answered = '';
      // One after another, as they are typed.
      for (const typed of commandsIn(text)) {
        // eslint-disable-next-line no-await-in-loop
        const { told, fault } = await type(typed);
        if (fault) against(`${typed}: ${fault}`);
        answered += told;
      }
    } else if (language === 'text') {
      if (!answered.includes(text)) against(`nobody answers\n${text}`);
    } else if (language !== 'ts') against(`what is ${language || 'a block of no language'}?`);
  }
  return wrong;
}

/** A program of a page, and what it says that it prints: of each line the remark behind it. */
export interface Program {
  readonly line: number;
  readonly source: string;
  readonly prints: string;
}

/** What is printed by a program that is built of `texts` too: files that it takes as read. */
export function programsOf(page: string, texts: Readonly<Record<string, string>>): Program[] {
  return blocksOf(page)
    .filter(({ language }) => language === 'ts')
    .map(({ line, text }) => ({
      line,
      source: text.replaceAll(/^declare const (\w+): string;.*$/gmu, (_, name: string) => {
        if (texts[name] === undefined) throw new Error(`line ${line}: what is ${name}?`);
        return `const ${name}: string = ${JSON.stringify(texts[name])};`;
      }),
      prints: [...text.matchAll(/console\.log.*; \/\/ (.*)$/gmu)]
        .map(([, its]) => `${its}\n`)
        .join(''),
    }));
}

/** The page, each quotation as its command answers now from the same first line on. */
export async function requoted(page: string): Promise<string> {
  let [answered, now] = ['', page];
  for (const { language, text } of blocksOf(page)) {
    if (language === 'sh') {
      answered = '';
      for (const typed of commandsIn(text)) {
        // eslint-disable-next-line no-await-in-loop
        answered += (await type(typed)).told;
      }
    } else if (language === 'text' && !answered.includes(text)) {
      const [first = '', ...rest] = text.trimEnd().split('\n');
      const lines = answered.split('\n');
      const at = lines.indexOf(first);
      if (at >= 0)
        now = now.replace(text, () => `${lines.slice(at, at + rest.length + 1).join('\n')}\n`);
    }
  }
  return now;
}

function commandsIn(text: string): string[] {
  return text
    .replaceAll(/\\\n\s*/gu, '')
    .split('\n')
    .map((line) => line.replace(/(?:^|\s+)#(?=\s)[^"]*$/u, '').trim())
    .filter((line) => line !== '');
}

// A command of the checkout is only looked up, and a page is not opened.
async function type(typed: string): Promise<{ told: string; fault?: string }> {
  const [program = '', ...args] = words(typed);
  if (program === 'cp' && args.length === 2) {
    fs.copyFileSync(args[0] as string, args[1] as string);
    return { told: '' };
  }
  if (program === './check' || program === './prove') return { told: '' };
  if (program !== './holdturn') return { told: '', fault: 'no command of ours' };
  const voice = voiceOf('en');
  if (callOf(args, voice).verb === 'screen') return { told: '' };
  const { out, err, exit } = await ask(typed.slice('./holdturn'.length));
  // A reader's page keeps no number and its unit together by hidden signs.
  return { told: out.replaceAll(/[\u00A0\u202F]/gu, ' '), ...(exit > 1 && { fault: err.trim() }) };
}
