import { gearsOf, type Train } from '../src/engine/train/index.ts';
import { endSceneOf, leverSceneOf } from '../src/command/drawing/index.ts';
import { AT_THE_INPUT } from '../src/asking/request/index.ts';
import { type Scene, toSvg } from '../src/telling/scene/index.ts';
import { voiceOf } from '../src/telling/narrative/index.ts';
import { trainOf } from './line.ts';
import { OURS, ours } from './trains.ts';

/** A picture that is kept, and shown in the handbook. */
export interface Picture {
  /** Its file in `docs/gallery`, without `.svg`. */
  readonly name: string;
  readonly says: string;
  /** The train of the picture, in one line. */
  readonly line: string;
  draw(train: Train): Scene;
}

const voice = voiceOf('en');

const end = (name: string, says: string, line: string, of = 'set'): Picture => {
  const draw = (train: Train) =>
    endSceneOf(train, of, { stand: AT_THE_INPUT, voice, standings: undefined });
  return { name: `end-${name}`, says, line: `in crank; out hub; ${line}`, draw };
};

const lever = (name: string, says: string, line: string): Picture => {
  const draw = (train: Train) => {
    const [gear] = gearsOf(train);
    const selection = gear && { on: gear.on };
    return leverSceneOf(train, { selection, side: 'drive', voice });
  };
  return { name: `lever-${name}`, says, line, draw };
};

/** From its end, a set of each kind and a pair of each kind; the teeth are invented. */
export const ENDS: readonly Picture[] = [
  end('plain', 'A plain set: each planet meshes the sun and the ring', 'set 15:9:33 x3'),
  end('pair', 'Each planet a meshed pair', 'set 15:7+6:35 x4'),
  end('stepped', 'Stepped planets: the ring meshes the second step', 'set 12:18-9:39 x3'),
  end(
    'sharing',
    'A second sun on the planets of another set',
    'own 15:7+6:35 x4; set 23: shares own',
  ),
  end('wheels', 'Any other wheels', 'set: inside 20 ~ idler* 12, outside 44 ~~ idler'),
  end('bevel', 'A bevel differential, as a scheme', 'set 16<10>16 x2'),
  end('external', 'A gear pair: they turn opposite ways', 'set: crank 17 drives hub 23'),
  end('internal', 'A pinion inside a ring', 'set: crank 13 drives internally hub 41'),
  end('chain', 'A chain', 'set: crank 15 drives by chain hub 21'),
];

/** Lever diagrams, in a gear where there is one. */
export const LEVERS: readonly Picture[] = [
  lever(
    'plain',
    'The ring held',
    'set 30:66 x3; in set.sun; out set.carrier; brake holds set.ring; D 1 applies brake',
  ),
  lever(
    'pair',
    'Meshed pairs, the carrier held: the ring turns with the sun',
    'set 30:+:70 x3; in set.sun; out set.ring; brake holds set.carrier; D 1 applies brake',
  ),
  lever(
    'two sets',
    'Two sets that share two members are one lever',
    'front 36:84 x3; rear 36:84 x3; in shaft = front.ring; out drum = front.carrier + rear.ring; shell = front.sun + rear.sun; sprag lets rear.carrier clockwise; clutch joins shaft + shell; D 1 applies nothing',
  ),
  lever(
    'pair behind',
    'A gear pair is a lever that is pinned to the case',
    'set 30:66 x3; in set.sun; out layshaft; drop: set.carrier 41 drives layshaft 43; brake holds set.ring; D 1 applies brake',
  ),
].map((its) => ({ ...its, name: its.name.replaceAll(' ', '-') }));

/** The picture as a file. */
export function svgOf({ line, draw }: Picture): string {
  return toSvg(draw(trainOf(line)));
}

/** The page of the handbook that shows them all. */
export function galleryPage(): string {
  const shown = (pictures: readonly Picture[]) =>
    pictures.map(({ name, says, line }) => {
      return `### ${says}\n\n\`${line}\`\n\n![${says}](gallery/${name}.svg)`;
    });
  const trains = OURS.map((name) => {
    const called = ours(name).name;
    return `### ${called}\n\n![The stick diagram of ${called}](../trains/${name}.svg)`;
  });
  const parts = [
    HEAD,
    '## From the end',
    ...shown(ENDS),
    '## Lever diagrams',
    ...shown(LEVERS),
    '## Stick diagrams',
    'Each train of `trains/`, all invented by us.',
    ...trains,
  ];
  return `${parts.join('\n\n')}\n`;
}

const HEAD = `# The gallery

Every kind of picture that is drawn of a train. Each is kept, and a test draws it anew: what has changed is
left beside it. Over each stands its train in one line, as the tests write one: teeth of sun and ring,
\`x3\` for three planets, \`in\` and \`out\`, who \`holds\`, \`joins\` or \`lets\` whom. Teeth and trains are
invented by us.

\`\`\`sh
./holdturn draw trains/kestrel-three-speed.train.yaml --end rear -o rear.svg
\`\`\`

\`\`\`sh
./holdturn draw trains/kestrel-three-speed.train.yaml --lever --range D --gear 2 -o lever.svg
\`\`\``;
