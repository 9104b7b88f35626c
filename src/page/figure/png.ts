import type { Scene } from '../../telling/scene/index.ts';

/** A drawing as pixels, twice as fine as it is on the screen at 100 %. */
export async function pngOf(svg: Blob, { width, height }: Scene): Promise<Blob> {
  const address = URL.createObjectURL(svg);
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [2 * width, 2 * height];
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) => {
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('no picture'))));
    });
  } finally {
    URL.revokeObjectURL(address);
  }
}
