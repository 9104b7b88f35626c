/** A file on disk as the browser gives it: where it can be written back, by `handle`. */
export interface DiskFile {
  readonly name: string;
  readonly text: string;
  /** When it was last written, in milliseconds, to see whether somebody else has since. */
  readonly written: number;
  readonly handle?: FileSystemFileHandle;
}

/** What a person picks; undefined where they pick nothing. */
export async function pick(): Promise<DiskFile | undefined> {
  if (!window.showOpenFilePicker) return pickToRead();
  try {
    const [handle] = await window.showOpenFilePicker({ types: KINDS });
    return handle && (await fromHandle(handle));
  } catch (error) {
    if (isChange(error)) return undefined;
    throw error;
  }
}

// Where the browser gives no way to write a file back.
function pickToRead(): Promise<DiskFile | undefined> {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = '.yaml,.yml,.json';
  return new Promise((resolve, reject) => {
    input.addEventListener('cancel', () => resolve(undefined));
    input.addEventListener('change', () => {
      const [file] = input.files ?? [];
      if (file) fromFile(file).then(resolve, reject);
      else resolve(undefined);
    });
    input.click();
  });
}

async function fromHandle(handle: FileSystemFileHandle): Promise<DiskFile> {
  return { ...(await fromFile(await handle.getFile())), handle };
}

/** No train comes near it: a larger file is not read. */
const MOST_BYTES = 2 ** 24;

// Throws a TypeError where it is no text in UTF-8, a RangeError where it is too large.
async function fromFile(file: File): Promise<DiskFile> {
  if (file.size > MOST_BYTES) throw new RangeError('too large');
  const bytes = await file.arrayBuffer();
  const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  return { name: file.name, text, written: file.lastModified };
}

/** Whether a file on disk was written by somebody else since `written`. */
export async function hasChanged(handle: FileSystemFileHandle, written: number): Promise<boolean> {
  return (await handle.getFile()).lastModified !== written;
}

/** Writes back to a file; the old text stands until the new one is whole. */
export async function writeBack(handle: FileSystemFileHandle, text: string): Promise<DiskFile> {
  const stream = await handle.createWritable();
  await stream.write(text);
  await stream.close();
  return fromHandle(handle);
}

/** Asks where to save; undefined where a person changes their mind. */
export async function saveAs(name: string, text: string): Promise<DiskFile | undefined> {
  if (!window.showSaveFilePicker) {
    download(name, new Blob([text], { type: 'application/yaml' }));
    return { name, text, written: 0 };
  }
  try {
    const handle = await window.showSaveFilePicker({ suggestedName: name, types: KINDS });
    return await writeBack(handle, text);
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

const KINDS = [
  { accept: { 'application/yaml': ['.yaml', '.yml'], 'application/json': ['.json'] } },
];

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
