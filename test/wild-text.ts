import { trainText } from '../src/engine/trainfile/index.ts';
import { Dice } from './dice.ts';
import { randomTrain } from './random-train.ts';

/**
 * What somebody might hand over as a train file, and what nobody should: noise, good files
 * with damage, and texts made to hurt a reader. The same seed, the same text; `good` are the
 * files that are damaged.
 */
export function wildText(seed: number, good: readonly string[]): string {
  const dice = new Dice(seed);
  const roll = dice.whole(1, 1000);
  if (roll <= 100) return noise(dice);
  if (roll <= 200) return words(dice);
  if (roll <= 215) return huge(dice);
  const file = roll <= 400 ? trainText(randomTrain(seed)) : dice.pick(good);
  return dice.chance(0.1) ? file : damaged(dice, file);
}

// Any characters at all.
function noise(dice: Dice): string {
  const most = dice.pick([0x7f, 0xff, 0xffff]);
  return repeat(dice.whole(0, 400), () => String.fromCharCode(dice.whole(0, most))).join('');
}

// The words and marks of train files in any order.
function words(dice: Dice): string {
  const start = dice.chance(0.7) ? 'holdturn: 1\n' : '';
  return start + repeat(dice.whole(1, 120), () => dice.pick(SCRAPS)).join('');
}

const SCRAPS = [
  'holdturn|name|about|input|output|sets|joined|devices|ranges|gear pairs|sun|ring|planet'.split(
    '|',
  ),
  'planets|pairs|steps|shares|wheels|carried|meshes|sides|pinion|inner|outer|clutch|brake'.split(
    '|',
  ),
  'band|one-way|lets|clockwise|anticlockwise|driver|driven|kind|internal|external|case'.split('|'),
  'front|front.sun|front.planet|rear.carrier|__proto__|constructor|toString|null|true|~'.split('|'),
  ['30', '66', '0', '-1', '1e9', '.5', '0x1F', '1_000', '9'.repeat(30), '30.0', '"', "'"],
  [': ', ':', '\n', '\n  ', '\n    ', '\n', ', ', '[', ']', '{', '}', '- ', '# ', ' ', '\t'],
  ['&a ', '*a', '!!str ', '<<: ', '|', '>', '---\n', '...\n', '%YAML 1.2\n', '? ', '\r', '\uFEFF'],
].flat();

function damaged(dice: Dice, file: string): string {
  let text = file;
  for (let k = dice.pick([1, 1, 1, 2, 3, 8]); k > 0; k--) text = damagedOnce(dice, text);
  return text;
}

function damagedOnce(dice: Dice, text: string): string {
  const from = dice.whole(0, text.length);
  const to = Math.min(text.length, from + dice.pick([0, 1, 1, 2, 5, 20, 200]));
  const cut = (middle: string) => text.slice(0, from) + middle + text.slice(to);
  switch (dice.whole(1, 8)) {
    case 1:
      return cut('');
    case 2:
      return cut(dice.pick(SCRAPS));
    case 3:
      return cut(text.slice(from, to).repeat(dice.whole(2, 5)));
    case 4:
      return cut(String.fromCharCode(dice.whole(0, 0x2fff)));
    case 5: {
      // Another number of teeth.
      const odd = dice.pick([
        '0',
        '-30',
        '1',
        '999999',
        '1000000',
        '7'.repeat(1000),
        '1e400',
        '.nan',
        '3.5',
      ]);
      return replaceOne(dice, text, /\d+/g, dice.chance(0.5) ? odd : String(dice.whole(1, 120)));
    }
    case 6: {
      // One name or word in another's place: the likeliest slip, and the likeliest to read.
      const names = text.match(/[\w.-]+/g) ?? ['case'];
      return replaceOne(dice, text, /[\w.-]+/g, dice.pick(names));
    }
    case 7: {
      const lines = text.split('\n');
      lines.splice(dice.whole(0, lines.length), 0, dice.pick(lines));
      return lines.join('\n');
    }
    default: {
      const lines = text.split('\n');
      lines.splice(dice.whole(0, lines.length - 1), 1);
      return lines.join('\n');
    }
  }
}

function replaceOne(dice: Dice, text: string, pattern: RegExp, by: string): string {
  const found = [...text.matchAll(pattern)];
  if (found.length === 0) return text;
  const { index, 0: old } = dice.pick(found);
  return text.slice(0, index) + by + text.slice(index + old.length);
}

