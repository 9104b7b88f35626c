import type { Train } from '../../engine/train/index.ts';
import { stickDiagram, paintStickDiagram } from '../stickdiagram/index.ts';
import { type Scene, toSvg } from '../scene/index.ts';
import { type Voice } from '../narrative/index.ts';
import type { Sheet } from './document.ts';

/** The train's stick diagram on a page of its own: what stands where, and by which name. */
export function drawingSheet(train: Train, voice: Voice): Sheet {
  const scene = paintStickDiagram(
    stickDiagram(train, (its) => voice.called(its)),
    voice.train(train),
  );
  const title = voice.say('sheet.title', { sheet: 'drawing' });
  return pictureSheet(scene, title, voice.say('sheet.drawing'));
}

/** Any picture on a page of its own, on its long side where it is wider than high. */
export function pictureSheet(scene: Scene, title: string, caption: string): Sheet {
  const aspect = scene.height / scene.width;
  const alt = `${scene.title}. ${caption}`;
  return {
    title,
    wide: aspect < 1,
    blocks: [{ block: 'figure', svg: toSvg(scene), aspect, alt, caption }],
  };
}
