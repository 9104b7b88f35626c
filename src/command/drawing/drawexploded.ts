import type { Train } from '../../engine/train/index.ts';
import { explodedScenes } from '../../telling/exploded/index.ts';
import type { Voice } from '../../telling/narrative/index.ts';
import type { Scene } from '../../telling/scene/index.ts';
import { NoAnswer } from '../../asking/request/index.ts';

/** As wide as the stick diagrams of most trains. */
const WIDTH = 945;

/** The parts of a teardown on their axis, with a line on what is to scale; refused where there is none. */
export function explodedSceneOf(train: Train, voice: Voice): Scene {
  const key = [voice.say('drawn.exploded key')];
  const [scene] = explodedScenes(train, { voice, width: WIDTH, key });
  if (!scene) throw new NoAnswer({ refused: 'no.teardown' });
  return scene;
}
