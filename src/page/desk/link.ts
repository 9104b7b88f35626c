/**
 * A link that carries a whole train in its fragment, which no browser sends to anybody: deflate
 * (RFC 1951), then base64 for addresses (RFC 4648). Whoever opens it sends nothing.
 */
export async function linkOf(text: string, page: string): Promise<string> {
  const packed = await through(new Blob([text]), new CompressionStream('deflate-raw'));
  const bytes = new Uint8Array(packed);
  let letters = '';
  for (const byte of bytes) letters += String.fromCharCode(byte);
  const safe = btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
  return `${page.replace(/#.*$/u, '')}#train=${safe}`;
}

/** The text that a link carries; undefined where it carries none, throws where it is damaged. */
export async function textIn(fragment: string): Promise<string | undefined> {
  const packed = /^#train=([\w-]+)$/u.exec(fragment)?.[1];
  if (packed === undefined) {
    if (fragment.startsWith('#train=')) throw new RangeError('not base64');
    return undefined;
  }
  const letters = atob(packed.replaceAll('-', '+').replaceAll('_', '/'));
  const bytes = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
  const text = await through(new Blob([bytes]), new DecompressionStream('deflate-raw'), MOST);
  return new TextDecoder('utf-8', { fatal: true }).decode(text);
}

/**
 * The file that the command hands over, by the short address that it opens; undefined where the
 * address is no such one. Throws where the command is gone.
 */
export async function handedOver(
  fragment: string,
): Promise<{ readonly name: string; readonly text: string } | undefined> {
  const path = /^#(given\/[\w-]+\/([^/]+))$/u.exec(fragment);
  if (!path) return undefined;
  const answer = await fetch(`./${path[1]}`);
  if (!answer.ok) throw new RangeError('gone');
  return { name: decodeURIComponent(path[2] as string), text: await answer.text() };
}

/** A train file has at most 65,536 characters: a link that swells to more is no train. */
const MOST = 400_000;

function through(
  blob: Blob,
  change: CompressionStream | DecompressionStream,
  most = Number.POSITIVE_INFINITY,
): Promise<ArrayBuffer> {
  let size = 0;
  const limit = new TransformStream<Uint8Array, Uint8Array>({
    transform(chunk, controller) {
      size += chunk.byteLength;
      if (size > most) controller.error(new RangeError('too long'));
      else controller.enqueue(chunk);
    },
  });
  return new Response(blob.stream().pipeThrough(change).pipeThrough(limit)).arrayBuffer();
}
