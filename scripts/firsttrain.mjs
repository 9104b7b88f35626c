import { build } from 'esbuild';
import fs from 'node:fs';

/**
 * The train that a new screen shows, read and laid out when the screen is built: the first
 * picture waits neither for the code that reads files nor for the search that arranges one.
 * `import { text, train, drawn } from 'virtual:first-train'`.
 */
export function firstTrain(file) {
  const name = 'virtual:first-train';
  return {
    name: 'first-train',
    resolveId: (id) => (id === name ? `\0${name}` : undefined),
    async load(id) {
      if (id !== `\0${name}`) return undefined;
      this.addWatchFile(file);
      const text = fs.readFileSync(file, 'utf8');
      const { readTrain, stickDiagram } = await engine();
      const { train, problems } = readTrain(text);
      if (!train || problems.length > 0) throw new Error(`${file} is no sound train`);
      return Object.entries({ text, train, drawn: stickDiagram(train) })
        .map(([key, value]) => `export const ${key} = ${plain(value)};\n`)
        .join('');
    },
  };
}

export async function engine() {
  const { outputFiles } = await build({
    bundle: true,
    format: 'esm',
    stdin: {
      contents: `export { readTrain } from './src/engine/trainfile/index.ts';
export { stickDiagram } from './src/telling/stickdiagram/index.ts';`,
      resolveDir: '.',
      loader: 'ts',
    },
    write: false,
    platform: 'node',
    alias: { yaml: './node_modules/yaml/browser/index.js' },
  });
  const code = Buffer.from(outputFiles[0].contents).toString('base64');
  return import(`data:text/javascript;base64,${code}`);
}

// Data as a script writes it: what JSON has, maps, sets and large numbers.
function plain(data) {
  if (typeof data === 'bigint') return `${data}n`;
  if (data instanceof Map) return `new Map(${plain([...data])})`;
  if (data instanceof Set) return `new Set(${plain([...data])})`;
  if (Array.isArray(data)) return `[${data.map(plain).join()}]`;
  if (data === null || typeof data !== 'object') return JSON.stringify(data);
  if (![Object.prototype, null].includes(Object.getPrototypeOf(data))) {
    throw new TypeError(`the first train must be plain data, not ${data.constructor?.name}`);
  }
  const entries = Object.entries(data).filter(([, value]) => value !== undefined);
  return `{${entries.map(([key, value]) => `${JSON.stringify(key)}:${plain(value)}`).join()}}`;
}