// Far too much of something.
function huge(dice: Dice): string {
  const count = dice.pick([100, 299, 1000, 10_000]);
  const head = 'holdturn: 1\nname: Huge\ninput: a\noutput: b\n';
  const list = (line: (k: number) => string) => Array.from({ length: count }, (_, k) => line(k));
  const sets = (last: number) => {
    const lines = list((k) => `  s${k}: { sun: 30, ring: ${60 + (k % 40)} }\n`);
    return `sets:\n${lines.slice(0, last).join('')}`;
  };
  switch (dice.whole(1, 14)) {
    case 1:
      return `${head}joined:\n  a: [${list((k) => `m${k}`)}]\n`;
    case 2:
      return `${head}joined:\n${list((k) => `  m${k}: [m${k + 1}, m${k + 2}]\n`).join('')}`;
    case 3:
      return head + sets(count);
    case 4: {
      // As many sets as are read, in a chain, with as many devices as can be.
      const links = list((k) => `  j${k}: [s${k}.ring, s${k + 1}.sun]\n`);
      const chain = `joined:\n${links.slice(0, 60).join('')}`;
      const brakes = list((k) => (k < 60 ? `  b${k}: { brake: s${k}.carrier }\n` : '')).join('');
      const ends = 'holdturn: 1\nname: Chain\ninput: s0.sun\noutput: s60.ring\n';
      const applied = list((k) => `b${k}`).slice(0, 60);
      const ranges = `ranges:\n  D: { "1": [${applied}] }\n`;
      return `${ends}${sets(61)}${chain}devices:\n${brakes}${ranges}`;
    }
    case 5:
      return `${head}devices:\n${list((k) => `  d${k}: { clutch: [a, m${k}] }\n`).join('')}`;
    case 6: {
      const twelve = Array.from({ length: 12 }, (_, k) => `  d${k}: { clutch: [a, m${k}] }\n`);
      const oneWay = list((k) => `  w${k}: { one-way: [m${k % 12}, b], lets: clockwise }\n`);
      return `${head}devices:\n${twelve.join('')}${oneWay.slice(0, 40).join('')}`;
    }
    case 7:
      return `${head}sets: ${'['.repeat(count)}${']'.repeat(dice.whole(0, count))}`;
    case 8:
      return `${head}sets: ${'{ a: '.repeat(count)}`;
    case 9:
      return `${head}sets:\n${list((k) => `${' '.repeat(Math.min(k, 2000))}a:\n`).join('')}`;
    case 10:
      return `a: &a [x, x, x, x, x, x, x, x, x]\n${list(
        (k) => `a${k}: &a${k} [${`*a${k > 0 ? k - 1 : ''}, `.repeat(9)}]\n`,
      )
        .slice(0, 30)
        .join('')}`;
    case 11:
      return `${head}sets:\n  front: { sun: ${'9'.repeat(count)}, ring: 66 }\n`;
    case 12:
      return `${head}${'long '.repeat(count)}: [a, b]\nabout: ${'words '.repeat(count)}\n`;
    case 13: {
      const wheels = list((k) => `w${k}: ${10 + (k % 90)}`);
      const meshes = list((k) => `[w${k}, w${(k * 7 + 1) % count}]`);
      const carried = list((k) => `w${k}`);
      const odd = `    wheels: { ${wheels} }\n    carried: [${carried}]\n    meshes: [${meshes}]\n`;
      return `${head}sets:\n  odd:\n${odd}`;
    }
    default: {
      // Prime teeth, so that no fraction cancels.
      const primes = [999_983, 999_979, 999_961, 999_959, 999_953, 999_931];
      const set = (k: number) =>
        `  s${k}: { sun: ${dice.pick(primes)}, ring: ${dice.pick(primes)} }\n`;
      const many = Math.min(count, 60);
      const chain = Array.from(
        { length: many - 1 },
        (_, k) => `  j${k}: [s${k}.ring, s${k + 1}.sun]\n`,
      );
      const brakes = Array.from({ length: many }, (_, k) => `  b${k}: { brake: s${k}.carrier }\n`);
      const all = Array.from({ length: many }, (_, k) => `b${k}`);
      return [
        `holdturn: 1\nname: Primes\ninput: s0.sun\noutput: s${many - 1}.ring\nsets:\n`,
        ...Array.from({ length: many }, (_, k) => set(k)),
        `joined:\n${chain.join('')}devices:\n${brakes.join('')}ranges:\n  D: { "1": [${all}] }\n`,
      ].join('');
    }
  }
}

function repeat<T>(count: number, make: () => T): T[] {
  return Array.from({ length: count }, make);
}
