import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { ENDS, galleryPage, LEVERS, svgOf } from './gallery.ts';
import { expectKept, expectPicture } from './kept.ts';
import { ROOT } from './sources.ts';

const FOLDER = path.join(ROOT, 'docs/gallery');
const PICTURES = [...ENDS, ...LEVERS];

describe('the gallery', () => {
  it.each(PICTURES)('$name is drawn as it was', (picture) => {
    const svg = svgOf(picture);
    expectPicture(path.join(FOLDER, `${picture.name}.svg`), svg);
    expect(svg.length).toBeLessThan(60_000);
  });

  it('is shown in the handbook, each picture with its train', () => {
    expectKept(path.join(ROOT, 'docs/gallery.md'), galleryPage());
  });

  it('keeps no picture that is not drawn', () => {
    const kept = readdirSync(FOLDER).filter((file) => !file.includes('.changed.'));
    expect(kept.toSorted()).toEqual(PICTURES.map(({ name }) => `${name}.svg`).toSorted());
  });
});
