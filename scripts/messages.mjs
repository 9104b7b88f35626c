import { build } from 'esbuild';
import { parse } from '@formatjs/icu-messageformat-parser';

/**
 * The command carries no messages: it finds them beside itself, a file a language, read as ICU
 * text already (`messageFiles`), and takes from there what it says.
 */
export const messagesBeside = {
  name: 'messages-beside',
  setup({ onLoad }) {
    onLoad({ filter: /\/voice\/message\.ts$/ }, () => ({
      contents: `export async function learn() {}\n${MESSAGE_OF}`,
    }));
  },
};

/**
 * The page carries English; another language is a file of its own, fetched when it is asked for.
 * What the command alone says stands in neither.
 */
export const messagesLater = {
  name: 'messages-later',
  enforce: 'pre',
  async load(id) {
    if (id.endsWith('/voice/message.ts')) return LEARNT;
    const language = /\/voice\/(e[ns])\.ts$/.exec(id)?.[1];
    if (language === undefined) return undefined;
    this.addWatchFile(id);
    const texts = Object.entries((await messages())[language]);
    const said = Object.fromEntries(texts.filter(([its]) => !OF_THE_COMMAND.test(its)));
    return `export const ${language} = ${JSON.stringify(said)};`;
  },
};

/** Messages that nobody but the command says; a test holds the others to it. */
export const OF_THE_COMMAND =
  /^(?:cli|option|verb|ask|describe|screen)\.|^(?:drawn|sheet|job)\.(?:.* written|printed|written)/;

const LEARNT = `
import { parse } from '@formatjs/icu-messageformat-parser';
import { en } from './en.ts';

const texts = { en };
const later = { es: async () => (await import('./es.ts')).es };

export async function learn(language) {
  texts[language] ??= await later[language]();
}

export function messageOf(language, id) {
  const text = texts[language][id];
  if (text === undefined) throw new Error('no message ' + id + ' in ' + language + '.ts');
  return /[{']/.test(text) ? parse(text, { ignoreTag: true }) : text;
}
`;

/** What stands in the file of each language: a message a line, its id, a tab, and JSON. */
export async function messageFiles() {
  const all = await messages();
  mustBeWhole(all);
  return Object.entries(all).map(([language, texts]) => {
    const lines = Object.entries(texts).map(([id, text]) => {
      const message = /[{']/.test(text) ? parse(text, { ignoreTag: true }) : text;
      return `${id}\t${JSON.stringify(message)}\n`;
    });
    return { name: `messages.${language}`, text: lines.join('') };
  });
}

/** Throws where a language lacks a message of English's, and says which. */
export function mustBeWhole({ en, ...others }) {
  for (const [language, texts] of Object.entries(others)) {
    const lacking = Object.keys(en).find((id) => texts[id] === undefined);
    if (lacking !== undefined) throw new Error(`no message ${lacking} in ${language}.ts`);
  }
}

const MESSAGE_OF = `
const tables = new Map();

export function messageOf(language, id) {
  let table = tables.get(language);
  if (!table) tables.set(language, (table = tableOf(language)));
  const message = table.get(id);
  if (message === undefined) throw new Error('no message ' + id + ' in ' + language + '.ts');
  return JSON.parse(message);
}

function tableOf(language) {
  const file = require('node:path').join(__dirname, 'messages.' + language);
  const table = new Map();
  const text = require('node:fs').readFileSync(file, 'latin1');
  for (let from = 0; from < text.length; ) {
    const tab = text.indexOf('\\t', from);
    const end = text.indexOf('\\n', tab);
    table.set(text.slice(from, tab), text.slice(tab + 1, end));
    from = end + 1;
  }
  return table;
}
`;

async function messages() {
  const { outputFiles } = await build({
    bundle: true,
    format: 'esm',
    stdin: {
      contents: "export { en } from './en.ts'; export { es } from './es.ts';",
      resolveDir: 'src/telling/voice',
      loader: 'ts',
    },
    write: false,
  });
  const code = Buffer.from(outputFiles[0].contents).toString('base64');
  return { ...(await import(`data:text/javascript;base64,${code}`)) };
}
