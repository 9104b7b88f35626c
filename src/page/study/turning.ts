import { effect, signal, untracked } from '@preact/signals';
import type { Build } from './build.ts';

/**
 * The clock of what turns. Views that move give `onFrame` a function that writes the angles of
 * the builds to attributes; it is called after each turn, never more than once a frame.
 */
export class Turning {
  /** Whether the engine runs; a hand turns whether it does or not. */
  readonly runs = signal(true);
  /** How fast the turned end turns: slow enough to follow a tooth. */
  readonly turnsPerSecond = signal(0.1);

  private readonly builds: readonly Build[];
  private readonly painters = new Set<() => void>();
  private readonly turnedBy: () => 'engine' | 'hand';
  private frame: number | undefined;
  private paints = false;
  private before: number | undefined;

  constructor(builds: readonly Build[], turnedBy: () => 'engine' | 'hand') {
    this.builds = builds;
    this.turnedBy = turnedBy;
  }

  /** Begins to run; the returned function ends it. */
  start(): () => void {
    const stop = effect(() => {
      if (this.moves()) this.ask();
    });
    return () => {
      stop();
      if (this.frame !== undefined) cancelAnimationFrame(this.frame);
      this.frame = undefined;
    };
  }

  /** Calls `paint` now, and whenever something has turned, until the returned function is called. */
  onFrame(paint: () => void): () => void {
    this.painters.add(paint);
    paint();
    if (untracked(() => this.moves())) this.ask();
    return () => this.painters.delete(paint);
  }

  /** Turns both builds by so many turns of what is turned, and paints at the next frame. */
  turn(turns: number): void {
    for (const build of this.builds) build.turn(turns);
    this.paints = true;
    this.ask();
  }

  /** Sets every angle back to nothing. */
  reset(): void {
    for (const build of this.builds) build.angles.clear();
    this.turn(0);
  }

  private ask(): void {
    this.frame ??= requestAnimationFrame((now) => this.tick(now));
  }

  private tick(now: number): void {
    this.frame = undefined;
    const running = untracked(() => this.moves());
    if (running) {
      // A page that was hidden comes back where it was, not a thousand turns on.
      const seconds = Math.min((now - (this.before ?? now)) / 1000, 0.1);
      for (const build of this.builds) build.turn(seconds * this.turnsPerSecond.peek());
    }
    this.before = now;
    if (running || this.paints) for (const paint of this.painters) paint();
    this.paints = false;
    if (running) this.ask();
  }

  // Whether something goes on turning by itself, and somebody looks: else no frame is asked for.
  private moves(): boolean {
    if (!this.runs.value || this.turnedBy() !== 'engine') return false;
    const turns = this.builds.some(({ answer }) =>
      [...(answer.value?.drawn.values() ?? [])].some(Boolean),
    );
    return turns && this.painters.size > 0;
  }
}
