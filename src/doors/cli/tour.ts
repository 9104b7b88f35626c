import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { voiceOf } from '../../telling/narrative/index.ts';
import { paragraph } from '../../telling/report/index.ts';
import { check } from './check.ts';
import { flow } from './flow.ts';
import { hand } from './hand.ts';
import { done, type Options, type Reply, type Session } from './session.ts';

const TRAIN = 'kestrel-three-speed.train.yaml';

/** The main job on a train of ours: is it a train, its first gear and why, and a hand check. */
export function tour(session: Session): Reply {
  const voice = voiceOf(session.language);
  const file = path.relative('.', path.join(trainsFolder(), TRAIN));
  const steps: [verb: typeof check, typed: string, options: Options][] = [
    [check, `holdturn check ${file}`, {}],
    [flow, `holdturn flow ${file} --range D --gear 1`, { range: 'D', gear: '1' }],
    [hand, `holdturn hand ${file} --turn rear.carrier`, { turn: 'rear.carrier' }],
  ];
  const shown = steps.flatMap(([verb, typed, options]) => {
    const { text } = verb(file, { ...session, options });
    return [session.page.ink.strong(`$ ${typed}`), text, ''];
  });
  return done(
    [
      ...paragraph(voice.say('tour.intro', { file }), session.page),
      '',
      ...shown,
      ...paragraph(voice.say('tour.more'), session.page),
    ].join('\n'),
  );
}

// Beside the package's own description, wherever it is installed and however it is bundled.
function trainsFolder(): string {
  let folder = path.dirname(fileURLToPath(import.meta.url));
  while (!fs.existsSync(path.join(folder, 'trains', TRAIN)) && folder !== path.dirname(folder)) {
    folder = path.dirname(folder);
  }
  return path.join(folder, 'trains');
}
