import { Misuse } from './refusal.ts';
import type { World } from './world.ts';

/** The same machine, with the names of the files that were read from it, which nothing may overwrite. */
export interface Watched {
  readonly world: World;
  readonly inputs: ReadonlySet<string>;
}

/** Watches what a call reads; refuses in words where what it prints cannot be put anywhere. */
export function watched(world: World): Watched {
  const inputs = new Set<string>();
  return {
    inputs,
    world: {
      ...world,
      read: (file) => {
        inputs.add(file);
        return world.read(file);
      },
      out: (text) => {
        try {
          world.out(text);
        } catch (error) {
          throw new Misuse('bad.stdout', { reason: reasonOf(error) });
        }
      },
    },
  };
}

/** The machine's own short name for what went wrong: ENOSPC. */
export function reasonOf(error: unknown): string {
  return (error as NodeJS.ErrnoException).code ?? String(error);
}
