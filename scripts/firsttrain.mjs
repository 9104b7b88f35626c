import { build } from 'esbuild';
import fs from 'node:fs';

/**
 * The train that a new screen shows, read when the screen is built: the first picture need not
 * wait for the code that reads files. `import { text, train } from 'virtual:first-train'`.
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
      const { train, problems } = (await reader())(text);
      if (!train || problems.length > 0) throw new Error(`${file} is no sound train`);
      return `export const text = ${JSON.stringify(text)};\nexport const train = ${plain(train)};`;
    },
  };
}

async function reader() {
  const { outputFiles } = await build({
    bundle: true,
    format: 'esm',
    stdin: {
      contents: "export { readTrain } from './src/engine/trainfile/index.ts';",
      resolveDir: '.',
      loader: 'ts',
    },
    write: false,
    platform: 'node',
    alias: { yaml: './node_modules/yaml/browser/index.js' },
  });
  const code = Buffer.from(outputFiles[0].contents).toString('base64');
  return (await import(`data:text/javascript;base64,${code}`)).readTrain;
}

// Plain data as JSON has it; a train that holds more is no train for this.
function plain(train) {
  return JSON.stringify(train, (_, value) => {
    if (value instanceof Map || value instanceof Set || typeof value === 'bigint') {
      throw new TypeError('the first train must be plain data');
    }
    return value;
  });
}
