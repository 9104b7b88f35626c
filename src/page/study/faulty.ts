import { applyFault, faultNamed } from '../../engine/faults/index.ts';
import type { Train } from '../../engine/train/index.ts';

/** The train with these faults, in the words of `--fault`; undefined where one of them is none of it. */
export function faulty(train: Train | undefined, faults: readonly string[]): Train | undefined {
  if (faults.length === 0) return undefined;
  return faults.reduce<Train | undefined>((built, text) => {
    const named = built && faultNamed(text, built);
    return built && named && 'fault' in named ? applyFault(built, named.fault) : undefined;
  }, train);
}
