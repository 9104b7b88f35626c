import fs from 'node:fs';
import path from 'node:path';

/** Keeps files to which texts are only ever added. A text is on the disk when a call comes back. */
export interface Ledger {
  /** Makes a new file; throws EEXIST where there is one, and leaves that as it is. */
  readonly create: (file: string, text: string) => void;
  /** Adds to a file; throws as Node's `fs` does, and then the text may stand there in part. */
  readonly append: (file: string, text: string) => void;
  readonly now: () => Date;
}

export const LEDGER: Ledger = {
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
    // The name is on the disk when its folder is.
    const folder = fs.openSync(path.dirname(file), 'r');
    try {
      fs.fsyncSync(folder);
    } finally {
      fs.closeSync(folder);
    }
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

// A link never replaces a file; where the disk knows no links (a memory stick), a look must do.
function link(from: string, to: string): void {
  try {
    fs.linkSync(from, to);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code !== 'EPERM' && code !== 'ENOTSUP') throw error;
    fs.copyFileSync(from, to, fs.constants.COPYFILE_EXCL);
  }
}
