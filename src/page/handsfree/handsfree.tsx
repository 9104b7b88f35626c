import { effect, signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { voiceOf } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { language, recalled, remember } from '../words/index.ts';
import { Ear } from './ear.ts';
import { Reader } from './reader.ts';
import { Waking } from './waking.ts';
import { type Word, wordIn, wordsIn } from './word.ts';
import { pressWord } from './wordbutton.tsx';
import { words } from './words.ts';
import './handsfree.css';

const KEPT = 'hands free';

/** Whether hands are in the unit: what is pressed is larger, and what is done is read aloud. */
export const handsFree = signal(recalled(KEPT, ['tab']) === 'yes');
effect(() => remember(KEPT, handsFree.value ? 'yes' : '', ['tab']));

const readsAloud = signal(true);
const listens = signal(false);
const heard = signal<{ readonly word: string; readonly pressed: boolean } | undefined>(undefined);

interface Props {
  /** What is on the screen, as it is read aloud. */
  readonly lines: readonly string[];
  /** Changes with what is on the screen: a word that was meant for the one before is dropped. */
  readonly at: string;
}

/** Hands-free: none of it is the only way, and nothing of it leaves the device. */
export function HandsFree({ lines, at }: Props) {
  const say = words();
  const [reader, ear, waking] = made();
  const came = useRef(0);
  const on = handsFree.value;
  const voice = reader.voiceOf(language.value);
  const reads = on && readsAloud.value && voice !== undefined;
  const text = lines.join('\n');
  const read = () => reader.read(lines, language.value);
  useEffect(() => void (came.current = performance.now()), [at]);
  useEffect(() => {
    if (reads) read();
    return () => reader.hush();
  }, [reads, text, language.value]);
  useEffect(() => {
    if (on) waking.start();
    return () => waking.stop();
  }, [on]);
  useEffect(() => {
    if (on) void ear.look(language.value);
  }, [on, language.value]);
  const hears = on && listens.value && ear.hearing.value === 'ready' && !reader.speaks.value;
  useEffect(() => {
    if (!hears) return undefined;
    const answer = (said: string) => {
      const word = wordIn(said, language.value);
      if (!word || performance.now() - came.current < TOO_SOON) return;
      heard.value = { word: said.trim(), pressed: does(word, reads ? read : undefined) };
    };
    ear.listen(language.value, answer);
    return () => ear.stop();
  }, [hears, text, language.value]);
  return (
    <section class="hands-free" aria-label={say.handsFree}>
      <div class="row">
        <LargeButton pressed={on} onPress={() => (handsFree.value = !on)}>
          {say.handsFree}
        </LargeButton>
        {!on && <span class="aside">{say.does}</span>}
        {on && voice && (
          <>
            <LargeButton
              pressed={readsAloud.value}
              onPress={() => (readsAloud.value = !readsAloud.value)}
            >
              {say.readAloud}
            </LargeButton>
            <LargeButton onPress={read}>{say.again}</LargeButton>
          </>
        )}
        {on && ear.hearing.value === 'ready' && (
          <LargeButton pressed={listens.value} onPress={() => (listens.value = !listens.value)}>
            {say.listen}
          </LargeButton>
        )}
        {on && ear.hearing.value === 'fetchable' && (
          <LargeButton onPress={() => void ear.fetch(language.value)}>{say.fetch}</LargeButton>
        )}
      </div>
      {on && <Told {...{ reader, ear, waking }} />}
    </section>
  );
}

interface Its {
  readonly reader: Reader;
  readonly ear: Ear;
  readonly waking: Waking;
}

// What of it can be had here, and why not the rest.
function Told({ reader, ear, waking }: Its) {
  const say = words();
  const voice = voiceOf(language.value);
  const { value: hearing } = ear.hearing;
  const { value: stands } = waking.stands;
  const last = heard.value;
  const told = [
    ...(reader.voiceOf(language.value) ? [] : [say.noVoice]),
    ...(reader.waits.value ? [say.waits] : []),
    ...(hearing === 'ready' ? [] : [say.hearing[hearing]]),
    ...(hearing === 'ready' && listens.value
      ? [say.mayBeSaid(voice.list(wordsIn(language.value)))]
      : []),
    ...(stands === 'off' ? [] : [say.stands[stands]]),
  ];
  return (
    <>
      <p class="aside">{told.join(' ')}</p>
      <p class="hands-free-heard" role="status">
        {last && (last.pressed ? say.heard(last.word) : say.nothingHere(last.word))}
      </p>
    </>
  );
}

function does(word: Word, read: (() => void) | undefined): boolean {
  if (word !== 'again') return pressWord(word);
  read?.();
  return pressWord('again') || read !== undefined;
}

// Once a page: voices are asked for, and a screen is kept awake, by the page and not by a view.
let all: readonly [Reader, Ear, Waking] | undefined;
function made(): readonly [Reader, Ear, Waking] {
  all ??= [new Reader(), new Ear(), new Waking()];
  return all;
}

/** A word that comes sooner than this was meant for the screen before; milliseconds. */
const TOO_SOON = 900;
