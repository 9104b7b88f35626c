import type { Belief } from '../suspects/index.ts';
import type { Cause, Inquiry } from '../cause/index.ts';

/** How much of what is believed is of a device, of a kind of cause. */
export class Suspected {
  private readonly each: readonly (readonly [Cause, number])[];

  constructor({ causes }: Inquiry, belief: Belief) {
    this.each = causes.map((cause, c) => [cause, belief.causes[c] as number]);
  }

  of(name: string): number {
    return this.sum(({ faults }) => {
      return faults.some((fault) => 'device' in fault && fault.device === name);
    });
  }

  kind(...words: readonly Cause['cause'][]): number {
    return this.sum(({ cause }) => words.includes(cause));
  }

  ofLine(): number {
    return this.kind('low line pressure', 'high line pressure');
  }

  ofConverter(): number {
    return this.kind('stator slips', 'engine weak');
  }

  private sum(among: (cause: Cause) => boolean): number {
    return this.each.reduce((sum, [cause, chance]) => (among(cause) ? sum + chance : sum), 0);
  }
}
