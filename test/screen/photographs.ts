import type { Page } from 'playwright-core';

/**
 * A JPEG as a phone makes it: 3000 by 1500 px, red on the left and blue on the right, to be turned a
 * quarter clockwise, with a place, a maker's packet and a remark. Segments as in ITU-T T.81, B.1.1.4;
 * tags as in Exif 2.32 (CIPA DC-008), orientation 6 and a GPS directory; both cited from memory.
 */
export async function jpegWithPlace(page: Page): Promise<Buffer> {
  const plain = await page.evaluate(async () => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 3000, height: 1500 });
    const pen = canvas.getContext('2d') as CanvasRenderingContext2D;
    pen.fillStyle = '#e01010';
    pen.fillRect(0, 0, 1500, 1500);
    pen.fillStyle = '#1010e0';
    pen.fillRect(1500, 0, 1500, 1500);
    const address = canvas.toDataURL('image/jpeg', 0.9);
    return address.slice(address.indexOf(',') + 1);
  });
  const jpeg = Buffer.from(plain, 'base64');
  const more = [
    segment(0xe1, Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), exif()])),
    segment(0xe1, Buffer.from('http://ns.adobe.com/xap/1.0/\0<x>a place</x>', 'latin1')),
    segment(0xfe, Buffer.from('a remark of the camera')),
  ];
  return Buffer.concat([jpeg.subarray(0, 2), ...more, jpeg.subarray(2)]);
}

/** What the segments of a JPEG are, but for those that the picture itself needs. */
export function segmentsOf(jpeg: Uint8Array): string[] {
  const found: string[] = [];
  const bytes = Buffer.from(jpeg);
  for (let at = 2; at + 4 <= bytes.length && bytes[at] === 0xff && bytes[at + 1] !== 0xda;) {
    const kind = bytes[at + 1] ?? 0;
    const body = bytes.subarray(at + 4, at + 16).toString('latin1');
    if (kind === 0xfe) found.push('remark');
    else if (kind > 0xe0 && kind <= 0xef) {
      found.push(
        body.startsWith('Exif')
          ? 'Exif'
          : body.startsWith('http')
            ? 'XMP'
            : body.startsWith('ICC_')
              ? 'colours'
              : body,
      );
    }
    at += 2 + bytes.readUInt16BE(at + 2);
  }
  return found;
}

function segment(kind: number, body: Buffer): Buffer {
  const head = Buffer.from([0xff, kind, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([head, body]);
}

// A TIFF of two directories: orientation and the address of the other, which has a place.
function exif(): Buffer {
  const tiff = Buffer.alloc(120);
  tiff.write('MM\0*', 0, 'latin1');
  tiff.writeUInt32BE(8, 4);
  tiff.writeUInt16BE(2, 8);
  put(tiff, 10, 0x0112, 3, 1, 6 << 16);
  put(tiff, 22, 0x8825, 4, 1, 38);
  tiff.writeUInt16BE(2, 38);
  // North; and the name of how the place was found.
  put(tiff, 40, 0x0001, 2, 2, 0x4e_00_00_00);
  put(tiff, 52, 0x001b, 7, 17, 80);
  tiff.write('ASCII\0\0\0GPS place', 80, 'latin1');
  return tiff;
}

function put(
  tiff: Buffer,
  at: number,
  tag: number,
  type: number,
  count: number,
  value: number,
): void {
  tiff.writeUInt16BE(tag, at);
  tiff.writeUInt16BE(type, at + 2);
  tiff.writeUInt32BE(count, at + 4);
  tiff.writeUInt32BE(value >>> 0, at + 8);
}
