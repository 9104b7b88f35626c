#!/usr/bin/env node
'use strict';
// Becomes dist/cli.cjs: starts dist/command.cjs, or dist/quick.cjs for a verb that answers at
// once, with the compiled code that the build kept beside it, which saves the command a third of
// its time. Where that code is missing, or was made by another Node, it is compiled as usual.
const fs = require('node:fs');
const path = require('node:path');

// The build writes these here: what the version is needs none of the command.
const VERSION = 'VERSION';
const AT_ONCE = ['AT ONCE'];
if (process.argv.length === 3 && process.argv[2] === '--version' && told(`${VERSION}\n`)) return;

const name = AT_ONCE.includes(process.argv[2]) ? 'quick.cjs' : 'command.cjs';
// V8 hurries to optimise, on a second thread, what a call of a second or two hardly uses again:
// half of the work. What runs for long is optimised as ever, a tenth of a second later.
require('node:v8').setFlagsFromString('--interrupt-budget=1000000');
const filename = path.join(__dirname, name);
const { Script } = require('node:vm');
const script = new Script(fs.readFileSync(filename, 'latin1'), {
  filename,
  cachedData: read(`${filename}.compiled`),
});
const start = () => script.runInThisContext()(require, filename, __dirname);

if (require.main === module) start();
else module.exports = { script, start };

// False where it could not be printed: the command says why.
function told(text) {
  try {
    return fs.writeSync(1, text) === text.length;
  } catch {
    return false;
  }
}

function read(file) {
  try {
    return fs.readFileSync(file);
  } catch {
    return undefined;
  }
}
