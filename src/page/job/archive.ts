import { strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import type { Given } from '../../asking/request/index.ts';
import { readJob } from '../../shop/records/index.ts';
import { baseOf, Beside } from './beside.ts';
import { isBare, picture } from './picture.ts';
import type { Photograph } from './store.ts';

/** A job with what lies beside it: unpacked, a folder as the command has it. */
export interface Archive {
  /** What its file is called. */
  readonly name: string;
  readonly text: string;
  /** Its train, by the name that the job tells. */
  readonly train?: Given | undefined;
  /** By the names that its entries tell. */
  readonly pictures: readonly Photograph[];
}

/** A job as a file brings it. */
export interface Brought extends Archive {
  /** Pictures that this browser cannot draw anew: they are kept as they came. */
  readonly asCame: readonly string[];
  /** Files of the job's that were too large to take in. */
  readonly leftOut: readonly string[];
}

/** A zip that holds several jobs: which one is meant, it does not say. */
export class SeveralJobs extends Error {
  readonly names: readonly string[];

  constructor(names: readonly string[]) {
    super('several jobs');
    this.names = names;
  }
}

/** A job and what lies beside it in one file. */
export function zipOf({ name, text, train, pictures }: Archive): Blob {
  const files: Zippable = { [name]: [strToU8(text), { level: 6 }] };
  if (train) files[train.called] = [strToU8(train.text), { level: 6 }];
  // A picture is as small as it gets.
  for (const its of pictures) files[its.name] = [its.bytes, { level: 0 }];
  const bytes = zipSync(files) as Uint8Array<ArrayBuffer>;
  return new Blob([bytes], { type: 'application/zip' });
}

/**
 * Reads a job file, or a zip with one, wherever in it that stands. Throws a RangeError where it is
 * larger than any job, a TypeError where it is neither, or its text is no UTF-8, `SeveralJobs` where
 * it holds more than one.
 */
export async function broughtBy(file: File): Promise<Brought> {
  if (file.size > MOST_BYTES) throw new RangeError('too large');
  const bytes = new Uint8Array(await file.arrayBuffer());
  const none = { pictures: [], asCame: [], leftOut: [] };
  if (!isZip(bytes)) return { name: file.name, text: decoded(bytes), ...none };
  const texts = new Map<string, string>();
  for (const [path, its] of unpacked(bytes, (name) => TEXT.test(name)).files) {
    const text = textIn(its);
    if (text !== undefined) texts.set(path, text);
  }
  const jobs = [...texts].flatMap(([path, text]) => {
    const { job } = readJob(text);
    return job ? [{ path, text, job }] : [];
  });
  const [first, ...others] = jobs;
  if (first && others.length > 0) throw new SeveralJobs(jobs.map(({ path }) => path));
  if (!first) {
    const [odd] = texts;
    if (!odd) throw new TypeError('no job');
    return { name: baseOf(odd[0]), text: odd[1], ...none };
  }
  const { path, text, job } = first;
  const beside = new Beside(path, job);
  const { files, leftOut } = unpacked(bytes, (name) => beside.isPicture(name));
  const paths = [...files.keys()];
  const pictures = await Promise.all(
    [...files].map(async ([its, raw]) => pictureOf(beside.nameOf(its, paths), raw)),
  );
  return {
    name: baseOf(path),
    text,
    train: beside.trainIn(texts),
    pictures: pictures.map(({ name, bytes: kept }) => ({ name, bytes: kept })),
    asCame: pictures.flatMap(({ name, drawn }) => (drawn ? [] : [name])),
    leftOut,
  };
}

/** So many photographs nobody takes. */
const MOST_BYTES = 2 ** 29;

const TEXT = /\.ya?ml$/iu;

// A zip may say anything of what is in it: only what can be of a job is unpacked, and no more than
// a job has.
function unpacked(
  bytes: Uint8Array,
  isWanted: (name: string) => boolean,
): { readonly files: ReadonlyMap<string, Uint8Array>; readonly leftOut: readonly string[] } {
  let left = MOST_BYTES;
  const leftOut: string[] = [];
  try {
    const files = unzipSync(bytes, {
      filter({ name, originalSize }) {
        if (name.endsWith('/') || !isWanted(name)) return false;
        if (originalSize > left) leftOut.push(name);
        else left -= originalSize;
        return leftOut.at(-1) !== name;
      },
    });
    return { files: new Map(Object.entries(files)), leftOut };
  } catch (error) {
    throw new TypeError('no zip', { cause: error });
  }
}

// Another's picture is drawn anew where it says more than it shows.
async function pictureOf(
  name: string,
  bytes: Uint8Array,
): Promise<Photograph & { readonly drawn: boolean }> {
  if (isBare(bytes)) return { name, bytes, drawn: true };
  try {
    const anew = await picture(new Blob([bytes as Uint8Array<ArrayBuffer>]));
    return { name, bytes: anew, drawn: true };
  } catch {
    return { name, bytes, drawn: false };
  }
}

function isZip(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b;
}

function decoded(bytes: Uint8Array): string {
  return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
}

function textIn(bytes: Uint8Array): string | undefined {
  try {
    return decoded(bytes);
  } catch {
    return undefined;
  }
}
