import fs from 'node:fs';
import path from 'node:path';

/** The files of a machine, as the command reads and writes them. Each throws as Node's `fs` does. */
export interface Disk {
  /**
   * A file's text, of '-' what standard input holds. Throws EFBIG where it is, or goes on, beyond
   * `MOST_BYTES`, and ETIMEDOUT where nobody writes into a pipe.
   */
  readonly read: (file: string) => string;
  /** The names in a folder; none where there is no such folder. */
  readonly list: (folder: string) => readonly string[];
  /**
   * Puts bytes into a file, in the place of what it held, which stands until the new is whole.
   * A device or a pipe is written to.
   */
  readonly write: (file: string, bytes: Uint8Array) => void;
  /** The first kilobyte of a file that is there; undefined for none, or one that holds nothing. */
  readonly start: (file: string) => string | undefined;
  /** Whether two names (of links too, and '-' for standard input) are of one file that is there. */
  readonly same: (a: string, b: string) => boolean;
  /** Where a link leads; undefined for what is no link. */
  readonly target: (file: string) => string | undefined;
}

/** No train, job or file of readings comes near it. */
export const MOST_BYTES = 2 ** 24;

/** How long an empty pipe is waited for. */
const PATIENCE_MS = 2000;

export const DISK: Disk = {
  read(file) {
    if (file === '-') return whole(0);
    // A pipe that nobody writes into would be waited for when it is opened.
    const handle = fs.openSync(file, fs.constants.O_RDONLY | fs.constants.O_NONBLOCK);
    try {
      return whole(handle);
    } finally {
      fs.closeSync(handle);
    }
  },
  list: (folder) => (fs.existsSync(folder) ? fs.readdirSync(folder) : []),
  write(file, bytes) {
    const there = stat(file);
    if (there && !there.isFile()) {
      fs.writeFileSync(file, bytes);
      return;
    }
    // A link stays one, and what it leads to is written.
    const place = there ? fs.realpathSync(file) : file;
    const draft = path.join(path.dirname(place), `.${path.basename(place)}.${process.pid}.new`);
    try {
      put(draft, bytes, there?.mode);
      fs.renameSync(draft, place);
    } catch (error) {
      fs.rmSync(draft, { force: true });
      const { code } = error as NodeJS.ErrnoException;
      // A file that one may write in a folder that one may not.
      if (!there || (code !== 'EACCES' && code !== 'EPERM')) throw error;
      fs.writeFileSync(place, bytes);
    }
  },
  start(file) {
    if (!stat(file)?.isFile()) return undefined;
    const handle = fs.openSync(file, 'r');
    try {
      const bytes = Buffer.alloc(1024);
      const size = fs.readSync(handle, bytes);
      return size === 0 ? undefined : bytes.toString('latin1', 0, size);
    } finally {
      fs.closeSync(handle);
    }
  },
  same(a, b) {
    const [one, other] = [stat(a), stat(b)];
    if (!one?.isFile() || !other?.isFile()) return false;
    return one.dev === other.dev && one.ino === other.ino;
  },
  target(file) {
    const isLink = fs.lstatSync(file, { throwIfNoEntry: false })?.isSymbolicLink() ?? false;
    return isLink ? fs.readlinkSync(file) : undefined;
  },
};

function stat(file: string): fs.BigIntStats | undefined {
  try {
    return file === '-'
      ? fs.fstatSync(0, { bigint: true })
      : fs.statSync(file, { bigint: true, throwIfNoEntry: false });
  } catch {
    return undefined; // what cannot be looked at will be said when it is read or written
  }
}

function put(file: string, bytes: Uint8Array, mode: bigint = 0o666n): void {
  const handle = fs.openSync(file, 'wx', Number(mode & 0o777n));
  try {
    fs.writeFileSync(handle, bytes);
    fs.fsyncSync(handle);
  } finally {
    fs.closeSync(handle);
  }
}

// The size is asked before anything is read, and again of what has no size: a pipe, a device.
function whole(handle: number): string {
  const about = fs.fstatSync(handle);
  if (about.size > MOST_BYTES) throw failure('EFBIG');
  const parts: Buffer[] = [];
  const began = Date.now();
  for (let size = 0; ;) {
    const part = Buffer.allocUnsafe(65_536);
    const got = readSome(handle, part);
    // A pipe that nobody has opened yet looks as one at its end.
    const unwritten = got === 0 && size === 0 && about.isFIFO() && handle !== 0;
    if (got === undefined || unwritten) {
      if (unwritten && Date.now() - began > PATIENCE_MS) throw failure('ETIMEDOUT');
      Atomics.wait(PAUSE, 0, 0, 5);
      continue;
    }
    if (got === 0) return Buffer.concat(parts).toString('utf8');
    size += got;
    if (size > MOST_BYTES) throw failure('EFBIG');
    parts.push(part.subarray(0, got));
  }
}

const PAUSE = new Int32Array(new SharedArrayBuffer(4));

// Undefined where whoever writes has nothing yet.
function readSome(handle: number, part: Buffer): number | undefined {
  try {
    return fs.readSync(handle, part);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'EOF') return 0;
    if (code !== 'EAGAIN') throw error;
    return undefined;
  }
}

function failure(code: string): Error {
  return Object.assign(new Error(code), { code });
}
