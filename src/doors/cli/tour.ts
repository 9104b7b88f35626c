import { voiceOf } from '../../telling/narrative/index.ts';
import { paragraph } from '../../telling/report/index.ts';
import { check } from './check.ts';
import { flow } from './flow.ts';
import { hand } from './hand.ts';
import { ours } from './ours.ts';
import { done, type Options, type Reply, type Session } from './session.ts';

const TRAIN = 'kestrel-three-speed.train.yaml';

/** The main job on a train of ours: is it a train, its first gear and why, and a hand check. */
export function tour(session: Session): Reply {
  const voice = voiceOf(session.language);
  const file = ours('trains', TRAIN);
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
