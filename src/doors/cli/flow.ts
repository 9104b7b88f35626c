import { askFlow } from '../../asking/gears/index.ts';
import { flowAtJson, flowJson, gearsJson } from '../../telling/data/index.ts';
import { flowAtText, flowText, gearsText } from '../../telling/report/index.ts';
import {
  done,
  json,
  type Reply,
  type Session,
  speakingOf,
  trainOf,
} from '../../command/session/index.ts';

/** One gear in full, or every gear that the file's ranges name in a row each. */
export function flow(file: string, session: Session): Reply {
  const { options } = session;
  const answer = askFlow(trainOf(file, session), options);
  const { train, stand } = answer;
  const page = { ...speakingOf(train, session).page, stand };
  const { voice } = page;
  const all = options.all ?? false;
  switch (answer.asked) {
    case 'gear':
      return options.json
        ? json(flowJson(answer.flow, voice, stand))
        : done(flowText({ ...answer, all }, page));
    case 'gears':
      return options.json
        ? json(gearsJson(answer.gears, voice, stand))
        : done(gearsText(train, answer.gears, page));
    case 'speeds': {
      const { on, speeds, working } = answer;
      return options.json
        ? json(flowAtJson(on, speeds, working, voice, stand))
        : done(flowAtText({ train, on, working, all }, page));
    }
  }
}
