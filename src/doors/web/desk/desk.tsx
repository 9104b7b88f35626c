import type { Bench } from '../bench/index.ts';
import type { FileDesk } from './filedesk.ts';
import { ourTrains } from './ours.ts';
import { words } from './words.ts';
import './desk.css';

interface Props {
  readonly bench: Bench;
  readonly desk: FileDesk;
}

/** The head of the sheet: which file is on the bench, where it comes from and goes to. */
export function Desk({ bench, desk }: Props) {
  const say = words();
  const { file } = bench;
  return (
    <div class="desk">
      <select
        aria-label={say.ours}
        value=""
        onChange={({ currentTarget }) => {
          void desk.openOurs(currentTarget.value);
          currentTarget.value = '';
        }}
      >
        <option value="">{say.ours}</option>
        {ourTrains.map((name) => (
          <option key={name} value={name}>
            {name.replaceAll('-', ' ')}
          </option>
        ))}
      </select>
      <OpenButton desk={desk} />
      <button type="button" onClick={() => desk.openNew(say.untitled)}>
        {say.empty}
      </button>
      <button type="button" onClick={() => void desk.save()}>
        {say.save}
        {file.changed.value && <span title={say.changed}> •</span>}
      </button>
      <button type="button" onClick={() => void desk.share()}>
        {say.link}
      </button>
      <button type="button" disabled={!file.canUndo.value} onClick={() => file.undo()}>
        {say.undo}
      </button>
      <button type="button" disabled={!file.canRedo.value} onClick={() => file.redo()}>
        {say.redo}
      </button>
    </div>
  );
}

// Where the browser cannot write a file back, its own picker opens one, and saving downloads.
function OpenButton({ desk }: { readonly desk: FileDesk }) {
  const say = words();
  if (window.showOpenFilePicker) {
    return (
      <button type="button" onClick={() => void desk.openDisk()}>
        {say.open}
      </button>
    );
  }
  return (
    <label class="desk-open">
      {say.open}
      <input
        type="file"
        accept=".yaml,.yml,.json"
        onChange={({ currentTarget }) => {
          const [file] = currentTarget.files ?? [];
          if (file) void desk.openFile(file);
          currentTarget.value = '';
        }}
      />
    </label>
  );
}
