import type { Bench } from '../bench/index.ts';
import { ourTrains, readOurs } from './ours.ts';
import { words } from './words.ts';

/** The head of the sheet: which file is on the bench, and where it comes from and goes to. */
export function Desk({ bench }: { readonly bench: Bench }) {
  const say = words();
  const { file } = bench;
  const open = async (name: string) => bench.open(`${name}.train.yaml`, await readOurs(name));
  return (
    <div class="desk">
      <label>
        {say.ours}
        <select
          value={file.name.value.replace('.train.yaml', '')}
          onChange={(event) => void open(event.currentTarget.value)}
        >
          {ourTrains.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <button type="button" disabled={!file.canUndo.value} onClick={() => file.undo()}>
        {say.undo}
      </button>
      <button type="button" disabled={!file.canRedo.value} onClick={() => file.redo()}>
        {say.redo}
      </button>
    </div>
  );
}
