import { useMemo } from 'preact/hooks';
import { type MeasuredThing, unreadWhole } from '../../asking/build/index.ts';
import { type Part, type Train, upOf } from '../../engine/train/index.ts';
import { isLostWith, isReadWhole, kindOfPart } from '../../shop/strip/index.ts';
import { boltTexts, isSprung, partTexts, strippingRefusal } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { jobsOf, TakePhotograph } from '../job/index.ts';
import { measuringOf } from '../measure/index.ts';
import { room } from '../rooms/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import { Found } from './found.tsx';
import { Before, ReadNow } from './before.tsx';
import { FoundFaulty, Moves } from './moves.tsx';
import { Progress } from './progress.ts';
import { ExplodedRow } from './row.tsx';
import { Selective } from './selective.tsx';
import { Where } from './where.tsx';
import { words } from './words.ts';

interface Props {
  readonly study: Study;
  readonly train: Train;
  /** Whose it is, for what is remembered of it. */
  readonly work: string;
  readonly onAdd: () => void;
}

/** A unit taken apart as its file says, a part a screen, and put together the same way. */
export function Stripping({ study, train, work, onAdd }: Props) {
  const say = words();
  const { teardown = [] } = train;
  const progress = useMemo(() => new Progress(work, teardown, jobsOf(study)), [work, teardown]);
  const { stripping, way, part } = progress;
  const { off } = stripping;
  const isWhole = way === 'apart' && off.size === 0;
  const unread =
    way === 'apart' ? unreadWhole(measuringOf(study).things.value, progress.notes) : [];
  const first = unread.filter(({ name }) => isReadWhole(teardown, name));
  return (
    <>
      <div class="strip-ways row" role="group" aria-label={say.which}>
        {(['apart', 'together'] as const).map((one) => (
          <LargeButton key={one} pressed={way === one} onPress={() => progress.turn(one)}>
            {say.ways[one]}
          </LargeButton>
        ))}
        <p role="status">{say.count(off.size, teardown.length)}</p>
      </div>
      {progress.aside.length > 0 && (
        <LargeButton onPress={() => void progress.handOver()}>
          {say.handOver(progress.aside.length)}
        </LargeButton>
      )}
      <ExplodedRow
        train={train}
        stripping={stripping}
        part={part}
        onPart={(name) => progress.show(name)}
      />
      {isWhole && <Before progress={progress} unread={first} />}
      {part ? (
        <Card key={part.name} {...{ study, train, part, progress, unread }} />
      ) : (
        <p class="strip-done">{way === 'apart' ? say.allOff : say.allOn}</p>
      )}
      <details class="strip-list">
        <summary>{say.all}</summary>
        <ol>
          {teardown.map(({ name }, i) => (
            <li key={name}>
              <button
                type="button"
                aria-current={name === part?.name ? 'step' : undefined}
                onClick={() => progress.show(name)}
              >
                {i + 1}. {voiceNow().called(name)}{' '}
                <span class="aside">{off.has(name) ? say.isOff : say.isOn}</span>
              </button>
            </li>
          ))}
        </ol>
        <div class="row">
          <LargeButton onPress={() => (room.value = 'print')}>{say.onPaper}</LargeButton>
          <LargeButton onPress={() => (room.value = 'ask')}>{say.asQuestion}</LargeButton>
          <LargeButton other onPress={onAdd}>
            {say.add}
          </LargeButton>
        </div>
      </details>
    </>
  );
}

interface CardProps extends Omit<Props, 'onAdd' | 'work'> {
  readonly part: Part;
  readonly progress: Progress;
  /** What is not read, and can be read only while what closes it is on. */
  readonly unread: readonly MeasuredThing[];
}

// What is done with one part, and what is looked at.
function Card({ study, train, part, progress, unread }: CardProps) {
  const say = words();
  const voice = voiceNow();
  const jobs = jobsOf(study);
  const { stripping, way, teardown } = progress;
  const up = upOf(teardown);
  const isOff = stripping.off.has(part.name);
  const place = teardown.indexOf(part);
  const neighbour = teardown[way === 'apart' ? place - 1 : place + 1];
  const turned = neighbour && up(part) && up(neighbour) !== up(part) ? up(part) : undefined;
  const lost = unread.filter(({ name }) => isLostWith(stripping, part, name));
  const stopped = lost.map(({ name }) => voice.called(name));
  const refusal =
    strippingRefusal(stripping, part, voice) ??
    (stopped.length > 0 ? say.stopped(voice.list(stopped)) : undefined);
  const toDo = way === 'apart' ? !isOff : isOff;
  const aside = teardown[place + (way === 'apart' ? -1 : 1)];
  return (
    <section class="strip-card" aria-labelledby="strip-part">
      <div class="strip-work">
        <h2 id="strip-part">
          {place + 1}. {voice.called(part.name)}
        </h2>
        <p class="strip-state">{isOff ? say.isOff : say.isOn}</p>
        {turned && toDo && (
          <p class="strip-warning">
            <strong>{voice.say('plan.turn over', { end: turned })}.</strong>{' '}
            {voice.say('plan.danger', { danger: 'weight' })}
          </p>
        )}
        {(isSprung(part, train) || SPRINGY.has(kindOfPart(train, part) ?? '')) && toDo && (
          <p class="strip-warning">{voice.say('plan.danger', { danger: 'springs' })}</p>
        )}
        <FoundFaulty standing={progress.standing(part)} />
        <ul class="strip-looks">
          {partTexts(part, voiceNow(), up(part)).map((line) => (
            <li key={line}>{line}</li>
          ))}
          {(part.bolts ? boltTexts(part.bolts, voice) : []).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        <Selective study={study} part={part} />
        {refusal !== undefined && (
          <p class="strip-refused" role="alert">
            {refusal}
          </p>
        )}
        {stripping.off.size > 0 && lost.length > 0 && <ReadNow progress={progress} unread={lost} />}
        <div class="row strip-moves">
          <Moves part={part} progress={progress} main={toDo} refused={refusal !== undefined} />
          <LargeButton main={!toDo} onPress={() => progress.show()}>
            {say.next}
          </LargeButton>
          {aside && (
            <LargeButton onPress={() => progress.show(aside.name)}>{say.before}</LargeButton>
          )}
        </div>
        {!isOff && jobs.open.value && (
          <TakePhotograph jobs={jobs} shown={{ part: part.name }} camera>
            {say.photograph}
          </TakePhotograph>
        )}
        {isOff && <Found study={study} train={train} part={part} progress={progress} />}
      </div>
      <Where train={train} part={part} />
    </section>
  );
}

// They fly when they slip: the caution of springs is theirs too.
const SPRINGY: ReadonlySet<string> = new Set(['snap ring', 'spring', 'servo']);
