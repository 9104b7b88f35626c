import fs from 'node:fs';
import { LEDGER } from '../src/command/machine/ledger.ts';

// A process that adds ready-made entries to a job, as the command does, until it is killed; it says
// the id of each on standard output when it has been told that the entry is kept.
const [job = '', entries = ''] = process.argv.slice(2);
for (const { id, text } of JSON.parse(fs.readFileSync(entries, 'utf8'))) {
  LEDGER.append(job, text);
  fs.writeSync(1, `${id}\n`);
}
setInterval(() => {}, 1000);
