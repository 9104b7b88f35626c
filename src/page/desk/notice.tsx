import { visible } from '../../telling/narrative/index.ts';
import type { FileDesk, Word } from './filedesk.ts';
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
          <span>{saidOf(word, say)}</span>
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
        <p key={draft.id}>
          <span>{say.left(visible(draft.name), aboutOf(draft.text), new Date(draft.at))}</span>
          <button type="button" onClick={() => desk.openDraft(draft)}>
            {say.takeUp}
          </button>
          <button type="button" onClick={() => void desk.dropDraft(draft)}>
            {say.throwAway(visible(draft.name))}
          </button>
        </p>
      ))}
    </div>
  );
}

function saidOf(word: Word, say: ReturnType<typeof words>): string {
  switch (word.word) {
    case 'failed':
      return say.failed(word.why);
    case 'saved':
      return say.saved(visible(word.name));
    default:
      return say.word[word.word];
  }
}

// Two drafts of one name are told apart by the train's own name and how far each has come.
function aboutOf(text: string): { readonly train: string; readonly lines: number } {
  const train = /^name: *(.{1,80})/mu.exec(text)?.[1] ?? '';
  return { train: visible(train), lines: text.trimEnd().split('\n').length };
}
