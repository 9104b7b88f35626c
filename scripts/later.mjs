import path from 'node:path';

const PARTS = ['isAlias', 'isMap', 'isPair', 'isScalar', 'isSeq', 'parseDocument'];

/**
 * The YAML library is set up when something is first asked of it, which is seldom: files in plain
 * YAML are read without it. The package gives Node its older module form, which cannot be
 * trimmed; here it is the other.
 */
export const yamlLater = {
  name: 'yaml-later',
  setup({ onResolve, onLoad }) {
    const whole = path.resolve('node_modules/yaml/browser/index.js');
    onResolve({ filter: /^yaml$/ }, () => ({ path: 'later', namespace: 'yaml' }));
    onResolve({ filter: /^yaml parts$/ }, () => ({ path: 'parts', namespace: 'yaml' }));
    onLoad({ filter: /^parts$/, namespace: 'yaml' }, () => {
      const contents = `export { ${PARTS.join(', ')} } from ${JSON.stringify(whole)};`;
      return { contents, resolveDir: '.' };
    });
    onLoad({ filter: /^later$/, namespace: 'yaml' }, () => {
      const asked = PARTS.map((name) => {
        return `export const ${name} = (...given) => require('yaml parts').${name}(...given);`;
      });
      return { contents: asked.join('\n'), resolveDir: '.' };
    });
  },
};
