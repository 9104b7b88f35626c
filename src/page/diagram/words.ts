import type { Way } from '../../engine/train/index.ts';
import { isSpan, type Quantity } from '../../engine/flow/index.ts';
import { spoken, voiceNow } from '../words/index.ts';

const torque = (parts: number) => `${Math.round(parts * 100)} N·m`;

/** How a one-way clutch works, in names of the reader's language. */
interface Jams {
  readonly seen: string;
  readonly inner: string;
  readonly outer: string;
  readonly free: Way;
  readonly rolls: boolean;
}

const WAYS = {
  en: { clockwise: 'clockwise', anticlockwise: 'anticlockwise' },
  es: { clockwise: 'horario', anticlockwise: 'antihorario' },
} as const;

const otherWay = (way: Way): Way => (way === 'clockwise' ? 'anticlockwise' : 'clockwise');

export const words = spoken({
  en: {
    title: (train: string) => `Stick diagram of ${train}`,
    wrongTitle: (train: string, faults: string) => `Stick diagram of ${train}, ${faults}`,
    help: 'Draw a dial round to turn its member; tap it to hold it. By keys: the arrows turn, Enter holds and releases. Tap a device to apply it, a one-way clutch to look into it.',
    look: (device: string) => `Look into the ${device}`,
    close: 'Close',
    races: (device: string) => `The ${device} from its end`,
    holds: 'Holds',
    'over-runs': 'Over-runs',
    now: 'now',
    jams: (it: Jams) =>
      `${it.seen}: the inner race, the ${it.inner}, turns ${WAYS.en[it.free]} against the outer race, the ${it.outer}, and what is between them is loose. Pushed ${WAYS.en[otherWay(it.free)]} it ${it.rolls ? 'jams: each roller runs up its ramp, where the gap is less than it' : 'holds: each sprag stands up, longer than the gap'}.`,
    enlarge: 'Larger',
    torque,
    dial: (member: string, speed: Quantity | undefined) => {
      const name = voiceNow().name(member);
      if (speed === undefined) return `${name}: stands still`;
      if (isSpan(speed)) return `${name}: free`;
      return `${name}: ${voiceNow().number(speed)}`;
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
    help: 'Arrastre un dial en círculo para girar su miembro; tóquelo para retenerlo. Con teclas: las flechas giran, Intro retiene y suelta. Toque un elemento para aplicarlo; una rueda libre, para verla por dentro.',
    look: (device: string) => `Ver por dentro: ${device}`,
    close: 'Cerrar',
    races: (device: string) => `${device}, visto desde un lado`,
    holds: 'Retiene',
    'over-runs': 'Gira libre',
    now: 'ahora',
    jams: (it: Jams) =>
      `${it.seen}: la pista interior, ${it.inner}, gira en sentido ${WAYS.es[it.free]} respecto a la exterior, ${it.outer}, y lo que hay entre ellas queda suelto. Empujada en sentido ${WAYS.es[otherWay(it.free)]} retiene: ${it.rolls ? 'cada rodillo sube por su rampa, donde el hueco es menor que él' : 'cada calzo se pone en pie, más largo que el hueco'}.`,
    enlarge: 'Más grande',
    torque,
    dial: (member: string, speed: Quantity | undefined) => {
      const name = voiceNow().name(member);
      if (speed === undefined) return `${name}: quieto`;
      if (isSpan(speed)) return `${name}: libre`;
      return `${name}: ${voiceNow().number(speed)}`;
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
