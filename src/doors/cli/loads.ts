import { type OutputLoad, outputsOf, type Train, withLoads } from '../../engine/train/index.ts';
import { visible } from '../../telling/narrative/index.ts';
import { meant, suggestion } from './names.ts';
import { Refusal } from './refusal.ts';

/** The train with its outputs as --load says: held still, or without a load. */
export function trainLoaded(train: Train, texts: readonly string[] = []): Train {
  const outputs = outputsOf(train);
  const loads = new Map(texts.map((text) => loadOf(text, outputs)));
  const bare = outputs.every((name) => (loads.get(name) ?? 'road') !== 'road');
  if (bare) throw new Refusal('bad.loads', { all: outputs.map(visible).join(', ') });
  return withLoads(train, loads);
}

// "left half shaft: held".
function loadOf(text: string, outputs: readonly string[]): readonly [string, OutputLoad] {
  const colon = text.lastIndexOf(':');
  const [given, how] = colon < 0 ? [text, ''] : [text.slice(0, colon), text.slice(colon + 1)];
  const name = meant(given, outputs);
  if (name === undefined) throw new Refusal('no.output', suggestion(given.trim(), outputs));
  const load = meant(how, LOADS);
  if (load === undefined) {
    throw new Refusal('no.load', { given: visible(how.trim()), name: visible(name) });
  }
  return [name, load as OutputLoad];
}

const LOADS: readonly OutputLoad[] = ['road', 'held', 'none'];
