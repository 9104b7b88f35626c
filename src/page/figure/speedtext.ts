import { isSpan, type Quantity } from '../../engine/flow/index.ts';
import { spoken, voiceNow } from '../words/index.ts';

/** How a member turns: its speed, or how far it is free to. */
export function speedText(speed: Quantity | undefined): string {
  const voice = voiceNow();
  const say = words();
  if (speed === undefined) return say.still;
  if (!isSpan(speed)) return voice.number(speed);
  return speed.from || speed.to ? say.free(voice.quantity(speed)) : say.loose;
}

const words = spoken({
  en: {
    still: 'stands still, or locks',
    free: (span: string) => `free: ${span}`,
    loose: 'free, until something holds or turns it',
  },
  es: {
    still: 'quieto, o se bloquea',
    free: (span: string) => `libre: ${span}`,
    loose: 'libre, mientras nada lo retenga ni lo gire',
  },
});
