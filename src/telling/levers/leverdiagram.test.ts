import { expect, it } from 'vitest';
import { type Flow, flow, isSpan } from '../../engine/flow/index.ts';
import { compoundLevers, leversOf } from '../../engine/lever/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import { motionOf } from '../../engine/motion/index.ts';
import { gearsOf, isFriction, type Train } from '../../engine/train/index.ts';
import { Dice, seedOfRun } from '../../../test/dice.ts';
import { boxesOf, meet } from '../../../test/drawn.ts';
import { lineOf } from '../../../test/lineof.ts';
import { randomTrain } from '../../../test/random-train.ts';
import { type Scene, SIZE, widthOf } from '../scene/index.ts';
import { speedAt, leverDiagram, leverScene } from '../levers/index.ts';
import { Tally } from '../../../test/tally.ts';
import { OURS, ours } from '../../../test/trains.ts';

const seed = seedOfRun();

it('arms on paper are as the levers, whatever the width', () => {
  const tally = new Tally({ levers: 150 });
  everywhere((train) => {
    const arms = compoundLevers(leversOf(motionOf(train))).map(({ nodes }) => {
      return nodes.map(({ at }) => toNumber(at));
    });
    for (const width of WIDTHS) {
      const drawn = leverDiagram(train, width).levers.filter((axes) => axes.length > 2);
      const ends = drawn.map((axes) => {
        const [from = 0, to = 1] = [axes[0]?.x, axes.at(-1)?.x];
        return axes.map(({ x }) => (x - from) / (to - from));
      });
      // A lever may be turned end for end, and stands where links are short.
      const close = (a: readonly number[], b: readonly number[]) =>
        a.length === b.length && a.every((x, k) => Math.abs(x - (b[k] as number)) < 1e-9);
      for (const at of arms) {
        const back = at.map((x) => 1 - x).toReversed();
        expect(ends.some((drawnAt) => close(drawnAt, at) || close(drawnAt, back))).toBe(true);
      }
      expect(drawn).toHaveLength(arms.length);
      tally.met('levers', drawn.length);
    }
  });
  tally.enough();
});

it('names lie on no name and on no axis, and all is on the sheet', () => {
  const tally = new Tally({ names: 600, 'beside an axis': 5000 });
  everywhere((train) => {
    for (const width of WIDTHS) {
      const { levers, width: wide, height } = leverDiagram(train, width);
      const nodes = levers.flat();
      const boxes = nodes.map(({ names, nameX, nameY, anchor }) => {
        const room = Math.max(...names.map((line) => widthOf(line, SIZE)));
        const left = anchor === 'middle' ? nameX - room / 2 : nameX;
        return { left, right: left + room, top: nameY - 13, foot: nameY + (names.length - 1) * 20 };
      });
      boxes.forEach((box, k) => {
        tally.met('names');
        expect(box.foot).toBeLessThanOrEqual(height);
        expect(nodes[k]?.x).toBeLessThanOrEqual(wide);
        for (const other of boxes.slice(k + 1)) {
          const apart = box.foot < other.top || other.foot < box.top;
          expect(apart || box.right <= other.left || other.right <= box.left).toBe(true);
        }
        nodes.forEach(({ x, anchor, nameY, names }) => {
          if (anchor === 'middle') return;
          tally.met('beside an axis');
          const low = nameY + (names.length - 1) * 20;
          expect(x <= box.left || x >= box.right || low < box.top).toBe(true);
        });
      });
    }
  });
  tally.enough();
});

