'use strict';
// Runs the built command on a train as a person would, then keeps the code that this compiled:
// node scripts/compile.cjs OUT ARGUMENT…
const fs = require('node:fs');

const [out, ...words] = process.argv.splice(2);
process.argv.push(...words);
const { script, start } = require('../dist/cli.cjs');

process.on('exit', () => {
  fs.writeFileSync(`${out}.draft`, script.createCachedData());
  fs.renameSync(`${out}.draft`, out);
});
start();
