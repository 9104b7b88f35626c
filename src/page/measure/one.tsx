import { useComputed, useSignal } from '@preact/signals';
import { useState } from 'preact/hooks';
import type { MeasuredThing } from '../../asking/build/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import { quantityFrom } from '../../engine/quantity/index.ts';
import { refusedText } from '../../telling/narrative/index.ts';
import { DecimalPad, LargeButton } from '../controls/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import { Against } from './against.tsx';
import { Figures } from './figures.tsx';
import { Keeping } from './keeping.tsx';
import { Kind, SIGNS } from './list.tsx';
import type { Measuring } from './measuring.ts';
import { Readings } from './readings.tsx';
import { Shelf } from './shelf.tsx';
import { cautionsOf, howOf, tellingOf } from './telling.ts';
import { isWhole, unitsOf } from './ways.ts';
import { WayPicker } from './waypicker.tsx';
import { WrittenDown } from './writtendown.tsx';
import { wordOf, words } from './words.ts';

interface Props {
  readonly measuring: Measuring;
  readonly study: Study;
  readonly thing: MeasuredThing;
}

/** One measurement: its readings and what they say on one side, the pad on the other. */
export function One({ measuring, study, thing }: Props) {
  const say = words();
  const voice = voiceNow();
  const typing = useSignal('');
  const [done, tell] = useState(false);
  const [way, field, unit] = [measuring.way.value, measuring.field.value, measuring.unit.value];
  const first = unit === 'in' || unit === 'thou' ? 'in' : 'mm';
  const telling = tellingOf(thing, voice, first);
  const refused = measuring.refused.value;
  const typed = useComputed(() => {
    const of = measuring.field.value?.of === 'torque' ? 'torque' : 'length';
    const read = quantityFrom(`${typing.value} ${measuring.unit.value}`, of);
    return read && toNumber(read.size);
  });
  if (!way || !field) return null;
  const called = field.field === '' ? say.reading : wordOf(say.fields, field.field);
  const whole = isWhole(way, measuring.typed.value);
  return (
    <>
      <Head measuring={measuring} study={study} thing={thing} />
      <div class="measure-cautions">
        {cautionsOf(thing, way.way, voice).map((text) => (
          <p key={text}>
            <b aria-hidden="true">⚠</b> {text}
          </p>
        ))}
      </div>
      <How text={howOf(thing, way.way, voice)} />
      <div class="measure-one">
        <div class="measure-entry">
          <WayPicker measuring={measuring} />
          {thing.kind === 'preload' && (
            <LargeButton
              pressed={measuring.isUsed.value}
              onPress={() => measuring.setUsed(!measuring.isUsed.value)}
            >
              {say.used}
            </LargeButton>
          )}
          <DecimalPad
            key={`${way.way} ${field.field}`}
            label={called}
            units={unitsOf(field)}
            unit={unit}
            onUnit={(its) => measuring.setUnit(its)}
            onTyped={(its) => {
              typing.value = its;
              tell(false);
            }}
            give={field.many ? say.add : say.set}
            onNumber={(its) => measuring.add(its)}
          />
        </div>
        <div class="measure-told">
          <Readings measuring={measuring} way={way} />
          <Figures
            thing={thing}
            way={way}
            typed={measuring.typed.value}
            typing={typed.value}
            first={first}
          />
          <Against measuring={measuring} thing={thing} telling={telling} way={way} />
          {whole && (
            <LargeButton
              main={telling.against.length === 0}
              onPress={() => void measuring.write().then(tell)}
            >
              {say.write}
            </LargeButton>
          )}
          <p role="status" class="measure-status">
            {done && say.kept}
          </p>
          {refused && (
            <p class="measure-warning" role="alert">
              {refusedText(refused, '', voice)}
            </p>
          )}
          {thing.stands !== 'nothing' && (
            <Says telling={telling} bold={isRead(thing) && telling.against.length === 0} />
          )}
          <Shelf measuring={measuring} thing={thing} telling={telling} first={first} />
          <WrittenDown measuring={measuring} />
        </div>
      </div>
    </>
  );
}

/** The way back, whose measurement it is, where it stands, and what else is written down of it. */
export function Head({ measuring, study, thing }: Props) {
  const say = words();
  return (
    <>
      <header class="measure-head">
        <LargeButton onPress={() => measuring.leave()}>‹ {say.all}</LargeButton>
        <div>
          <h2 tabIndex={-1}>{voiceNow().called(thing.name)}</h2>
          <p>
            <Kind thing={thing} /> ·{' '}
            <b class={`measure-${thing.stands}`}>
              <span aria-hidden="true">{SIGNS[thing.stands]}</span> {say.stands[thing.stands]}
            </b>
          </p>
        </div>
      </header>
      <Keeping measuring={measuring} study={study} />
    </>
  );
}

// Of a preload only a torque is judged.
function isRead({ kind, judgement }: MeasuredThing): boolean {
  return kind !== 'preload' || judgement.torque !== undefined;
}

interface Said {
  readonly telling: ReturnType<typeof tellingOf>;
  /** Whether the first sentence is the verdict. */
  readonly bold: boolean;
}

function Says({ telling, bold }: Said) {
  const say = words();
  return (
    <div class={`measure-says${bold ? ' measure-verdict' : ''}`}>
      {telling.says.map((text) => (
        <p key={text}>{text}</p>
      ))}
      {telling.besides.length > 0 && (
        <>
          <h3>{say.besides}</h3>
          {telling.besides.map((text) => (
            <p key={text}>! {text}</p>
          ))}
        </>
      )}
    </div>
  );
}

function How({ text }: { readonly text: string | undefined }) {
  return text === undefined ? null : <p class="aside">{text}</p>;
}
