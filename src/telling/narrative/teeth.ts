import type { GeometryFinding } from '../../engine/teeth/index.ts';
import { keyOf, visible, type Voice } from '../voice/index.ts';

/** Which teeth do not go together, and what would. */
export function teethText(p: GeometryFinding, voice: Voice): string {
  switch (p.problem) {
    case 'ring does not fit': {
      const { ring, allowance } = p;
      const { from, to } = p.fits;
      const kind = to === null ? 'least' : from === to ? 'one' : 'several';
      const fits = { kind, from, to: to ?? '' };
      return voice.say('problem.ring does not fit', {
        set: visible(p.set),
        ring,
        allowance,
        ...fits,
      });
    }
    case 'planets not evenly spaced': {
      const { planets, sum, by } = p;
      const has = p.counts.length === 0 ? 'no' : 'yes';
      const counts = alternatives(p.counts.map(String), voice);
      return voice.say('problem.planets not evenly spaced', {
        set: visible(p.set),
        rule: voice.say('spacing', { by: keyOf(by) }),
        planets,
        sum,
        has,
        counts,
      });
    }
    case 'planets touch': {
      const { planets, teeth, most } = p;
      // The engine counts in half modules.
      const overlap = modules(p.overlap, voice);
      return voice.say('problem.planets touch', {
        set: visible(p.set),
        planets,
        teeth,
        overlap,
        most,
      });
    }
    case 'centre distances differ': {
      const distances = p.distances.map(({ with: name, distance }) => {
        return voice.say('centre distance', {
          name: visible(name),
          distance: modules(distance, voice),
        });
      });
      return voice.say('problem.centre distances differ', {
        set: visible(p.set),
        name: visible(p.wheel),
        distances: voice.list(distances),
        allowance: p.allowance,
      });
    }
    case 'no room inside': {
      const [outer, inner] = p.teeth;
      return voice.say('problem.no room inside', { name: visible(p.within), inner, outer });
    }
  }
}

// "sun, ring or wheels".
export function alternatives(names: readonly string[], voice: Voice): string {
  const last = names.at(-1) ?? '';
  if (names.length < 2) return last;
  return voice.say('list.either', { a: names.slice(0, -1).join(', '), b: last });
}

// From half modules, in which pitch radii are teeth.
function modules(halves: number, voice: Voice): string {
  return voice.written((halves / 2).toFixed(2));
}
