import { useEffect, useRef } from 'preact/hooks';
import { Desk, type FileDesk } from '../../page/desk/index.ts';
import { Reader } from '../../page/reader/index.ts';
import { room, roomNames, ROOMS } from '../../page/rooms/index.ts';
import type { Study } from '../../page/study/index.ts';
import { spoken, voiceNow } from '../../page/words/index.ts';
import { visible } from '../../telling/narrative/index.ts';
import './head.css';

interface Props {
  readonly study: Study;
  readonly desk: FileDesk;
}

/** Which train it is, what one may be at, and its file. On a phone the rooms lie under the thumb. */
export function Head({ study, desk }: Props) {
  const train = study.file.train.value;
  return (
    <header class="head">
      <h1>{train ? voiceNow().train(train) : visible(study.file.name.value)}</h1>
      <Rooms />
      <Desk study={study} desk={desk} />
      <Reader />
    </header>
  );
}

function Rooms() {
  const names = roomNames();
  const bar = useRef<HTMLElement>(null);
  // The one that is open is in sight, however one came to it.
  useEffect(() => {
    const its = bar.current;
    const open = its?.querySelector<HTMLElement>('[aria-current]');
    if (!its || !open) return;
    its.scrollLeft = open.offsetLeft + open.offsetWidth / 2 - its.clientWidth / 2;
  }, [room.value, names]);
  return (
    <nav class="head-rooms" aria-label={words().rooms} ref={bar}>
      {ROOMS.map((name) => (
        <button
          key={name}
          type="button"
          aria-current={room.value === name ? 'page' : undefined}
          onClick={() => (room.value = name)}
        >
          {names[name]}
        </button>
      ))}
    </nav>
  );
}

const words = spoken({
  en: { rooms: 'What you are at' },
  es: { rooms: 'Qué hace' },
});
