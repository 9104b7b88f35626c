/** The longest side of a kept photograph. */
const LONGEST_PX = 2000;

/**
 * A picture as it is kept: upright, at most `LONGEST_PX` a side, and drawn anew, so that nothing is in
 * it but what one sees: no place, no time, no camera. Throws where the browser cannot read it.
 */
export async function picture(file: Blob): Promise<Uint8Array> {
  const upright = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const scale = Math.min(1, LONGEST_PX / Math.max(upright.width, upright.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(upright.width * scale));
  canvas.height = Math.max(1, Math.round(upright.height * scale));
  const pen = canvas.getContext('2d');
  if (!pen) throw new Error('no canvas');
  // What can be seen through would be black.
  pen.fillStyle = '#ffffff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(upright, 0, 0, canvas.width, canvas.height);
  upright.close();
  const jpeg = await new Promise<Blob | null>((resolve) => {
    canvas.toBlob(resolve, 'image/jpeg', 0.85);
  });
  if (!jpeg) throw new Error('no picture');
  return new Uint8Array(await jpeg.arrayBuffer());
}

/** Whether a JPEG says nothing but its picture: no place, no camera, no remark. */
export function isBare(bytes: Uint8Array): boolean {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return false;
  // Segments, each with its length in two bytes (ITU-T T.81, B.1.1.4), until the picture itself.
  for (let at = 2; at + 4 <= bytes.length;) {
    const [mark, kind] = [bytes[at], bytes[at + 1] ?? 0];
    if (mark !== 0xff) return false;
    if (kind === SCAN) return endsWithIt(bytes, at);
    const makers = kind > JFIF && kind <= LAST_OF_MAKERS && !isColours(bytes, at);
    if (kind === REMARK || makers) return false;
    at += 2 + 256 * (bytes[at + 2] ?? 0) + (bytes[at + 3] ?? 0);
  }
  return false;
}

const SCAN = 0xda;
const REMARK = 0xfe;
const JFIF = 0xe0;
const LAST_OF_MAKERS = 0xef;

// What its colours mean (ICC.1, B.4), which a browser writes.
function isColours(bytes: Uint8Array, at: number): boolean {
  const text = new TextDecoder('latin1').decode(bytes.subarray(at + 4, at + 15));
  return bytes[at + 1] === 0xe2 && text === 'ICC_PROFILE';
}

// Some cameras put a second picture, with a place of its own, behind the end of the first; within a
// picture no such mark stands.
function endsWithIt(bytes: Uint8Array, scan: number): boolean {
  for (let at = scan; at + 1 < bytes.length; at++) {
    if (bytes[at] === 0xff && bytes[at + 1] === 0xd9) return at + 2 === bytes.length;
  }
  return false;
}
