import type { FileDesk } from './filedesk.ts';
import { newer } from './offline.ts';
import { words } from './words.ts';

/** What the desk has to say: never a box in the way, always with the way out beside it. */
export function Notice({ desk }: { readonly desk: FileDesk }) {
  const say = words();
  const word = desk.word.value;
  const away = () => (desk.word.value = undefined);
  return (
    <div class="desk-notices" role="status">
      {word && (
        <p>
          <span>{word.word === 'failed' ? say.failed(word.why) : say.word[word.word]}</span>
          {word.word === 'link copied' && (
            <input class="desk-link" readOnly value={desk.link.value} aria-label={say.link} />
          )}
          {word.word === 'changed on disk' && (
            <>
              <button type="button" onClick={() => void desk.save(true)}>
                {say.over}
              </button>
              <button type="button" onClick={() => void desk.saveElsewhere()}>
                {say.elsewhere}
              </button>
            </>
          )}
          <button type="button" onClick={away}>
            {say.away}
          </button>
        </p>
      )}
      {newer.value && (
        <p>
          <span>{say.newer}</span>
          <button type="button" onClick={newer.value}>
            {say.takeNewer}
          </button>
        </p>
      )}
      {desk.left.value.map((draft) => (
        <p key={draft.tab}>
          <span>{say.left(draft.name, new Date(draft.at))}</span>
          <button type="button" onClick={() => desk.openDraft(draft)}>
            {say.takeUp}
          </button>
          <button type="button" onClick={() => void desk.dropDraft(draft)}>
            {say.throwAway}
          </button>
        </p>
      ))}
    </div>
  );
}
