import fs from 'node:fs';
import readline from 'node:readline';
import { run } from './run.ts';

// A reader that has seen enough (`holdturn chart … | head`) closes the pipe: no error of ours.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit(0);
  });
}

void run({
  args: process.argv.slice(2),
  env: process.env,
  terminal: process.stdout.isTTY === true,
  read: (file) => fs.readFileSync(file === '-' ? 0 : file, 'utf8'),
  list: (folder) => (fs.existsSync(folder) ? fs.readdirSync(folder) : []),
  lines: () => readline.createInterface({ input: process.stdin }),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
}).then((code) => {
  process.exitCode = code;
});
