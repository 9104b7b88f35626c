import { isSpan, type Quantity } from '../../engine/flow/index.ts';
import { voiceOf } from '../../telling/narrative/index.ts';
import { spoken } from '../words/index.ts';

const torque = (parts: number) => `${Math.round(parts * 100)} N·m`;

export const words = spoken({
  en: {
    title: (train: string) => `Stick diagram of ${train}`,
    wrongTitle: (train: string, faults: string) => `Stick diagram of ${train}, ${faults}`,
    help: 'Draw a dial round to turn its member; tap it to hold it. By keys: the arrows turn, Enter holds and releases. Tap a device to apply it.',
    enlarge: 'Larger',
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
    hands: 'by hand',
    hold: 'hold',
    turn: (degrees: number) => (degrees > 0 ? 'turn clockwise' : 'turn anticlockwise'),
  },
  es: {
    title: (train: string) => `Esquema cinemático de ${train}`,
    wrongTitle: (train: string, faults: string) => `Esquema cinemático de ${train}, ${faults}`,
    help: 'Arrastre un dial en círculo para girar su miembro; tóquelo para retenerlo. Con teclas: las flechas giran, Intro retiene y suelta. Toque un elemento para aplicarlo.',
    enlarge: 'Más grande',
    torque,
    dial: (member: string, speed: Quantity | undefined) => {
      const name = voiceOf('es').name(member);
      if (speed === undefined) return `${name}: quieto`;
      if (isSpan(speed)) return `${name}: libre`;
      return `${name}: ${voiceOf('es').number(speed)}`;
    },
    member: 'miembro',
    turns: 'gira, horario positivo',
    made: 'una pieza con',
    hands: 'a mano',
    hold: 'retener',
    turn: (degrees: number) =>
      degrees > 0 ? 'girar en sentido horario' : 'girar en sentido antihorario',
  },
});