it('every member of a set or device has a node, at its speed', () => {
  const tally = new Tally({ 'at rest': 180, turning: 130 });
  everywhere((train, on) => {
    const { assembly } = motionOf(train);
    const { drawn, speeds } = (flow(train, on) satisfies Flow).drive;
    const floats = new Map([...drawn].map(([name, speed]) => [name, toNumber(speed)]));
    const shown = { drawn: floats, speeds, on: new Set(on), figure: String };
    const scale = leverDiagram(train);
    const nodes = nodesOf(leverScene(scale, shown));
    for (const name of [train.input, ...train.devices.map(({ first }) => first)]) {
      const body = assembly.bodyOf(name) ?? 0;
      if (body === 0 || assembly.onPins.has(body)) continue;
      const label = assembly.bodies[body]?.label ?? '';
      const own = nodes.filter(({ member }) => member === label);
      expect(own.length, label).toBeGreaterThan(0);
      for (const { y } of own) {
        const speed = floats.get(label) ?? 0;
        expect(speedAt(scale, shown, y)).toBeCloseTo(speed, 9);
        tally.met(speed === 0 ? 'at rest' : 'turning');
      }
    }
  });
  tally.enough();
});

it('no two labels overlap, nor leave the sheet, in any gear', () => {
  const tally = new Tally({ gears: 100, figures: 2000 });
  const clear = (train: Train, on: readonly string[]) => {
    const { drawn, speeds } = flow(train, on).drive;
    const floats = new Map([...drawn].map(([name, speed]) => [name, toNumber(speed)]));
    const figure = (speed: number) => speed.toFixed(2);
    for (const width of WIDTHS) {
      const shown = { drawn: floats, speeds, on: new Set(on), figure };
      const scene = leverScene(leverDiagram(train, width), shown);
      const { words } = boxesOf(scene);
      words.forEach((word, k) => {
        tally.met('figures');
        const over = words.slice(k + 1).filter((other) => meet(word, other));
        expect(over.map(({ says }) => `${word.says} on ${says}`)).toEqual([]);
        expect(word.left).toBeGreaterThanOrEqual(0);
        expect(word.right).toBeLessThanOrEqual(scene.width);
      });
    }
    tally.met('gears');
  };
  for (const name of OURS) {
    const train = ours(name);
    for (const { on } of gearsOf(train)) clear(train, on);
  }
  everywhere(clear);
  tally.enough();
});

it('a free member has no figure: what one motion gives it is no fact', () => {
  const tally = new Tally({ free: 20 });
  everywhere((train, on) => {
    const { drawn, speeds } = flow(train, on).drive;
    const floats = new Map([...drawn].map(([name, speed]) => [name, toNumber(speed)]));
    const shown = { drawn: floats, speeds, on: new Set(on), figure: String };
    for (const mark of leverScene(leverDiagram(train), shown).marks) {
      if (mark.mark !== 'group' || mark.look !== 'lever-node') continue;
      const settled = speeds.get(mark.about?.name ?? '');
      const [text] = mark.marks.flatMap((its) => (its.mark === 'words' ? [its.text] : []));
      if (!settled || !isSpan(settled)) continue;
      tally.met('free');
      expect(text).toBe('');
    }
  });
  tally.enough();
});

function nodesOf({ marks }: Scene): { member: string; y: number }[] {
  return marks.flatMap((mark) => {
    return mark.mark === 'group' && mark.look === 'lever-node'
      ? [{ member: mark.about?.name ?? '', y: mark.at?.y ?? 0 }]
      : [];
  });
}

const WIDTHS = [1000, 400];

function everywhere(holds: (train: Train, on: readonly string[]) => void): void {
  for (const name of OURS) {
    const train = ours(name);
    attempt(train, train.ranges[0]?.gears[0]?.on ?? [], name);
  }
  for (let k = 0; k < 60; k++) {
    const train = randomTrain(seed + k);
    const dice = new Dice(seed + k);
    const names = train.devices.filter(isFriction).map(({ name }) => name);
    const on = names.filter(() => dice.chance(0.3));
    attempt(train, on, `SEED=${seed + k}, [${on}] on: ${lineOf(train)}`);
  }

  function attempt(train: Train, on: readonly string[], name: string): void {
    try {
      holds(train, on);
    } catch (error) {
      throw new Error(name, { cause: error });
    }
  }
}
