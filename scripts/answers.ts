/**
 * Writes the expected answers of a new train of ours beside it, by a solver that shares nothing with
 * the engine: `node scripts/run.mjs scripts/answers.ts a-name`. What is there is never overwritten.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { stringify } from 'yaml';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { answersOf } from '../test/answers.ts';
import { loadPeers, type Peer } from '../test/peers.ts';

const [name] = process.argv.slice(2);
if (name === undefined) throw new Error('say which train: a-name, of trains/a-name.train.yaml');
const { train, problems } = readTrain(readFileSync(`trains/${name}.train.yaml`, 'utf8'));
if (!train || problems.length > 0) throw new Error(`holdturn check trains/${name}.train.yaml`);
const [peer] = await loadPeers();
const text = stringify({ ranges: answersOf(train, peer as Peer) }, { flowCollectionPadding: true });
writeFileSync(
  `trains/${name}.expected.yaml`,
  `# Worked out by a general-purpose solver, on rows made of the teeth alone (scripts/answers.ts).
# Ratios are input speed / output speed. Drive: the input turns clockwise; coast: the
# output turns the way the healthy gear drives it.
${text}`,
  { flag: 'wx' },
);
console.log(`trains/${name}.expected.yaml: read it before you commit it.`);
