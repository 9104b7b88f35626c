import { signal } from '@preact/signals';
import type { Language } from '../../telling/narrative/index.ts';

/**
 * Reads aloud by a voice that stands on the device: what is on the screen is sent to nobody. A
 * voice that is fetched from elsewhere is none.
 */
export class Reader {
  /** Whether the device has a voice of a language; voices come some time after the page. */
  readonly voices = signal<readonly SpeechSynthesisVoice[]>([]);
  readonly speaks = signal(false);
  /** The browser waits for a press before it speaks. */
  readonly waits = signal(false);

  private reading = 0;

  constructor() {
    const { synthesis } = this;
    if (!synthesis) return;
    const look = () =>
      (this.voices.value = synthesis.getVoices().filter((its) => its.localService));
    look();
    synthesis.addEventListener('voiceschanged', look);
  }

  voiceOf(language: Language): SpeechSynthesisVoice | undefined {
    const its = this.voices.value.filter(({ lang }) => lang.toLowerCase().startsWith(language));
    return its.find((one) => one.default) ?? its[0];
  }

  /** Reads some lines, in the place of what is being read. */
  read(lines: readonly string[], language: Language): void {
    const [{ synthesis }, voice] = [this, this.voiceOf(language)];
    if (!synthesis || !voice) return;
    this.hush();
    const mine = ++this.reading;
    const done = () => {
      if (mine === this.reading) this.speaks.value = false;
    };
    for (const [i, line] of lines.entries()) {
      const part = new SpeechSynthesisUtterance(line);
      part.voice = voice;
      part.lang = voice.lang;
      if (i === lines.length - 1) part.addEventListener('end', done);
      part.addEventListener('error', ({ error }) => {
        if (error === 'not-allowed') this.waits.value = true;
        done();
      });
      synthesis.speak(part);
    }
    this.waits.value = false;
    this.speaks.value = lines.length > 0;
  }

  hush(): void {
    this.reading++;
    this.speaks.value = false;
    this.synthesis?.cancel();
  }

  private get synthesis(): SpeechSynthesis | undefined {
    return 'speechSynthesis' in globalThis ? globalThis.speechSynthesis : undefined;
  }
}
