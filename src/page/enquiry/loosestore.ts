import { jobMade } from '../../asking/job/index.ts';

/** Where the browser keeps the sheet of one train that stands in no job: the text of a job file. */
export class LooseStore {
  private readonly place: string;

  constructor(aside: string) {
    this.place = `holdturn told ${aside}`;
  }

  /** Undefined where nothing is kept, or nothing may be. */
  text(): string | undefined {
    try {
      return localStorage.getItem(this.place) ?? undefined;
    } catch {
      return undefined;
    }
  }

  /** Whether it is kept: a browser may forbid it, or be full. */
  keep(text: string): boolean {
    try {
      localStorage.setItem(this.place, text);
      return true;
    } catch {
      return false;
    }
  }

  forget(): void {
    try {
      localStorage.removeItem(this.place);
    } catch {
      // Nothing was kept.
    }
  }

  /** Puts what cannot be read where nothing is written over it; gives it back. */
  setAside(text: string): string {
    try {
      localStorage.setItem(`${this.place} as it was ${Date.now()}`, text);
      this.forget();
    } catch {
      // It stands where it stood, until the next is written.
    }
    return text;
  }

  /** Calls when another tab writes or forgets; the returned function ends it. */
  follow(changed: () => void): () => void {
    const look = ({ key }: StorageEvent) => {
      if (key === this.place || key === null) changed();
    };
    addEventListener('storage', look);
    return () => removeEventListener('storage', look);
  }
}

/** A sheet on which nothing stands. */
export function blank(by: string): string {
  return jobMade({ unit: '-', complaint: '', by, at: new Date().toISOString() });
}
