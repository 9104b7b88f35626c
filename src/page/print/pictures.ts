import { isApplied, type Train } from '../../engine/train/index.ts';
import { endScene, endView } from '../../telling/endview/index.ts';
import { explodedScenes } from '../../telling/exploded/index.ts';
import { leverDiagram, leverScene } from '../../telling/levers/index.ts';
import { seenFrom, type Voice } from '../../telling/narrative/index.ts';
import type { Scene } from '../../telling/scene/index.ts';
import { paintStickDiagram } from '../../telling/stickdiagram/index.ts';
import { layoutOf, shownOf, standingsFor } from '../diagram/index.ts';
import { captions } from '../figure/index.ts';
import type { Study } from '../study/index.ts';
import { stand, voiceNow } from '../words/index.ts';
import { words } from './words.ts';

/** A drawing of the train as it stands on the page, to be printed or kept as a file. */
export interface Picture {
  /** A name of its own, for a file too. */
  readonly id: string;
  readonly title: string;
  /** Under it: the gear, and how fast; of what lies apart, how it is drawn. */
  readonly caption: string;
  readonly scene: Scene;
}

/** Which picture is called what; each is drawn when it is asked for. */
export interface Offered {
  readonly id: string;
  readonly title: string;
  readonly draw: () => Picture | undefined;
}

/** Every drawing that the rooms show of a train: its stick diagram, the levers, each end, its parts. */
export function picturesOf(study: Study, train: Train): Offered[] {
  const say = words();
  const voice = voiceNow();
  const sets = [...train.sets, ...train.pairs].map(({ name }) => name);
  const gear = captions().right(study);
  const offer = (
    id: string,
    title: string,
    scene: () => Scene | undefined,
    caption = gear,
  ): Offered => {
    const draw = () => {
      const its = scene();
      return its && { id, title, caption, scene: its };
    };
    return { id, title, draw };
  };
  return [
    offer('stick-diagram', say.section, () => sectionOf(study, train, voice)),
    offer('lever-diagram', say.levers, () => leversOf(study, train, voice)),
    ...sets.map((name) => {
      return offer(`end-view-${name}`, say.end(voice.name(name)), () => endOf(study, train, name));
    }),
    ...(train.teardown ? [offer('exploded-row', say.row, () => rowOf(train, voice), '')] : []),
  ];
}

function sectionOf(study: Study, train: Train, voice: Voice): Scene {
  const standings = standingsFor(study.right, shownOf(study.right));
  const key = [voice.say('marks.picture')];
  return paintStickDiagram(
    layoutOf(train, voice),
    voice.train(train),
    standings && { ...standings, key },
  );
}

function leversOf(study: Study, train: Train, voice: Voice): Scene | undefined {
  const answer = study.right.answer.value;
  const frictions = new Set(train.devices.filter(isApplied).map(({ name }) => name));
  return (
    answer &&
    leverScene(
      leverDiagram(train, undefined, (name) => voice.called(name)),
      {
        drawn: answer.drawn,
        speeds: answer.speeds,
        on: new Set(study.on.value.filter((name) => frictions.has(name))),
        figure: (speed) => voice.written(speed.toFixed(2)),
        title: voice.say('drawn.lever', { train: voice.train(train) }),
      },
    )
  );
}

function endOf(study: Study, train: Train, name: string): Scene | undefined {
  const voice = voiceNow();
  const view = endView(train, name, stand.value.seenFrom);
  const standings = standingsFor(study.right, shownOf(study.right));
  const title = voice.say('drawn.end', {
    set: voice.name(name),
    seen: seenFrom(stand.value, voice),
  });
  const notes = [voice.say('drawn.circles')];
  const nameOf = (member: string) => voice.called(member);
  return (
    view && endScene(view, new Map(), { title, notes, nameOf, ...(standings && { standings }) })
  );
}

function rowOf(train: Train, voice: Voice): Scene | undefined {
  const key = [voice.say('drawn.exploded key')];
  const [scene] = explodedScenes(train, { voice, width: 1400, key });
  return scene;
}
