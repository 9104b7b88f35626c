/** A file on disk as the browser gives it: where it can be written back, by `handle`. */
export interface Place {
  readonly name: string;
  /** When it was last written, in milliseconds, to see whether somebody else has since. */
  readonly written: number;
  readonly handle?: FileSystemFileHandle;
}

export interface DiskFile extends Place {
  readonly text: string;
}

/** What a person picked, not yet read. */
export interface Picked {
  readonly file: File;
  readonly handle?: FileSystemFileHandle;
}

/** Which files a picker shows: by the kind of what is in them, how their names end. */
export type Kinds = Readonly<Record<string, readonly string[]>>;

const TRAINS: Kinds = { 'application/yaml': ['.yaml', '.yml'], 'application/json': ['.json'] };

/** What a person picks; undefined where they pick nothing. */
export async function pick(kinds = TRAINS): Promise<Picked | undefined> {
  if (!window.showOpenFilePicker) return pickToRead(kinds);
  try {
    const [handle] = await window.showOpenFilePicker({ types: [{ accept: kinds }] });
    return handle && { file: await handle.getFile(), handle };
  } catch (error) {
    if (isChange(error)) return undefined;
    throw error;
  }
}

// Where the browser gives no way to write a file back.
function pickToRead(kinds: Kinds): Promise<Picked | undefined> {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = Object.values(kinds).flat().join(',');
  return new Promise((resolve) => {
    input.addEventListener('cancel', () => resolve(undefined));
    input.addEventListener('change', () => {
      const [file] = input.files ?? [];
      resolve(file && { file });
    });
    input.click();
  });
}

/** No train comes near it: a larger file is not read. */
const MOST_BYTES = 2 ** 24;

/** Throws a TypeError where it is no text in UTF-8, a RangeError where it is too large. */
export async function readText({ file, handle }: Picked): Promise<DiskFile> {
  if (file.size > MOST_BYTES) throw new RangeError('too large');
  const bytes = await file.arrayBuffer();
  const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  return { name: file.name, text, written: file.lastModified, ...(handle && { handle }) };
}

/** Whether a file on disk was written by somebody else since `written`. */
export async function hasChanged(handle: FileSystemFileHandle, written: number): Promise<boolean> {
  return (await handle.getFile()).lastModified !== written;
}

/** Writes back to a file; what it held stands until the new is whole. */
export async function writeBack(handle: FileSystemFileHandle, its: string | Blob): Promise<Place> {
  const stream = await handle.createWritable();
  await stream.write(its);
  await stream.close();
  const { name, lastModified } = await handle.getFile();
  return { name, written: lastModified, handle };
}

/** Asks where to save; undefined where a person changes their mind. */
export async function saveAs(name: string, its: Blob, kinds = TRAINS): Promise<Place | undefined> {
  if (!window.showSaveFilePicker) {
    download(name, its);
    return { name, written: 0 };
  }
  try {
    const types = [{ accept: kinds }];
    return await writeBack(await window.showSaveFilePicker({ suggestedName: name, types }), its);
  } catch (error) {
    if (isChange(error)) return undefined;
    throw error;
  }
}

/** Hands a file to the browser's downloads. */
export function download(name: string, blob: Blob): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  // The browser has taken the file by the next turn of its loop.
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

// A picker that is closed without a choice.
function isChange(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'AbortError';
}

declare global {
  // Not in every browser, and so not in TypeScript's own list.
  interface Window {
    readonly showOpenFilePicker?: (options: object) => Promise<FileSystemFileHandle[]>;
    readonly showSaveFilePicker?: (options: object) => Promise<FileSystemFileHandle>;
  }
}
