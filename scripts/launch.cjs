#!/usr/bin/env node
'use strict';
// Becomes dist/cli.cjs: starts dist/command.cjs with the compiled code that the build kept
// beside it, which saves the command a third of its time. Where that code is missing, or was
// made by another Node, the command is compiled as usual.
const fs = require('node:fs');
const path = require('node:path');
const { Script } = require('node:vm');

const filename = path.join(__dirname, 'command.cjs');
const script = new Script(
  `(function(require,__filename){${fs.readFileSync(filename, 'latin1')}\n})`,
  { filename, cachedData: read(`${filename}.compiled`) },
);
const start = () => script.runInThisContext()(require, filename);

if (require.main === module) start();
else module.exports = { script, start };

function read(file) {
  try {
    return fs.readFileSync(file);
  } catch {
    return undefined;
  }
}
