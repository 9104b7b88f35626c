import type { Train } from '../../engine/train/index.ts';
import { type EndNote, endScene, endView } from '../../telling/endview/index.ts';
import { type Scene, type Standings } from '../../telling/scene/index.ts';
import { meant, type Stand } from '../../asking/request/index.ts';
import { seenFrom, type Voice } from '../../telling/narrative/index.ts';
import { suggestion } from '../session/index.ts';
import { Misuse } from '../machine/index.ts';

/** The end view of a set or gear pair that a person names, with the words below it. */
export function endSceneOf(train: Train, name: string, { stand, voice, standings }: Asked): Scene {
  const known = [...train.sets, ...train.pairs].map((part) => part.name);
  const view = endView(train, meant(name, known, train) ?? '', stand.seenFrom);
  if (!view) throw new Misuse('no.set', suggestion(name, known));
  const title = voice.say('drawn.end', {
    set: voice.called(view.name),
    seen: seenFrom(stand, voice),
  });
  const notes = [
    ...(view.kind === 'bevel' ? [voice.say('drawn.bevel')] : []),
    ...view.notes.map((note) => worded(note, voice)),
    ...(standings ? [standings.key?.[0] ?? '', voice.say('drawn.circles')] : []),
  ];
  return endScene(view, new Map(), {
    title,
    notes,
    nameOf: (member) => voice.called(member),
    ...(standings && { standings }),
  });
}

interface Asked {
  readonly stand: Stand;
  readonly voice: Voice;
  readonly standings: Standings | undefined;
}

function worded(note: EndNote, voice: Voice): string {
  switch (note.note) {
    case 'teeth not counted':
      return voice.say('drawn.teeth not counted', {
        planets: voice.names(note.members),
      });
    case 'planets not counted':
      return voice.say('drawn.planets not counted', { drawn: note.drawn });
    case 'planets left out':
      return voice.say('drawn.planets left out', { drawn: note.drawn, counted: note.counted });
    case 'not evenly spaced':
      return voice.say('drawn.not evenly spaced', { degrees: note.degrees.toPrecision(2) });
    case 'teeth do not fit':
    case 'teeth too fine':
      return voice.say(`drawn.${note.note}`);
  }
}
