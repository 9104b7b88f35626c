import { angleAt, baseHalfAngle, baseRadius, type Blank, type Engagement } from './blank.ts';
import { angleOfInv, inv, PRESSURE_ANGLE } from './involute.ts';

/**
 * Gives each wheel its tips and roots, when every pin has its place. Proportions are standard
 * (addendum 1 module, a quarter of a module between tip and root), except:
 * a wheel with fewer than 17 teeth would be undercut, and gets a positive profile shift, which
 * its mates take back as far as they can without being undercut themselves; a tip that would
 * reach further down a mate's flank than its base circle is shortened to there; a tip is
 * shortened before it becomes a point, and where it would foul the tips of a ring gear. What is
 * still below a base circle is drawn radial. So no wheel is drawn undercut, and wheels with
 * few teeth are drawn with shorter ones than could be cut.
 */
export function trimTeeth(
  engagements: readonly Engagement[],
  distance: (e: Engagement) => number,
): void {
  const blanks = new Set(engagements.flatMap(({ a, b }) => [a, b]));
  for (const blank of blanks) {
    const { module, teeth, shift, ring } = blank;
    blank.tip = module * (teeth / 2 + shift + (ring ? -1 : 1));
    if (ring) blank.tip = Math.max(blank.tip, baseRadius(blank));
    else while (isPoint(blank)) blank.tip -= 0.02 * module;
  }
  for (const engagement of engagements) shorten(engagement, distance(engagement));
  for (const blank of blanks) blank.root = rootOf(blank, engagements, distance);
}

/** The distance at which two wheels with their shifts mesh without play. */
export function closeDistance({ a, b, internal }: Engagement): number {
  const sign = internal ? -1 : 1;
  const teeth = b.teeth + sign * a.teeth;
  const shifts = b.shift + sign * a.shift;
  const angle = angleOfInv(
    inv(PRESSURE_ANGLE) + (2 * Math.tan(PRESSURE_ANGLE) * shifts) / Math.max(1, teeth),
  );
  return (a.module * teeth * Math.cos(PRESSURE_ANGLE)) / (2 * Math.cos(angle));
}

// Without play: inv α' = inv α + 2 tan α·(x₁ ± x₂)/(z₁ ± z₂), with minus for a ring less its
// planet; α' is the pressure angle at the distance. Stock-gear technical handbook, section 4
// (from memory). Solved for what the shifts must come to.
function shiftsFor(engagement: Engagement, distance: number): number {
  const { a, b, internal } = engagement;
  const teeth = internal ? b.teeth - a.teeth : a.teeth + b.teeth;
  const angle = workingAngle(engagement, distance);
  return ((inv(angle) - inv(PRESSURE_ANGLE)) * teeth) / (2 * Math.tan(PRESSURE_ANGLE));
}

function workingAngle({ a, b, internal }: Engagement, distance: number): number {
  const bases = internal ? baseRadius(b) - baseRadius(a) : baseRadius(a) + baseRadius(b);
  return Math.acos(Math.min(1, bases / distance));
}

/**
 * Gives each wheel its profile shift, so that meshes are close at their distances; where a
 * distance is not fixed, it follows from the shifts by `closeDistance`.
 */
