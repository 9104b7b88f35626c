import type { Page } from '../../telling/text/index.ts';
import type { World } from '../machine/index.ts';

/** One call of the command: who asks, on what page and in whose words, with which options. */
export interface Session {
  readonly world: World;
  /** The files that were read so far. */
  readonly inputs: ReadonlySet<string>;
  readonly page: Page;
  readonly options: Options;
}

/** As they were typed. */
export interface Options {
  readonly range?: string;
  readonly gear?: string;
  readonly on?: string;
  readonly at?: string;
  readonly hold?: string;
  readonly turn?: string;
  readonly way?: string;
  /** True where no clutch is named. */
  readonly oneWay?: string | true;
  readonly side?: string;
  readonly end?: string;
  readonly lever?: boolean;
  readonly exploded?: boolean;
  readonly seenFrom?: string;
  readonly without?: string;
  readonly fault?: readonly string[];
  readonly load?: readonly string[];
  readonly meshEfficiency?: string;
  readonly pairs?: boolean;
  readonly only?: string;
  readonly experience?: string;
  readonly ask?: boolean;
  readonly pressure?: string;
  readonly torque?: string;
  readonly stallRatio?: string;
  readonly unit?: string;
  readonly train?: string;
  readonly complaint?: string;
  readonly by?: string;
  readonly time?: string;
  readonly predicted?: string;
  readonly because?: string;
  readonly output?: string;
  readonly paper?: string;
  readonly date?: string;
  readonly job?: string;
  readonly seen?: string;
  readonly readings?: string;
  readonly plays?: string;
  readonly trials?: string;
  readonly series?: string;
  readonly all?: boolean;
  readonly inch?: boolean;
  readonly json?: boolean;
  readonly csv?: boolean;
}

/** What is printed on standard output, and the exit code: 1 where the answer is a clear no. */
export interface Reply {
  readonly text: string;
  readonly exit: 0 | 1;
}

export function done(text: string): Reply {
  return { text, exit: 0 };
}

export function json(value: unknown): Reply {
  return done(JSON.stringify(value, null, 2));
}
