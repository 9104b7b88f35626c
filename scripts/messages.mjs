import { build } from 'esbuild';

/** Messages are ICU text; the command carries them read, so that it need not read them again. */
export const readMessages = {
  name: 'read-messages',
  setup({ onResolve, onLoad }) {
    const parser = '@formatjs/icu-messageformat-parser';
    onResolve({ filter: new RegExp(`^${parser}$`) }, ({ importer }) => {
      return importer.includes('node_modules') ? undefined : { path: parser, namespace: 'read' };
    });
    onLoad({ filter: /./, namespace: 'read' }, async () => {
      const { parse } = await import(parser);
      const read = {};
      for (const text of await messageTexts()) {
        read[text] = JSON.stringify(parse(text, { ignoreTag: true }));
      }
      const contents = `const read=${JSON.stringify(read)};export const parse=(t)=>JSON.parse(read[t]);`;
      return { contents, loader: 'js' };
    });
  },
};

async function messageTexts() {
  const { outputFiles } = await build({
    bundle: true,
    format: 'esm',
    stdin: {
      contents: "export { en } from './en.ts'; export { es } from './es.ts';",
      resolveDir: 'src/telling/narrative',
      loader: 'ts',
    },
    write: false,
  });
  const code = Buffer.from(outputFiles[0].contents).toString('base64');
  const languages = Object.values(await import(`data:text/javascript;base64,${code}`));
  return new Set(languages.flatMap((messages) => Object.values(messages)));
}
