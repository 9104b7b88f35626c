import { visible } from '../../telling/narrative/index.ts';
import { type Enquiry, LooseSheet, seenEntries } from '../enquiry/index.ts';
import { words } from './words.ts';

/** What was written down, the last first; it can be struck, and what was struck stays to be seen. */
export function ToldSoFar({ enquiry }: { readonly enquiry: Enquiry }) {
  const say = words();
  const sheet = enquiry.sheet.value;
  const entries = seenEntries(sheet.job.value);
  return (
    <section class="symptoms-told" aria-label={say.seen}>
      <h2>{say.seen}</h2>
      {enquiry.before.value.length > 0 && (
        <button type="button" onClick={() => void enquiry.takeOver()}>
          {say.takeOver(enquiry.before.value.length)}
        </button>
      )}
      {entries.length === 0 && <p class="aside">{say.nothingTold}</p>}
      <ul>
        {entries.map(({ entry, of, text }) => {
          const said = (of === '' ? '' : `${visible(of)}: `) + visible(plainly(text));
          const { struckBy } = entry;
          return (
            <li key={entry.id}>
              {struckBy ? <s>{said}</s> : <span>{said}</span>}
              {struckBy && <small> {struckBy.strikes?.because}</small>}
              <button
                type="button"
                aria-label={struckBy ? say.restoreIt(said) : say.strikeIt(said)}
                onClick={() => {
                  const [id, because] = struckBy
                    ? [struckBy.id, say.meant]
                    : [entry.id, say.mistaken];
                  void enquiry.strike(id, because);
                }}
              >
                {struckBy ? say.restore : say.strike}
              </button>
            </li>
          );
        })}
      </ul>
      {sheet instanceof LooseSheet && entries.length > 0 && (
        <button
          type="button"
          onClick={() => {
            if (!confirm(say.sureClear)) return;
            sheet.clear();
            enquiry.begin();
          }}
        >
          {say.clear}
        </button>
      )}
    </section>
  );
}

// A text that stands between quotes in its line.
function plainly(text: string): string {
  try {
    return text.startsWith('"') ? (JSON.parse(text) as string) : text;
  } catch {
    return text;
  }
}
