import { flow as flowOf, flowAt } from '../../engine/flow/index.ts';
import { gearsOf, type Train } from '../../engine/train/index.ts';
import {
  flowAtJson,
  flowAtText,
  flowJson,
  flowText,
  gearsJson,
  gearsText,
  type NamedFlow,
} from '../../telling/report/index.ts';
import { speedsOf } from './members.ts';
import { Refusal } from './refusal.ts';
import { rangesOf, type Selection, selectionOf } from './selection.ts';
import { done, json, type Reply, type Session } from './session.ts';
import { trainOf } from './source.ts';
import { lossesOf, trainAsFound } from './wrong.ts';
import { lookingAt } from './stand.ts';

/** One gear in full, or every gear that the file's ranges name in a row each. */
export function flow(file: string, asked: Session): Reply {
  const { options } = asked;
  const train = trainAsFound(trainOf(file, asked), options);
  const session = lookingAt(train, asked);
  const selection = selectionOf(train, options);
  if (options.at !== undefined) return atSpeeds(train, selection?.on ?? [], options.at, session);
  return selection ? oneGear(train, selection, session) : everyGear(train, session);
}

function oneGear(train: Train, { on, gear }: Selection, session: Session): Reply {
  const { options, language, page } = session;
  const answer = flowOf(train, on, lossesOf(options));
  if (options.json) return json(flowJson(answer, language, page.stand));
  const report = { train, flow: answer, all: options.all ?? false, ...(gear && { gear }) };
  return done(flowText(report, page));
}

function everyGear(train: Train, { options, language, page }: Session): Reply {
  const losses = lossesOf(options);
  const gears = gearsOf(train, rangesOf(train, options)).map(({ range, gear, on }): NamedFlow => {
    return { range, gear, flow: flowOf(train, on, losses) };
  });
  return options.json
    ? json(gearsJson(gears, language, page.stand))
    : done(gearsText(train, gears, page));
}

function atSpeeds(train: Train, on: readonly string[], text: string, session: Session): Reply {
  const { options, language, page } = session;
  if (options.meshEfficiency !== undefined) throw new Refusal('bad.at losses');
  const speeds = speedsOf(train, text);
  const given = [...speeds].map(([member, speed]) => ({ member, speed }));
  const working = flowAt(train, on, given);
  if (options.json) return json(flowAtJson(on, speeds, working, language, page.stand));
  return done(flowAtText({ train, on, working, all: options.all ?? false }, page));
}
