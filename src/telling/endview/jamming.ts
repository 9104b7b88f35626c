import type { OneWayClutch, Way } from '../../engine/train/index.ts';
import { type Group, round, type Scene } from '../scene/index.ts';
import { Pen } from './pen.ts';

/** How a one-way clutch is drawn from its end. */
export interface Jamming {
  /** Whether it holds: its sprags stand up; else they lie, and it over-runs. */
  readonly holds: boolean;
  readonly seenFrom: 'input' | 'output';
  /** For a screen reader. */
  readonly title: string;
}

const COUNT = 12;
const [RIM, OUTER, INNER, BORE] = [96, 80, 50, 34];
const MIDDLE = { x: 100, y: 100, degrees: 0 };

/**
 * The races of a one-way clutch from its end, and what jams between them: sprags, or rollers where its
 * name says so. The inner end of a sprag lies the way in which the inner race may turn; pushed the other
 * way it stands up, longer than the gap. A roller runs up the ramp of the outer race, where the gap is
 * less than it. Its groups "races-outer" (with what jams) and "races-inner" are to be turned.
 */
export function jammingScene(device: OneWayClutch, { holds, seenFrom, title }: Jamming): Scene {
  const free = (device.lets === 'clockwise') === (seenFrom === 'input') ? 1 : -1;
  const between = hasRollers(device) ? rollers(holds, free) : sprags(holds, free);
  const race = (look: string, radii: readonly number[], mark: number): Group['marks'][number] => {
    const pen = new Pen();
    for (const radius of radii) pen.circle(radius);
    return {
      mark: 'group',
      look,
      at: MIDDLE,
      marks: [
        { mark: 'path', look: 'races-ring', d: pen.d },
        // A mark, so that one sees it turn.
        { mark: 'path', look: 'stop-mark', d: `M0 ${-mark}v-10` },
        ...(look === 'races-outer' ? between : []),
      ],
    };
  };
  const marks = [race('races-inner', [INNER, BORE], 37), race('races-outer', [RIM, OUTER], 83)];
  return { width: 200, height: 200, title, marks };
}

/** Which way the inner race goes round against the outer one without being held, as one looks on. */
export function freeWay({ lets }: OneWayClutch, seenFrom: 'input' | 'output'): Way {
  if (seenFrom === 'input') return lets;
  return lets === 'clockwise' ? 'anticlockwise' : 'clockwise';
}

/** Whether its name says that rollers jam in it; else sprags do. */
export function hasRollers({ name }: OneWayClutch): boolean {
  return /roll|rodill/iu.test(name);
}

function sprags(holds: boolean, free: 1 | -1): Group['marks'] {
  // As long in both; lying, the inner end has gone on, and is clear of its race (more than in life).
  const [lean, foot] = holds ? [8.6 * free, INNER + 0.5] : [17.7 * free, INNER + 7];
  const wide = 4;
  return around((degrees) => {
    const at = (radius: number, turn: number) => point(radius, degrees + turn);
    const pen = new Pen();
    pen.move(...at(OUTER - 0.5, -wide));
    pen.line(...at(OUTER - 0.5, wide));
    pen.line(...at(foot, lean + wide * 1.5));
    pen.line(...at(foot, lean - wide * 1.5));
    pen.close();
    return [{ mark: 'path', look: 'races-jam', d: pen.d }];
  });
}

function rollers(holds: boolean, free: 1 | -1): Group['marks'] {
  const size = 8.5;
  return around((degrees) => {
    // The ramp is lowest on the side to which the inner race may not turn.
    const [low, high] = [INNER + 2 * size - 3, OUTER];
    const ramp = new Pen();
    ramp.move(...point(high, degrees - 9 * free));
    ramp.line(...point(low, degrees - 9 * free));
    ramp.line(...point(high, degrees + 11 * free));
    ramp.close();
    const place = holds ? [INNER + size, -4 * free] : [INNER + size + 2.5, 7 * free];
    const [x, y] = point(place[0] ?? 0, degrees + (place[1] ?? 0));
    const half = `a${size} ${size} 0 1 1`;
    const d = `M${round(x - size)} ${round(y)}${half} ${2 * size} 0${half} ${-2 * size} 0Z`;
    return [
      { mark: 'path', look: 'races-ramp', d: ramp.d },
      { mark: 'path', look: 'races-jam', d },
    ];
  });
}

function around(one: (degrees: number) => Group['marks']): Group['marks'] {
  return Array.from({ length: COUNT }, (_, k) => one((360 * k) / COUNT)).flat();
}

// Clockwise from the top.
function point(radius: number, degrees: number): [number, number] {
  const turn = (degrees * Math.PI) / 180;
  return [radius * Math.sin(turn), -radius * Math.cos(turn)];
}
