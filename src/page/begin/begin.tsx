import { useEffect, useRef } from 'preact/hooks';
import { isSpan } from '../../engine/flow/index.ts';
import { LargeButton, later } from '../controls/index.ts';
import { type FileDesk, startNew } from '../desk/index.ts';
import { Diagram } from '../diagram/index.ts';
import { captions } from '../figure/index.ts';
import { room, roomNames, ROOMS } from '../rooms/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import { words } from './words.ts';
import './begin.css';

/** What the train that is open is about, on asking. */
export const About = later(async () => (await import('./about.tsx')).About);

const Trains = later(async () => (await import('./trains.tsx')).Trains);

interface Props {
  readonly study: Study;
  readonly desk: FileDesk;
}

/**
 * Where somebody begins who has never seen the page: what it is, a dial that asks to be turned,
 * what there is to do, and which train to do it with.
 */
export function Begin({ study, desk }: Props) {
  const say = words();
  const names = roomNames();
  const place = useRef<HTMLDivElement>(null);
  const assembly = study.right.assembly.value;
  const train = study.file.train.value;
  const input = train && assembly?.bodies[assembly.bodyOf(train.input) ?? 0]?.label;
  const turned = study.turned.value;
  useEffect(() => {
    const dials = [...(place.current?.querySelectorAll('.handle') ?? [])];
    for (const dial of dials) {
      const asks = turned === undefined && dial.getAttribute('data-name') === input;
      dial.classList.toggle('begin-asks', asks);
    }
  });
  const nameOf = (member: string) => voiceNow().name(member);
  const output = train?.output ?? '';
  const speed = study.right.answer.value?.speeds.get(output);
  const touched = (member: string) => {
    const isLoose = member === input && speed !== undefined && isSpan(speed);
    return isLoose ? say.loose(nameOf(member), nameOf(output)) : say.touched(nameOf(member));
  };
  return (
    <div class="begin">
      <section class="begin-what" aria-label={names.begin}>
        <p class="begin-said">{say.what}</p>
        <h2>{say.want}</h2>
        <div class="begin-rooms">
          {ROOMS.filter((name) => name !== 'begin').map((name) => (
            <LargeButton key={name} onPress={() => (room.value = name)}>
              <b>{names[name]}</b>
              <span class="begin-does">{say.does[name]}</span>
            </LargeButton>
          ))}
        </div>
      </section>
      <section class="begin-touch" ref={place}>
        <p class="begin-hint" role="status">
          {turned === undefined ? input && say.touch(nameOf(input)) : touched(turned)}
        </p>
        <Diagram study={study} build={study.right} caption={captions().right(study)} />
      </section>
      <section class="begin-trains" aria-label={say.trains}>
        <h2>{say.trains}</h2>
        <div class="row">
          <LargeButton onPress={() => startNew(desk)}>
            <b>{say.own}</b>
            <span class="begin-does">{say.ownDoes}</span>
          </LargeButton>
          <LargeButton onPress={() => void desk.openDisk()}>
            <b>{say.file}</b>
            <span class="begin-does">{say.fileDoes}</span>
          </LargeButton>
        </div>
        <Trains desk={desk} />
      </section>
    </div>
  );
}
