import { isSpan, type Quantity } from '../../../engine/flow/index.ts';
import { voiceOf } from '../../../telling/narrative/index.ts';
import { spoken } from '../words.ts';

const letters = { on: 'O', idle: '(O)', holding: 'H', overRunning: 'R' };
const torque = (parts: number) => `${Math.round(parts * 100)} N·m`;

export const words = spoken({
  en: {
    title: (train: string) => `Half-section of ${train}`,
    letters: { ...letters, held: 'H', free: 'F' },
    torque,
    dial: (member: string, speed: Quantity | undefined) => {
      const name = voiceOf('en').name(member);
      if (speed === undefined) return `${name}: stands still`;
      if (isSpan(speed)) return `${name}: free`;
      return `${name}: ${voiceOf('en').number(speed)}`;
    },
    member: 'member',
    turns: 'turns, clockwise positive',
    made: 'made one with',
    hands: 'hands',
    still: 'stands still, or locks',
    free: (span: string) => `free: ${span}`,
    hold: 'hold',
    turn: (degrees: number) => (degrees > 0 ? 'turn clockwise' : 'turn anticlockwise'),
  },
  es: {
    title: (train: string) => `Semicorte de ${train}`,
    letters: { ...letters, held: 'H', free: 'F' },
    torque,
    dial: (member: string, speed: Quantity | undefined) => {
      const name = voiceOf('es').name(member);
      if (speed === undefined) return `${name}: quieto`;
      if (isSpan(speed)) return `${name}: libre`;
      return `${name}: ${voiceOf('es').number(speed)}`;
    },
    member: 'miembro',
    turns: 'gira, a derechas positivo',
    made: 'hecho uno con',
    hands: 'manos',
    still: 'quieto, o se bloquea',
    free: (span: string) => `libre: ${span}`,
    hold: 'sujetar',
    turn: (degrees: number) => (degrees > 0 ? 'girar a derechas' : 'girar a izquierdas'),
  },
});