export function shiftTeeth(
  engagements: readonly Engagement[],
  distance: (e: Engagement) => number | undefined,
): void {
  const sums = engagements.map((engagement) => {
    const fixed = distance(engagement);
    return fixed === undefined ? undefined : shiftsFor(engagement, fixed);
  });
  const set = new Set<Blank>();
  // What each planet wheel would like, and what its mates leave it.
  const lowest = (blank: Blank) => (blank.ring ? -MOST_SHIFT : 1 - blank.teeth / UNDERCUT);
  const choose = (blank: Blank) => {
    let from = Math.min(MOST_SHIFT, lowest(blank));
    let to = MOST_SHIFT;
    engagements.forEach(({ a, b, internal }, k) => {
      const sum = sums[k];
      if (sum === undefined || internal || (a !== blank && b !== blank)) return;
      const mate = a === blank ? b : a;
      to = Math.min(to, sum - lowest(mate));
    });
    if (from > to) from = to = (from + to) / 2;
    blank.shift = Math.min(to, Math.max(from, 0));
    set.add(blank);
  };
  engagements.forEach((engagement, k) => {
    const { a, b, internal } = engagement;
    const sum = sums[k];
    if (sum === undefined) {
      for (const blank of [a, b]) if (!set.has(blank)) choose(blank);
      return;
    }
    if (!set.has(a) && !set.has(b)) choose(a.pin || internal ? a : b);
    if (set.has(a) && set.has(b)) return;
    if (set.has(a)) b.shift = internal ? sum + a.shift : sum - a.shift;
    else a.shift = internal ? b.shift - sum : sum - b.shift;
    set.add(a).add(b);
  });
}

/** Below this many teeth a rack of standard teeth undercuts: 2/sin² 20°, rounded. */
const UNDERCUT = 17;
const MOST_SHIFT = 0.6;

function isPoint(blank: Blank): boolean {
  const half = baseHalfAngle(blank) - inv(angleAt(blank, blank.tip));
  return 2 * half * blank.tip < 0.25 * blank.module && blank.tip > baseRadius(blank);
}

// Contact runs along the line that touches both base circles, a·sin α' long between them. A tip
// that meets it beyond the far end would meet the mate below its base circle.
function shorten(engagement: Engagement, distance: number): void {
  const { a, b, internal } = engagement;
  const line = distance * Math.sin(workingAngle(engagement, distance));
  if (!internal) {
    a.tip = Math.min(a.tip, Math.hypot(baseRadius(a), line));
    b.tip = Math.min(b.tip, Math.hypot(baseRadius(b), line));
    return;
  }
  b.tip = Math.max(b.tip, Math.hypot(baseRadius(b), line));
  for (let round = 0; round < 60 && fouls(engagement, distance); round++) {
    a.tip -= 0.02 * a.module;
    b.tip += 0.02 * b.module;
  }
}

// Whether the tips of a planet and of a ring meet outside the mesh. Where their tip circles
// cross, the planet's tip must be ahead of the ring's tooth (trochoid interference; stock-gear
// technical handbook, section on internal gears, from memory):
// θ₁·z₁/z₂ + inv α' − inv α₂ ≥ θ₂, of angles counted from the line of centres.
function fouls(engagement: Engagement, distance: number): boolean {
  const { a, b } = engagement;
  const cosA = (b.tip ** 2 - a.tip ** 2 - distance ** 2) / (2 * distance * a.tip);
  const cosB = (distance ** 2 + b.tip ** 2 - a.tip ** 2) / (2 * distance * b.tip);
  if (Math.abs(cosA) >= 1 || Math.abs(cosB) >= 1) return false;
  const working = inv(workingAngle(engagement, distance));
  const angleA = Math.acos(cosA) + inv(angleAt(a, a.tip)) - working;
  const ahead = (angleA * a.teeth) / b.teeth + working - inv(angleAt(b, b.tip));
  return ahead < Math.acos(cosB);
}

// A root leaves a gap to every tip that comes there.
function rootOf(
  blank: Blank,
  engagements: readonly Engagement[],
  distance: (e: Engagement) => number,
): number {
  const gap = CLEARANCE * blank.module;
  const roots = engagements.flatMap((engagement) => {
    const { a, b, internal } = engagement;
    if (a !== blank && b !== blank) return [];
    const apart = distance(engagement);
    if (blank.ring) return [apart + a.tip + gap];
    return [internal ? b.tip - apart - gap : apart - (a === blank ? b : a).tip - gap];
  });
  if (blank.ring) return Math.max(...roots, blank.tip + gap);
  return Math.max(0.12 * blank.module * blank.teeth, Math.min(...roots, blank.tip - gap));
}

const CLEARANCE = 0.25;
