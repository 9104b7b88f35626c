import fs from 'node:fs';
import { voiceOf } from '../../telling/narrative/index.ts';
import { DISK, LEDGER, waiting } from '../../command/machine/index.ts';
import { run } from './run.ts';

// Node's own streams for standard output and input take longer to load than an answer takes to
// find: files and their numbers do here.
void run({
  args: process.argv.slice(2),
  env: process.env,
  terminal: isDevice(1),
  ...DISK,
  lines: () => process.getBuiltinModule('node:readline').createInterface({ input: process.stdin }),
  serve: async (...where) => (await import('./serve.ts')).serve(...where),
  ledger: LEDGER,
  waiting: (words) => waiting(words),
  press: async (source) => (await import('./press.ts')).press(source),
  out: (text) => write(1, text),
  err: complain,
})
  .catch((error: unknown) => {
    // A broken invariant of ours: the lines of a bundle would say nothing to anybody.
    const reason = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    complain(`holdturn: ${voiceOf('en').say('bad.ours', { reason })}\n`);
    return 3;
  })
  // Everything is written by now: nothing needs to be taken apart in order.
  .then((code) => process.exit(code));

// A terminal, or the null device, where colours hurt nobody.
function isDevice(file: number): boolean {
  try {
    return fs.fstatSync(file).isCharacterDevice();
  } catch {
    return false; // it is closed
  }
}

function complain(text: string): void {
  try {
    write(2, text);
  } catch {
    // There is nowhere left to say it; the exit code does.
  }
}

function write(file: number, text: string): void {
  let rest: Uint8Array = Buffer.from(text);
  while (rest.length > 0) {
    try {
      rest = rest.subarray(fs.writeSync(file, rest));
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      // A reader that has seen enough (`holdturn chart … | head`) closes the pipe.
      if (code === 'EPIPE') process.exit(0);
      if (code !== 'EAGAIN') throw error;
      // One that is slow is waited for.
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5);
    }
  }
}
