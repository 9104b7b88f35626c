import { useState } from 'preact/hooks';
import { type MeasuredThing, unreadableTold } from '../../asking/build/index.ts';
import { LargeButton, NameEntry } from '../controls/index.ts';
import { send } from '../rooms/index.ts';
import { language, voiceNow } from '../words/index.ts';
import type { Progress } from './progress.ts';
import { words } from './words.ts';

interface Props {
  readonly progress: Progress;
  /** What nobody can read once the unit is apart, and nobody has. */
  readonly unread: readonly MeasuredThing[];
}

/** What is done while the unit is whole: cautions, and what can be read only before it comes apart. */
export function Before({ progress, unread }: Props) {
  const say = words();
  const voice = voiceNow();
  const cautions = [
    voice.say('caution.fluid'),
    ...(['weight', 'springs'] as const).map((what) => voice.say('plan.caution.of', { what })),
    voice.say('sheet.caution.maker'),
  ];
  return (
    <section class="strip-before" aria-labelledby="strip-before">
      <h2 id="strip-before">{voice.say('sheet.strip.before')}</h2>
      {unread.length > 0 && (
        <div class="strip-stop" role="group" aria-label={say.stop}>
          <p>
            <strong>
              {say.readFirst(voice.list(unread.map(({ name }) => voice.called(name))))}
            </strong>
          </p>
          <ReadNow progress={progress} unread={unread} />
        </div>
      )}
      <div class="strip-warning strip-cautions">
        {cautions.map((text) => (
          <p key={text}>{text}</p>
        ))}
      </div>
      <ul class="strip-looks">
        {FIRST.map((what) => (
          <li key={what}>{voice.say('sheet.strip.first', { what })}</li>
        ))}
      </ul>
    </section>
  );
}

/** What is read now or never, each with the way to its measure. */
export function ReadNow({ progress, unread }: Props) {
  return unread.map((thing) => <Unread key={thing.name} progress={progress} thing={thing} />);
}

// Whoever passes says why.
function Unread({
  progress,
  thing,
}: {
  readonly progress: Progress;
  readonly thing: MeasuredThing;
}) {
  const say = words();
  const [asks, ask] = useState(false);
  const { kind, name } = thing;
  const called = voiceNow().called(name);
  const giveUp = (because: string) => {
    const told = unreadableTold(name, because, language.value);
    if (told.kind === 'note') void progress.note(told.note);
  };
  return (
    <>
      <div class="row">
        <LargeButton main onPress={() => send({ to: 'measure', from: 'strip', kind, name })}>
          {say.measureIt(called)}
        </LargeButton>
        <LargeButton pressed={asks} onPress={() => ask(!asks)}>
          {say.unreadable}
        </LargeButton>
      </div>
      {asks && (
        <div class="strip-why" role="group" aria-label={say.whyUnread(called)}>
          <p>{say.whyUnread(called)}</p>
          <div class="row">
            {say.unreadReasons.map((reason) => (
              <LargeButton key={reason} onPress={() => giveUp(reason)}>
                {reason}
              </LargeButton>
            ))}
          </div>
          <NameEntry label={say.whyUnread(called)} onName={giveUp} />
        </div>
      )}
    </>
  );
}

const FIRST = ['wash', 'fixture', 'plates', 'play', 'feel'];
