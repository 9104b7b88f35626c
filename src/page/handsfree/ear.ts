import { signal } from '@preact/signals';
import type { Language } from '../../telling/narrative/index.ts';

/**
 * Whether words can be heard: `absent`, the browser hears none; `elsewhere`, it would send what it
 * hears to somebody else, so it is not asked; `fetchable`, it can once its words are fetched;
 * `ready`, on the device itself; `refused`, the microphone was, or it failed.
 */
export type Hearing = 'absent' | 'elsewhere' | 'fetchable' | 'fetching' | 'ready' | 'refused';

/** Hears what is said, on the device itself or not at all. */
export class Ear {
  readonly hearing = signal<Hearing>('absent');

  private its: Recognition | undefined;
  private wanted = false;

  /** Asks the browser what it can do in a language. */
  async look(language: Language): Promise<void> {
    const kind = recognition();
    if (!kind) this.hearing.value = 'absent';
    else if (!kind.available || !('processLocally' in kind.prototype)) {
      this.hearing.value = 'elsewhere';
    } else {
      const can = await kind.available(here(language)).catch(() => 'unavailable');
      this.hearing.value = STANDS[can] ?? 'elsewhere';
    }
  }

  /** Fetches the words of a language into the device; what is said later is sent to nobody. */
  async fetch(language: Language): Promise<void> {
    this.hearing.value = 'fetching';
    await recognition()
      ?.install?.(here(language))
      .catch(() => false);
    await this.look(language);
  }

  /** Listens until it is told not to; each thing that was said is given as it was understood. */
  listen(language: Language, hear: (said: string) => void): void {
    this.stop();
    const kind = recognition();
    if (!kind || this.hearing.value !== 'ready') return;
    this.wanted = true;
    const its = new kind();
    its.processLocally = true;
    its.lang = tagOf(language);
    its.continuous = true;
    its.addEventListener('result', (event) => {
      const { results, resultIndex } = event as Event & Heard;
      for (let i = resultIndex; i < results.length; i++) {
        const said = results[i];
        if (said?.isFinal && this.wanted && this.its === its) hear(said[0]?.transcript ?? '');
      }
    });
    its.addEventListener('error', (event) => {
      const { error } = event as Event & { readonly error?: string };
      if (error === 'no-speech' || error === 'aborted') return;
      this.wanted = false;
      this.hearing.value = 'refused';
    });
    // It stops by itself after a silence.
    its.addEventListener('end', () => {
      if (this.wanted && this.its === its) setTimeout(() => this.again(its), PAUSE);
    });
    this.its = its;
    its.start();
  }

  stop(): void {
    this.wanted = false;
    this.its?.abort();
    this.its = undefined;
  }

  private again(its: Recognition): void {
    if (this.wanted && this.its === its) its.start();
  }
}

/** Milliseconds. */
const PAUSE = 300;

const STANDS: Readonly<Record<string, Hearing>> = {
  available: 'ready',
  downloadable: 'fetchable',
  downloading: 'fetching',
};

// What of the Web Speech API is used here; browsers differ in what of it they have.
interface Recognition extends EventTarget {
  processLocally: boolean;
  lang: string;
  continuous: boolean;
  start(): void;
  abort(): void;
}

interface Heard {
  readonly resultIndex: number;
  readonly results: ArrayLike<
    ArrayLike<{ readonly transcript: string }> & { readonly isFinal: boolean }
  >;
}

interface RecognitionKind {
  new (): Recognition;
  readonly prototype: object;
  available?(asked: Asked): Promise<string>;
  install?(asked: Asked): Promise<boolean>;
}

interface Asked {
  readonly langs: readonly string[];
  readonly processLocally: true;
}

function recognition(): RecognitionKind | undefined {
  const its = globalThis as {
    readonly SpeechRecognition?: RecognitionKind;
    readonly webkitSpeechRecognition?: RecognitionKind;
  };
  return its.SpeechRecognition ?? its.webkitSpeechRecognition;
}

function here(language: Language): Asked {
  return { langs: [tagOf(language)], processLocally: true };
}

// As the reader's machine speaks it, else as it is spoken most.
function tagOf(language: Language): string {
  const own = navigator.languages.find((tag) => tag.toLowerCase().startsWith(`${language}-`));
  return own ?? { en: 'en-US', es: 'es-ES' }[language];
}
