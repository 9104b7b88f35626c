import { crc32, deflateSync } from 'node:zlib';

/**
 * A picture of at most 256 colours as PNG, a third of the bytes of the same in full colour.
 * `pixels` are four bytes each, opaque; colours that few pixels have go to the nearest kept.
 */
export function palettePng(pixels: Uint8Array, width: number, height: number): Buffer {
  const counts = new Map<number, number>();
  const count = width * height;
  const shades = new Uint32Array(count);
  for (let i = 0; i < count; i++) {
    const shade = ((pixels[4 * i]! << 16) | (pixels[4 * i + 1]! << 8) | pixels[4 * i + 2]!) >>> 0;
    shades[i] = shade;
    counts.set(shade, (counts.get(shade) ?? 0) + 1);
  }
  const often = [...counts].toSorted((a, b) => b[1] - a[1]).map(([shade]) => shade);
  const kept = often.slice(0, 256);
  const indexOf = new Map(often.map((shade) => [shade, nearest(shade, kept)]));
  // A row: no filter, which serves flat colours best, then an index a pixel.
  const rows = Buffer.alloc(height * (width + 1));
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      rows[y * (width + 1) + 1 + x] = indexOf.get(shades[y * width + x]!)!;
    }
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 3, 0, 0, 0], 8);
  const colours = Buffer.from(
    kept.flatMap((shade) => [shade >> 16, (shade >> 8) & 255, shade & 255]),
  );
  return Buffer.concat([
    Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
    chunk('IHDR', head),
    chunk('PLTE', colours),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function nearest(shade: number, kept: readonly number[]): number {
  let [best, least] = [0, Infinity];
  for (const [k, other] of kept.entries()) {
    const [r, g, b] = [16, 8, 0].map((bits) => ((shade >> bits) & 255) - ((other >> bits) & 255));
    const distance = r! * r! + g! * g! + b! * b!;
    if (distance < least) [best, least] = [k, distance];
  }
  return best;
}

function chunk(name: string, bytes: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), bytes]);
  const ends = Buffer.alloc(8);
  ends.writeUInt32BE(bytes.length, 0);
  ends.writeUInt32BE(crc32(body), 4);
  return Buffer.concat([ends.subarray(0, 4), body, ends.subarray(4)]);
}
