import { type OutputLoad, outputsOf, type Train, withLoads } from '../../engine/train/index.ts';
import { meant, unknown } from './names.ts';
import { NoAnswer } from './refused.ts';

/** The train with its outputs as texts like "left half shaft: held" say. */
export function trainLoaded(train: Train, texts: readonly string[] = []): Train {
  const outputs = outputsOf(train);
  const loads = new Map<string, OutputLoad>();
  for (const [output, load] of texts.map((text) => loadOf(train, text, outputs))) {
    if (loads.has(output)) throw new NoAnswer({ refused: 'bad.load twice', output });
    loads.set(output, load);
  }
  const bare = outputs.every((name) => (loads.get(name) ?? 'road') !== 'road');
  if (bare) throw new NoAnswer({ refused: 'bad.loads', outputs });
  return withLoads(train, loads);
}

function loadOf(
  train: Train,
  text: string,
  outputs: readonly string[],
): readonly [string, OutputLoad] {
  const colon = text.lastIndexOf(':');
  const [given, how] = colon < 0 ? [text, ''] : [text.slice(0, colon), text.slice(colon + 1)];
  const name = meant(given, outputs, train);
  if (name === undefined) {
    throw new NoAnswer({ refused: 'no.output', ...unknown(given.trim(), outputs) });
  }
  const load = meant(how, LOADS);
  if (load === undefined) {
    throw new NoAnswer({ refused: 'no.load', given: how.trim(), output: name });
  }
  return [name, load as OutputLoad];
}

const LOADS: readonly OutputLoad[] = ['road', 'held', 'none'];
