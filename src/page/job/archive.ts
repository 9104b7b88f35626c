import { strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import { isBare, picture } from './picture.ts';
import type { Photograph } from './store.ts';

/** A job as a file brings it: its text, and its pictures where it is a zip. */
export interface Brought {
  readonly name: string;
  readonly text: string;
  readonly pictures: readonly Photograph[];
}

/** A job and its pictures in one file: unpacked, a folder as the command has it. */
export function zipOf({ name, text, pictures }: Brought): Blob {
  const files: Zippable = { [name]: [strToU8(text), { level: 6 }] };
  // A picture is as small as it gets.
  for (const its of pictures) files[its.name] = [its.bytes, { level: 0 }];
  const bytes = zipSync(files) as Uint8Array<ArrayBuffer>;
  return new Blob([bytes], { type: 'application/zip' });
}

/**
 * Reads a job file, or a zip with one. Throws a RangeError where it is larger than any job, a
 * TypeError where it is neither, or its text is no UTF-8.
 */
export async function broughtBy(file: File): Promise<Brought> {
  if (file.size > MOST_BYTES) throw new RangeError('too large');
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (!isZip(bytes)) return { name: file.name, text: decoded(bytes), pictures: [] };
  const files = Object.entries(unpacked(bytes));
  const job = files.find(([path]) => TEXT.test(path));
  if (!job) throw new TypeError('no job');
  const pictures = files.filter(([path]) => PICTURE.test(path));
  const kept = await Promise.all(pictures.map(async ([path, its]) => pictureOf(path, its)));
  return { name: nameIn(job[0]), text: decoded(job[1]), pictures: kept.flat() };
}

/** So many photographs nobody takes. */
const MOST_BYTES = 2 ** 29;

const PICTURE = /\.(?:jpe?g|png|webp)$/iu;
const TEXT = /\.ya?ml$/iu;

// A zip may say anything of what is in it: only what can be of a job is unpacked, and no more than
// a job has.
function unpacked(bytes: Uint8Array): Record<string, Uint8Array> {
  let left = MOST_BYTES;
  try {
    return unzipSync(bytes, {
      filter({ name, originalSize }) {
        const wanted = PICTURE.test(name) || TEXT.test(name);
        left -= wanted ? originalSize : 0;
        return wanted && left > 0;
      },
    });
  } catch (error) {
    throw new TypeError('no zip', { cause: error });
  }
}

// Another's picture is drawn anew where it says more than it shows.
async function pictureOf(path: string, bytes: Uint8Array): Promise<readonly Photograph[]> {
  const name = nameIn(path);
  if (isBare(bytes)) return [{ name, bytes }];
  try {
    return [{ name, bytes: await picture(new Blob([bytes as Uint8Array<ArrayBuffer>])) }];
  } catch {
    return [];
  }
}

function nameIn(path: string): string {
  return path.replace(/^.*[/\\]/u, '');
}

function isZip(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b;
}

function decoded(bytes: Uint8Array): string {
  return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
}
