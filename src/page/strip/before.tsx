import { askStanding } from '../../asking/build/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { visible, voiceOf } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { jobsOf } from '../job/index.ts';
import { room } from '../rooms/index.ts';
import type { Study } from '../study/index.ts';
import { language } from '../words/index.ts';
import { words } from './words.ts';

interface Props {
  readonly study: Study;
  readonly train: Train;
}

/** What is done while the unit is whole: cautions, and what can be read only before it comes apart. */
export function Before({ study, train }: Props) {
  const say = words();
  const voice = voiceOf(language.value);
  const unread = askStanding(train, jobsOf(study).asked.value).flatMap((thing) => {
    const { kind, name, stands } = thing;
    const isAlong = kind === 'endplay' && thing.judgement.endPlay.measure !== 'backlash';
    return stands === 'nothing' && (isAlong || kind === 'preload') ? [name] : [];
  });
  const cautions = [
    voice.say('caution.fluid'),
    ...(['weight', 'springs'] as const).map((what) => voice.say('plan.caution.of', { what })),
    voice.say('sheet.caution.maker'),
  ];
  return (
    <section class="strip-before" aria-labelledby="strip-before">
      <h2 id="strip-before">{voice.say('sheet.strip.before')}</h2>
      {cautions.map((text) => (
        <p key={text} class="strip-warning">
          {text}
        </p>
      ))}
      <ul class="strip-looks">
        {FIRST.map((what) => (
          <li key={what}>{voice.say('sheet.strip.first', { what })}</li>
        ))}
      </ul>
      {unread.length > 0 && (
        <>
          <p class="strip-warning">
            <strong>{say.readFirst(voice.list(unread.map(visible)))}</strong>
          </p>
          <LargeButton onPress={() => (room.value = 'measure')}>{say.measure}</LargeButton>
        </>
      )}
    </section>
  );
}

const FIRST = ['wash', 'fixture', 'plates', 'play', 'feel'];
