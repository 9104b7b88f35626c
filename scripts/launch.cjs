#!/usr/bin/env node
'use strict';
// Becomes dist/cli.cjs: starts dist/command.cjs with the compiled code that the build kept
// beside it, which saves the command a third of its time. Where that code is missing, or was
// made by another Node, the command is compiled as usual.
const fs = require('node:fs');
const path = require('node:path');

// What the version is needs none of the command; the build writes it here.
const VERSION = 'VERSION';
if (process.argv.length === 3 && process.argv[2] === '--version' && told(`${VERSION}\n`)) return;

const filename = path.join(__dirname, 'command.cjs');
const { Script } = require('node:vm');
const script = new Script(
  `(function(require,__filename){${fs.readFileSync(filename, 'latin1')}\n})`,
  { filename, cachedData: read(`${filename}.compiled`) },
);
const start = () => script.runInThisContext()(require, filename);

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
