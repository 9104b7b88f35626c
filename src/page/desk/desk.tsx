import type { Study } from '../study/index.ts';
import { Menu } from '../controls/index.ts';
import { room } from '../rooms/index.ts';
import type { FileDesk } from './filedesk.ts';
import { ourTrains } from './ours.ts';
import { words } from './words.ts';
import './desk.css';

interface Props {
  readonly study: Study;
  readonly desk: FileDesk;
}

/** Which file is open, where it comes from and goes to. */
export function Desk({ study, desk }: Props) {
  const say = words();
  const { file } = study;
  return (
    <div class="desk">
      <button type="button" disabled={!file.canUndo.value} onClick={() => file.undo()}>
        {say.undo}
      </button>
      <button type="button" disabled={!file.canRedo.value} onClick={() => file.redo()}>
        {say.redo}
      </button>
      <button
        type="button"
        aria-description={file.changed.value ? say.changed : undefined}
        onClick={() => void desk.save()}
      >
        {say.save}
        {file.changed.value && <span aria-hidden="true"> •</span>}
      </button>
      <Menu label={say.file}>
        <button type="button" onClick={() => void desk.openDisk()}>
          {say.open}
        </button>
        <button type="button" onClick={() => startNew(desk)}>
          {say.empty}
        </button>
        <button type="button" onClick={() => void desk.saveElsewhere()}>
          {say.elsewhere}
        </button>
        <button type="button" onClick={() => void desk.share()}>
          {say.link}
        </button>
        <p class="aside">{say.ours}</p>
        {ourTrains.map((name) => (
          <button key={name} type="button" onClick={() => void desk.openOurs(name)}>
            {name.replaceAll('-', ' ')}
          </button>
        ))}
      </Menu>
    </div>
  );
}

/** An empty file, and the room in which it is described. */
export function startNew(desk: FileDesk): void {
  desk.openNew(words().untitled);
  room.value = 'describe';
}
