import { CASE, type Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';

/**
 * A train in one line, so that a case of a test is read at a glance, and one that falls is printed
 * in a line that the next test can begin with. Phrases, with `;` between them, in any order:
 *
 *     main 30:66 x3              a set: teeth of sun and ring, three planets; 30:18:66 x3, planets counted
 *     long 30:14+12:70 x4        each planet a meshed pair; 30:+:70 x4, not counted
 *     tall 20:24-44:88 x3        stepped planets: the sun meshes the first step, the ring the second
 *     low 24: shares long        a sun on another set's planets; :90 a ring; 24:14+: x3 by inner planets
 *     axle 16<10>16 x2           bevels: side gear, pinion, side gear; 16<>16, not counted
 *     odd: hub 100 ~ idler* 20, idler ~ high 101     other wheels: * is carried, ~ meshes outside, and
 *                                ~~ inside, the ring first
 *     drop: drum 41 drives shaft 43                  a gear pair; drives internally, drives by chain
 *     in shaft = main.sun        the input and what is one with it; `in main.sun` alone; `out` each output
 *     middle = main.carrier + low.sun                splined to each other
 *     low brake holds main.ring  to the case: a brake, but a band or a pawl where its name says so
 *     first holds main.ring by band                  or where this does
 *     lock joins shaft + drum    a clutch
 *     sprag lets main.ring clockwise in race         a one-way clutch, the inner in the outer; in the case
 *                                where no outer is named
 *     D 1 applies low brake + lock                   a gear of a range; N N applies nothing
 *     forward clockwise          how the output turns as the vehicle goes forward
 *
 * `more` is laid over the file: its name, or sections that a line has no words for. What is no train
 * throws, with what the reader says.
 */
export function trainOf(line: string, more: object = {}): Train {
  const { train, problems } = readTrain(fileOf(line, more));
  if (!train) throw new Error(`${line}: ${JSON.stringify(problems)}`);
  return train;
}

/** The text of the train file of a line: JSON, which is YAML. */
export function fileOf(line: string, more: object = {}): string {
  const file: File = {
    outputs: [],
    sets: {},
    'gear pairs': {},
    joined: {},
    devices: {},
    ranges: {},
  };
  for (const phrase of line.split(';').map((part) => part.trim())) read(phrase, file);
  const { outputs, ...sections } = file;
  const output = outputs.length > 1 ? outputs : outputs[0];
  return JSON.stringify({ holdturn: 1, name: 'One line', ...sections, output, ...more });
}

interface File {
  readonly outputs: string[];
  readonly sets: Record<string, object>;
  readonly 'gear pairs': Record<string, object>;
  readonly joined: Record<string, readonly string[]>;
  readonly devices: Record<string, object>;
  readonly ranges: Record<string, Record<string, readonly string[]>>;
  input?: string;
  forward?: string;
}

type Words = readonly (string | undefined)[];

const PHRASES: readonly (readonly [RegExp, (file: File, words: Words) => void])[] = [
  [
    /^(.+) (\d*):(?:(\d*[-+]?\d*):)?(\d*)(?: x(\d+))?(?: shares (.+))?$/u,
    ({ sets }, [name, sun, between, ring, count, shares]) => {
      const teeth = { sun: whole(sun), ring: whole(ring), shares };
      sets[name as string] = { ...teeth, ...planets(between, whole(count)) };
    },
  ],
  [
    /^(.+) (\d+)<(\d*)>(\d+)(?: x(\d+))?$/u,
    ({ sets }, [name, left, pinion, right, pinions]) => {
      const sides = [whole(left), whole(right)];
      sets[name as string] = { sides, pinion: whole(pinion), pinions: whole(pinions) };
    },
  ],
  [
    /^(.+): (.+) (\d+) drives(?: (internal)ly| by (chain))? (.+) (\d+)$/u,
    (file, [name, driver, teeth, internal, chain, driven, others]) => {
      file['gear pairs'][name as string] = {
        driver: [driver, whole(teeth)],
        driven: [driven, whole(others)],
        kind: internal ?? chain,
      };
    },
  ],
  [
    /^(.+?): (.+ ~.+)$/u,
    ({ sets }, [name, meshes]) => (sets[name as string] = wheels(meshes as string)),
  ],
  [/^forward (clockwise|anticlockwise)$/u, (file, [way]) => (file.forward = way as string)],
  [
    /^(in|out) (.+?)(?: = (.+))?$/u,
    (file, [end, name, members]) => {
      if (end === 'in') file.input = name as string;
      else file.outputs.push(name as string);
      if (members) file.joined[name as string] = members.split(' + ');
    },
  ],
  [
    /^(.+) = (.+)$/u,
    ({ joined }, [name, members]) => (joined[name as string] = (members as string).split(' + ')),
  ],
  [
    /^(.+) holds (.+?)(?: by (brake|band|pawl))?$/u,
    ({ devices }, [name, member, kind]) => {
      devices[name as string] = { [kind ?? kindBy(name as string)]: member };
    },
  ],
  [
    /^(.+) joins (.+) \+ (.+)$/u,
    ({ devices }, [name, ...members]) => (devices[name as string] = { clutch: members }),
  ],
  [
    /^(.+) lets (.+) (clockwise|anticlockwise)(?: in (.+))?$/u,
    ({ devices }, [name, inner, lets, outer = CASE]) => {
      devices[name as string] = { 'one-way': [inner, outer], lets };
    },
  ],
  [
    /^(\S+) (.+) applies (.+)$/u,
    ({ ranges }, [range, gear, names]) => {
      const on = names === 'nothing' ? [] : (names as string).split(' + ');
      ranges[range as string] = { ...ranges[range as string], [gear as string]: on };
    },
  ],
];

function read(phrase: string, file: File): void {
  for (const [pattern, enter] of PHRASES) {
    const found = pattern.exec(phrase);
    if (!found) continue;
    const [, ...words] = found;
    enter(file, words);
    return;
  }
  throw new Error(`no phrase of a train: "${phrase}"`);
}

function whole(digits: string | undefined): number | undefined {
  return digits ? Number(digits) : undefined;
}

// What stands between the sun and the ring.
function planets(between: string | undefined, count: number | undefined): object {
  const [near, far] = between?.split(/[-+]/u) ?? [];
  if (between?.includes('+')) return { inner: whole(near), outer: whole(far), pairs: count };
  if (between?.includes('-')) return { steps: [whole(near), whole(far)], planets: count };
  return { planet: whole(near), planets: count };
}

/** Of what kind a device is that holds, where its line does not say. */
export function kindBy(name: string): 'band' | 'brake' | 'pawl' {
  return (['band', 'pawl'] as const).find((kind) => name.split(' ').includes(kind)) ?? 'brake';
}

function wheels(meshes: string): object {
  const teeth: Record<string, number> = {};
  const carried: string[] = [];
  const wheel = (text: string) => {
    const [, name = '', pinned, its] = /^(.+?)(\*)?(?: (\d+))?$/u.exec(text) ?? [];
    if (its) teeth[name] = Number(its);
    if (pinned && !carried.includes(name)) carried.push(name);
    return name;
  };
  const pairs = meshes.split(', ').map((mesh) => {
    return [...mesh.split(/ ~~? /u).map(wheel), ...(mesh.includes('~~') ? ['internal'] : [])];
  });
  return { wheels: teeth, carried, meshes: pairs };
}
