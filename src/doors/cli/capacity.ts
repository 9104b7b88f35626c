import {
  fromNumber,
  fromText,
  ONE,
  type Rational,
  signOf,
  compare,
} from '../../engine/linear/index.ts';
import { type AskedGear, type Load, marginsOf } from '../../engine/margin/index.ts';
import { quantityFrom } from '../../engine/quantity/index.ts';
import { gearsOf as gearsIn, type Train } from '../../engine/train/index.ts';
import { limitsOf } from '../../shop/capacity/index.ts';
import { visible } from '../../telling/narrative/index.ts';
import { marginJson, type MarginReport, marginText } from '../../telling/report/index.ts';
import { Refusal } from './refusal.ts';
import { rangesOf, selectionOf } from './selection.ts';
import { done, json, type Options, type Reply, type Session } from './session.ts';
import { trainOf } from './source.ts';
import { trainAsFound } from './wrong.ts';

/** What each gear can pass before something slips, and at what pressure it holds. */
export function capacity(file: string, session: Session): Reply {
  const { options, page } = session;
  const train = trainAsFound(trainOf(file, session), options);
  const report = marginReport(train, file, options);
  if (options.json) return json(marginJson(train, report.load, report.gears));
  return done(marginText(report, page));
}

/** The margins of the gears that are asked for; refuses where the file tells no capacities. */
export function marginReport(train: Train, file: string, options: Options): MarginReport {
  if (!train.capacities) throw new Refusal('no.capacities', { file });
  const load = loadOf(train, file, options);
  const gears = marginsOf(train, limitsOf(train), gearsOf(train, options)).at(load);
  const one = options.gear !== undefined;
  return { train, load, gears, one, typed: allTyped(train, options) };
}

function gearsOf(train: Train, options: Options): AskedGear[] {
  const chosen = selectionOf(train, options)?.on;
  const gears = gearsIn(train, rangesOf(train, options));
  if (gears.length === 0) throw new Refusal('no.ranges');
  return chosen ? gears.filter(({ on }) => on === chosen).slice(0, 1) : gears;
}

// Whether nothing of the file's engine is used.
function allTyped({ engine }: Train, { torque, stallRatio }: Options): boolean {
  return torque !== undefined && (stallRatio !== undefined || !engine?.['stall ratio']);
}

function loadOf({ engine }: Train, file: string, options: Options): Load {
  const { pressure, torque, stallRatio } = options;
  const ours = engine?.['torque Nm'];
  if (torque === undefined && ours === undefined) throw new Refusal('no.torque', { file });
  return {
    pressureKpa: some(
      pressure ?? USUAL_KPA,
      (its) => quantityFrom(its, 'pressure', 'kPa')?.size,
      'bad.pressure',
    ),
    engineNm:
      torque === undefined
        ? fromNumber(ours ?? 0)
        : some(torque, (its) => quantityFrom(its, 'torque', 'Nm')?.size, 'bad.torque'),
    stallRatio:
      stallRatio === undefined
        ? fromNumber(engine?.['stall ratio'] ?? 1)
        : some(stallRatio, ratioOf, 'bad.stall ratio'),
  };
}

// At full throttle in a forward range; common practice, no source.
const USUAL_KPA = '900';

function ratioOf(text: string): Rational | undefined {
  const ratio = fromText(text);
  return ratio && compare(ratio, ONE) >= 0 ? ratio : undefined;
}

function some(
  text: string,
  read: (text: string) => Rational | undefined,
  bad: 'bad.pressure' | 'bad.torque' | 'bad.stall ratio',
): Rational {
  const value = read(text);
  if (!value || signOf(value) <= 0) throw new Refusal(bad, { given: visible(text) });
  return value;
}
