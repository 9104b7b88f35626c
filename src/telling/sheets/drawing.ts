import type { Train } from '../../engine/train/index.ts';
import { stickDiagram, paintStickDiagram } from '../stickdiagram/index.ts';
import { toSvg } from '../scene/index.ts';
import { type Language, visible, voiceOf } from '../narrative/index.ts';
import type { Sheet } from './document.ts';

/** The train's stick diagram on a page of its own: what stands where, and by which name. */
export function drawingSheet(train: Train, language: Language): Sheet {
  const voice = voiceOf(language);
  const caption = voice.say('sheet.drawing');
  const name = visible(train.name);
  const scene = paintStickDiagram(stickDiagram(train), name);
  const aspect = scene.height / scene.width;
  return {
    title: voice.say('sheet.title', { sheet: 'drawing' }),
    wide: aspect < 1,
    blocks: [{ block: 'figure', svg: toSvg(scene), aspect, alt: `${name}. ${caption}`, caption }],
  };
}
