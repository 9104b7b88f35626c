import type { Mesh } from '../../engine/train/index.ts';
import type { Blank, Engagement, Pin } from './blank.ts';
import type { Slice } from './slice.ts';

/** The wheels of an end view, with a module each and each pin at its distance from the axis. */
export interface Layout {
  readonly engagements: readonly Engagement[];
  /** Whether numbers of teeth that do not go together had to be given modules of their own. */
  readonly forced: boolean;
}

/**
 * Lays a slice out, true to its numbers of teeth. Wheels that mesh have one module, and the
 * first mesh's is 1; the steps of a planet may have different ones, so that both agree on the
 * distance of its pin. Wheels on one planet wheel that ask for distances up to a module apart
 * share the middle one, and profile shift does the rest. Where the numbers ask for more than
 * that, the planet wheel is drawn twice, once for each mesh with a module of its own.
 */
export function layOut({ meshes, pins }: Slice): Layout {
  const draft = new Draft(pins);
  return draft.layOut(meshes);
}

class Draft {
  private readonly blanks = new Map<string, Blank>();
  private readonly pins = new Map<string, Pin>();
  private readonly pinned: Slice['pins'];
  private readonly reaches = new Map<Blank, { from: number; to: number }>();
  private readonly planetary: Engagement[] = [];
  private forced = false;

  constructor(pinned: Slice['pins']) {
    this.pinned = pinned;
  }

  layOut(meshes: readonly Mesh[]): Layout {
    const engagements = meshes
      .map((mesh) => this.engage(mesh))
      .filter(({ a, b }) => a.pin !== b.pin)
      .map((engagement) => this.within(engagement));
    const settled: Engagement[] = [];
    const open = [...engagements];
    while (open.length > 0) {
      const next = open.findIndex(({ a, b }) => this.touched(a) || this.touched(b));
      const [engagement] = open.splice(Math.max(0, next), 1) as [Engagement];
      settled.push(this.settle(engagement));
    }
    return { engagements: settled, forced: this.forced };
  }

  private engage({ a, b, kind }: Mesh): Engagement {
    const internal = kind === 'internal';
    const [small, large] = internal && a.teeth > b.teeth ? [b, a] : [a, b];
    return { a: this.blank(small, false), b: this.blank(large, internal), internal };
  }

  private blank({ member, teeth }: Mesh['a'], ring: boolean): Blank {
    const key = `${teeth} ${ring} ${member}`;
    const found = this.blanks.get(key);
    if (found) return found;
    const body = this.pinned.get(member);
    const pin = body === undefined ? undefined : (this.pins.get(body) ?? { body });
    if (pin) this.pins.set(pin.body, pin);
    const made = { member, teeth, ring, module: 0, shift: 0, tip: 0, root: 0, ...(pin && { pin }) };
    this.blanks.set(key, made);
    return made;
  }

  // Meshes of one planet wheel with wheels about the main axis must ask for about one distance.
  private within(engagement: Engagement): Engagement {
    const { planet } = sidesOf(engagement);
    if (!planet) return engagement;
    const reach = reachOf(engagement);
    const reaches = this.reaches.get(planet) ?? { from: reach, to: reach };
    const [from, to] = [Math.min(reach, reaches.from), Math.max(reach, reaches.to)];
    if (to - from > MOST_APART) return this.within(this.forcedApart(engagement, planet));
    this.reaches.set(planet, { from, to });
    return engagement;
  }

  private touched({ module, pin }: Blank): boolean {
    return module > 0 || pin?.radius !== undefined;
  }

  private settle(engagement: Engagement): Engagement {
    const { planet, centre } = sidesOf(engagement);
    const { a, b } = engagement;
    if (!planet || !centre) {
      const module = a.module || b.module || 1;
      if (b.module > 0 && b.module !== module) {
        return this.settle(this.forcedApart(engagement, b));
      }
      a.module = b.module = module;
      this.planetary.push(engagement);
      return engagement;
    }
    const pin = planet.pin as Pin;
    const reach = this.reachFor(planet, engagement);
    const module = planet.module || centre.module;
    if (pin.radius === undefined) {
      const wanted = ((module || 1) * reach) / 2;
      pin.radius = this.besideNeighbours(pin, wanted);
    }
    const needed = (2 * pin.radius) / reach;
    const off = Math.abs(needed / (module || needed) - 1) * reach;
    // Half a module is taken up by profile shift.
    if (module > 0 && off > 1 + 1e-9) return this.settle(this.forcedApart(engagement, planet));
    if (centre.module > 0 && module !== centre.module) {
      return this.settle(this.forcedApart(engagement, centre));
    }
    planet.module = centre.module = module || needed;
    return engagement;
  }

  private reachFor(planet: Blank, engagement: Engagement): number {
    const reaches = this.reaches.get(planet);
    return reaches ? (reaches.from + reaches.to) / 2 : reachOf(engagement);
  }

  // Planets that mesh one another must be near enough for it, and far enough apart.
  private besideNeighbours(pin: Pin, wanted: number): number {
    let radius = wanted;
    for (const { a, b, internal } of this.planetary) {
      if (a.pin !== pin && b.pin !== pin) continue;
      const other = (a.pin === pin ? b.pin : a.pin)?.radius;
      if (other === undefined) continue;
      const apart = ((internal ? b.teeth - a.teeth : a.teeth + b.teeth) * a.module) / 2;
      radius = Math.min(other + apart, Math.max(radius, apart - other, Math.abs(other - apart)));
    }
    return radius;
  }

  private forcedApart(engagement: Engagement, blank: Blank): Engagement {
    this.forced = true;
    const apart = { ...blank, module: 0 };
    return {
      ...engagement,
      a: engagement.a === blank ? apart : engagement.a,
      b: engagement.b === blank ? apart : engagement.b,
    };
  }
}

// Two half modules: a tooth more and a tooth less than what fits.
const MOST_APART = 2;

function sidesOf({ a, b }: Engagement): { planet?: Blank; centre?: Blank } {
  if (a.pin && b.pin) return {};
  return a.pin ? { planet: a, centre: b } : { planet: b, centre: a };
}

/** The distance for which two wheels are made, in half modules. */
function reachOf({ a, b, internal }: Engagement): number {
  return internal ? Math.max(1, b.teeth - a.teeth) : a.teeth + b.teeth;
}
