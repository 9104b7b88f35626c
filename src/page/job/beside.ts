import type { Given } from '../../asking/request/index.ts';
import type { Job } from '../../shop/records/index.ts';

/** What of a zip lies beside its job, by the names that the job tells. */
export class Beside {
  private readonly folder: string;
  private readonly train: string | undefined;
  /** Of each name that an entry tells, written plainly, how it stands in the entry. */
  private readonly told: ReadonlyMap<string, string>;

  constructor(path: string, { train, entries }: Job) {
    this.folder = path.replaceAll('\\', '/').replace(/[^/]*$/u, '');
    this.train = train && plain(train.file);
    const names = entries.flatMap(({ told }) => (told?.kind === 'photograph' ? [told.name] : []));
    this.told = new Map(names.map((name) => [plain(name), name]));
  }

  isPicture(path: string): boolean {
    return PICTURE.test(path) || this.told.has(this.within(path));
  }

  /** As an entry tells it: by its whole path, or by its name alone where no other file bears it. */
  nameOf(path: string, all: readonly string[]): string {
    const its = this.within(path);
    const base = baseOf(its);
    const isAlone = all.filter((one) => baseOf(one) === base).length === 1;
    return this.told.get(its) ?? (isAlone ? this.told.get(base) : undefined) ?? its;
  }

  trainIn(texts: ReadonlyMap<string, string>): Given | undefined {
    if (this.train === undefined) return undefined;
    const base = baseOf(this.train);
    const all = [...texts].filter(([path]) => baseOf(path) === base);
    const its = all.find(([path]) => this.within(path) === this.train) ?? all[0];
    return its && { called: base, text: its[1] };
  }

  private within(path: string): string {
    const its = path.replaceAll('\\', '/');
    return plain(its.startsWith(this.folder) ? its.slice(this.folder.length) : its);
  }
}

const PICTURE = /\.(?:jpe?g|png|webp|gif|avif|hei[cf]|tiff?|bmp)$/iu;

// A path with nothing in it that leads elsewhere.
function plain(path: string): string {
  const steps = path.replaceAll('\\', '/').split('/');
  return steps.filter((step) => !['', '.', '..'].includes(step)).join('/');
}

/** The name of a file, without where it lies. */
export function baseOf(path: string): string {
  return path.replace(/^.*[/\\]/u, '');
}
