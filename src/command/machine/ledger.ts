import fs from 'node:fs';
import path from 'node:path';

/** Keeps files to which texts are only ever added. A text is on the disk when a call comes back. */
export interface Appender {
  /** Makes a new file; throws EEXIST where there is one, and leaves that as it is. */
  readonly create: (file: string, text: string) => void;
  /** Adds to a file; throws as Node's `fs` does, and then the text may stand there in part. */
  readonly append: (file: string, text: string) => void;
  readonly now: () => Date;
}

export const LEDGER: Appender = {
  now: () => new Date(),
  create(file, text) {
    // Under another name first: a file that is there at all is there whole.
    const unborn = `${file}.${process.pid}.new`;
    try {
      add(unborn, text, 'wx');
      link(unborn, file);
    } finally {
      fs.rmSync(unborn, { force: true });
    }
    sync(path.dirname(file));
  },
  append(file, text) {
    // Not made anew where it has gone: an entry without its job helps nobody.
    add(file, text, fs.constants.O_WRONLY | fs.constants.O_APPEND);
  },
};

// One call, which puts all of it behind whatever others have added: no lock is needed.
function add(file: string, text: string, flags: string | number): void {
  const handle = fs.openSync(file, flags);
  try {
    const bytes = Buffer.from(text);
    if (fs.writeSync(handle, bytes) < bytes.length) {
      throw Object.assign(new Error('no room'), { code: 'ENOSPC' });
    }
    fs.fsyncSync(handle);
  } finally {
    fs.closeSync(handle);
  }
}

// A link never replaces a file. Where the disk knows no links (a memory stick, a shared folder),
// the name is taken first, by nobody else from then on, and the whole text then moves into it.
function link(from: string, to: string): void {
  try {
    fs.linkSync(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw error;
    fs.closeSync(fs.openSync(to, 'wx'));
    try {
      fs.renameSync(from, to);
    } catch (cause) {
      fs.rmSync(to);
      throw cause;
    }
  }
}

// A name is on the disk when its folder is; some disks write folders at once and will not be asked.
function sync(folder: string): void {
  let handle: number | undefined;
  try {
    handle = fs.openSync(folder, 'r');
    fs.fsyncSync(handle);
  } catch (error) {
    if (!UNASKED.has((error as NodeJS.ErrnoException).code ?? '')) throw error;
  } finally {
    if (handle !== undefined) fs.closeSync(handle);
  }
}

const UNASKED: ReadonlySet<string> = new Set(['EINVAL', 'ENOTSUP', 'EPERM', 'EACCES', 'EISDIR']);
