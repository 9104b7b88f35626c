import {
  askBands,
  askEndPlays,
  askPacks,
  askPreloads,
  askWear,
  type MeasuredAnswer,
  type MeasureRequest,
  type TrialsRequest,
} from '../../asking/build/index.ts';
import type { MeasuredKind, Train } from '../../engine/train/index.ts';
import {
  bandJson,
  endPlayJson,
  packJson,
  preloadJson,
  wearJson,
} from '../../telling/data/index.ts';
import {
  bandText,
  endPlayText,
  packText,
  preloadText,
  wearText,
} from '../../telling/report/index.ts';
import type { Page } from '../../telling/text/index.ts';
import {
  jobAsked,
  noted,
  json,
  type Reply,
  type Session,
  givenIn,
  speakingOf,
  trainOf,
} from '../../command/session/index.ts';
import { Misuse } from '../../command/machine/index.ts';

type Judge = (file: string, readings: string | undefined, session: Session) => Reply;

/**
 * What a file of readings or a job tells of one kind, judged. Exit code 1 where something is
 * outside, or may not be believed.
 */
export function measure(verb: MeasuredKind, ...asked: Parameters<Judge>): Reply {
  return JUDGES[verb](...asked);
}

const JUDGES: Readonly<Record<MeasuredKind, Judge>> = {
  pack: judge({ verb: 'pack', ask: askPacks, toJson: packJson, toText: packText }),
  endplay: judge({ verb: 'endplay', ask: askEndPlays, toJson: endPlayJson, toText: endPlayText }),
  preload: judge({ verb: 'preload', ask: askPreloads, toJson: preloadJson, toText: preloadText }),
  band: judge({ verb: 'band', ask: askBands, toJson: bandJson, toText: bandText }),
  wear: judge({ verb: 'wear', ask: askWear, toJson: wearJson, toText: wearText }),
};

interface Kind<Judged> {
  readonly verb: MeasuredKind;
  readonly ask: (train: Train, request: MeasureRequest & TrialsRequest) => MeasuredAnswer<Judged>;
  readonly toJson: (judged: readonly Judged[]) => Parameters<typeof json>[0];
  readonly toText: (train: Train, judged: readonly Judged[], page: Page) => string;
}

function judge<Judged>({ verb, ask, toJson, toText }: Kind<Judged>): Judge {
  return (file, readings, session) => {
    const { options, world } = session;
    if (file === '-' && readings === '-') throw new Misuse('bad.stdin twice');
    const job = jobAsked(session);
    if (readings === undefined && !job) throw new Misuse('bad.missing readings', { verb });
    const { readings: _, job: __, ...trials } = options;
    const { train, judged, wrong, names } = ask(trainOf(file, session), {
      ...trials,
      ...(readings !== undefined && { readings: givenIn(readings, world) }),
      ...(job && { job }),
    });
    const { page } = speakingOf(train, session);
    const unit = options.inch ? 'in' : 'mm';
    const { text } = options.json
      ? json(toJson(judged))
      : { text: noted(toText(train, judged, { ...page, unit }), job, file, session, names) };
    return { text, exit: wrong ? 1 : 0 };
  };
}
