import { inquire, sectionsToTell, type Topic } from '../../asking/describe/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { labelOf, topicText } from '../../telling/questions/index.ts';
import { LargeButton } from '../controls/index.ts';
import { room } from '../rooms/index.ts';
import { language } from '../words/index.ts';
import type { Guide } from './guide.ts';
import { words } from './words.ts';

const TOPICS: readonly Topic[] = ['set', 'gear pair', 'device', 'gear', 'outputs'];

/** What can be told further: of the train, of its figures; its parts are told in a room of their own. */
export function Add({ guide, train }: { readonly guide: Guide; readonly train: Train }) {
  const say = words();
  return (
    <section aria-label={say.add}>
      <h3>{say.add}</h3>
      <div class="row">
        {TOPICS.map((topic) => (
          <LargeButton key={topic} onPress={() => guide.add(topic)}>
            {topicText({ topic }, language.value)}
          </LargeButton>
        ))}
        {sectionsToTell(train).map((section) => (
          <LargeButton key={section} onPress={() => guide.begin(inquire('entry', { section }))}>
            {labelOf(section, language.value)}
          </LargeButton>
        ))}
        <LargeButton other onPress={() => (room.value = 'strip')}>
          {say.parts}
        </LargeButton>
      </div>
    </section>
  );
}
