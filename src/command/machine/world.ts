import type { Disk } from './disk.ts';
import type { Appender } from './ledger.ts';
import type { Waiting, WaitingWords } from './waiting.ts';

/** What the command touches of the machine; a test gives it another. */
export interface World extends Disk {
  readonly args: readonly string[];
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Whether standard output is a terminal. */
  readonly terminal: boolean;
  /** The lines that somebody types on standard input; absent where nobody can be asked. */
  readonly lines?: () => AsyncIterable<string>;
  /**
   * Serves a folder to the browsers of this machine until it is stopped, and opens what `say`
   * makes of the address; `given` too, to this machine alone. Absent where there is no network.
   */
  readonly serve?: (
    folder: string,
    port: number,
    say: (address: string) => string,
    given?: Handed,
  ) => Promise<void>;
  /** Tells whoever waits how long it takes; absent where nobody waits. */
  readonly waiting?: (words: WaitingWords) => Waiting;
  /** Typesets; absent where nothing is printed. Throws where the typesetter is not installed. */
  readonly press?: (source: string) => Promise<Printed>;
  /** Where jobs are written down; absent where nothing is kept. */
  readonly ledger?: Appender;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

/** A text that the page may ask for, at a path that nobody guesses. */
export interface Handed {
  /** From the root, without a slash before it. */
  readonly path: string;
  readonly text: string;
}

/** A document that has been typeset. */
export interface Printed {
  readonly pdf: Uint8Array;
  readonly pages: number;
  /** Whether it keeps to PDF/UA-1; it does not where no font here has one of its characters. */
  readonly readable: boolean;
}
