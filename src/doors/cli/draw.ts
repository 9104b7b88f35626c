import { type Flow, flow, ledgerOf, pushesOf } from '../../engine/flow/index.ts';
import { assemble, type Train } from '../../engine/train/index.ts';
import { stickDiagram, paintStickDiagram } from '../../telling/stickdiagram/index.ts';
import { endsOf, type Standings, standingsOf, toSvg } from '../../telling/scene/index.ts';
import {
  AT_THE_INPUT,
  meant,
  type GearSelection,
  selectionOf,
  trainAsFound,
} from '../../asking/request/index.ts';
import { gearName, visible, type Voice } from '../../telling/narrative/index.ts';
import { endSceneOf, explodedSceneOf, leverSceneOf } from '../../command/drawing/index.ts';
import {
  suggestion,
  done,
  type Options,
  type Reply,
  type Session,
  trainOf,
  write,
  lookingAt,
} from '../../command/session/index.ts';
import { Misuse } from '../../command/machine/index.ts';
import { CHOICES } from '../../command/typed/index.ts';

/**
 * Draws the stick diagram, a set from its end, or the lever diagram, bare or as all stands in a gear; or
 * the parts of the teardown in a row. SVG, printed or in a file.
 */
export function draw(file: string, session: Session): Reply {
  const { options } = session;
  const train = trainAsFound(trainOf(file, session), options);
  const { stand = AT_THE_INPUT, voice } = lookingAt(train, session).page;
  const selection = selectionOf(train, options);
  const alone = options.range ?? options.side;
  if (!selection && alone !== undefined) throw new Misuse('bad.side alone');
  const chosen = [options.end !== undefined, options.lever, options.exploded].filter(Boolean);
  if (chosen.length > 1) throw new Misuse('bad.picture');
  if (options.exploded && selection) throw new Misuse('bad.exploded in gear');
  const standings = selection && standingsIn(train, selection, sideOf(options), voice);
  const name = voice.train(train);
  const nameOf = (its: string) => voice.called(its);
  const half = chosen.length === 0;
  const scene = options.exploded
    ? explodedSceneOf(train, voice)
    : options.lever
      ? leverSceneOf(train, { selection, side: sideOf(options), voice })
      : options.end === undefined
        ? paintStickDiagram(stickDiagram(train, nameOf), name, standings)
        : endSceneOf(train, options.end, { stand, voice, standings });
  const svg = toSvg(scene);
  const { output } = options;
  if (output === undefined) return done(svg.trimEnd());
  write(output, Buffer.from(svg), 'SVG', session);
  const said = half
    ? voice.say('drawn', { file: visible(output), train: name })
    : voice.say('drawn.end written', { file: visible(output), title: scene.title });
  return done(said);
}

type Side = keyof Pick<Flow, 'drive' | 'coast'>;

function sideOf({ side = 'drive' }: Options): Side {
  const known = CHOICES.side ?? [];
  const name = meant(side, known);
  if (name === undefined) throw new Misuse('no.side', suggestion(side, known));
  return name as Side;
}

function standingsIn(
  train: Train,
  { on, gear }: GearSelection,
  side: Side,
  voice: Voice,
): Standings {
  const working = flow(train, on)[side];
  const { speeds, devices, branches, circling, state } = working;
  const ends = endsOf(train);
  const ledger = ledgerOf(train, pushesOf(train, working));
  const words = {
    torque: (parts: number) => `${Math.round(parts * 100)} N·m`,
  };
  const shown = { ends, speeds, ledger, devices, branches, circling };
  const applied = gear
    ? gearName(gear, voice)
    : voice.list(on.map((name) => voice.called(name))) || voice.say('drawn.nothing on');
  return {
    ...standingsOf(assemble(train), shown, words),
    key: [
      voice.say('drawn.gear', { gear: applied, side, state: state.replace(' ', '_') }),
      voice.say('marks.picture'),
    ],
  };
}
