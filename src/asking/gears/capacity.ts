import {
  compare,
  fraction,
  fromNumber,
  fromText,
  ONE,
  type Rational,
  signOf,
} from '../../engine/linear/index.ts';
import {
  type AskedGear,
  type GearMargin,
  type Load,
  type Margins,
  marginsOf,
} from '../../engine/margin/index.ts';
import { quantityFrom } from '../../engine/quantity/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { limitsOf } from '../../shop/capacity/index.ts';
import {
  type AsFound,
  type GearChoice,
  gearsAsked,
  NoAnswer,
  selectionOf,
  trainAsFound,
} from '../request/index.ts';

/** What gears can pass before something slips, and at what pressure they hold. */
export interface CapacityRequest extends AsFound, GearChoice, LoadRequest {}

/** Each with its unit, or in kPa and Nm; what is left out is the file's or the usual one. */
export interface LoadRequest {
  readonly pressure?: string;
  readonly torque?: string;
  readonly stallRatio?: string;
}

/** What is told of a train's gears at a load. */
export interface MarginReport {
  readonly train: Train;
  readonly load: Load;
  readonly gears: readonly GearMargin[];
  /** Whether one gear was asked for: its devices are told, too. */
  readonly one: boolean;
  /** Whether the engine's figures were typed, and none of the file's is used. */
  readonly typed: boolean;
  /** The unit in which the pressure was typed: it is told in the same. */
  readonly pressureUnit: string;
}

/** At full throttle in a forward range; common practice, no source. */
export const USUAL_KPA = 900;

export function askCapacity(file: Train, request: CapacityRequest): MarginReport {
  const train = trainAsFound(file, request);
  if (!train.capacities) throw new NoAnswer({ refused: 'no.capacities' });
  // A load that is none is refused before its gears are reckoned.
  loadAsked(train, request);
  const one = request.gear !== undefined;
  return { ...marginsAtLoad(marginsAsked(train, request), train, request), one };
}

/** The same of margins that are reckoned already, as a load is drawn up and down. */
export function marginsAtLoad(margins: Margins, train: Train, request: LoadRequest): MarginReport {
  const load = loadAsked(train, request);
  const gears = margins.at(load);
  if (gears.length === 0) throw new NoAnswer({ refused: 'no.ranges' });
  const pressureUnit = pressureOf(request.pressure)?.unit ?? 'kPa';
  return { train, load, gears, one: false, typed: allTyped(train, request), pressureUnit };
}

/** The margins of the gears that are chosen, to be asked at any load. */
export function marginsAsked(train: Train, choice: GearChoice = {}): Margins {
  return marginsOf(train, limitsOf(train), gearsOf(train, choice));
}

/** The load that is asked about; refuses where nothing tells the engine's torque. */
function loadAsked({ engine }: Train, request: LoadRequest): Load {
  const { pressure, torque, stallRatio } = request;
  const ours = engine?.['torque Nm'];
  if (torque === undefined && ours === undefined) throw new NoAnswer({ refused: 'no.torque' });
  return {
    pressureKpa: some(pressure ?? `${USUAL_KPA}`, (its) => pressureOf(its)?.size, 'pressure'),
    engineNm:
      torque === undefined
        ? fromNumber(ours ?? 0)
        : some(torque, (its) => quantityFrom(its, 'torque', 'Nm')?.size, 'torque'),
    stallRatio:
      stallRatio === undefined
        ? fromNumber(engine?.['stall ratio'] ?? 1)
        : some(stallRatio, ratioOf, 'stall ratio'),
  };
}

// Of what no pump gives there is no answer, only figures.
const MOST_KPA = fraction(100_000);

function pressureOf(text = `${USUAL_KPA}`) {
  const read = quantityFrom(text, 'pressure', 'kPa');
  return read && compare(read.size, MOST_KPA) <= 0 ? read : undefined;
}

function gearsOf(train: Train, choice: GearChoice): readonly AskedGear[] {
  const chosen = selectionOf(train, choice)?.on;
  const gears = gearsAsked(train, choice);
  return chosen ? gears.filter(({ on }) => on === chosen).slice(0, 1) : gears;
}

// Whether nothing of the file's engine is used.
function allTyped({ engine }: Train, { torque, stallRatio }: LoadRequest): boolean {
  return torque !== undefined && (stallRatio !== undefined || !engine?.['stall ratio']);
}

function ratioOf(text: string): Rational | undefined {
  const ratio = fromText(text);
  return ratio && compare(ratio, ONE) >= 0 ? ratio : undefined;
}

function some(
  given: string,
  read: (text: string) => Rational | undefined,
  what: 'pressure' | 'torque' | 'stall ratio',
): Rational {
  const value = read(given);
  if (!value || signOf(value) <= 0) throw new NoAnswer({ refused: `bad.${what}`, given });
  return value;
}
