import type { Car } from '../train/index.ts';

/** What was read while a gear held steady: the engine's speed, and the road's. */
export interface RoadReading {
  readonly engineRpm: number;
  readonly roadKmh: number;
  /** By how much of itself it may be wrong, by the last digits that were read. */
  readonly uncertainty: number;
  /** The converter was locked: the engine turns the train's input. */
  readonly locked: boolean;
}

/** A ratio between two bounds, without a sign: no speed tells which way a wheel turns. */
export interface RatioRange {
  readonly from: number;
  readonly to: number;
}

/**
 * By how much of its speed an engine runs ahead of the train's input through an open converter,
 * at a steady part throttle, at most. Common practice, from memory, with no source.
 */
export const OPEN_SLIP = 0.1;

/** By how much a worn tyre rolls smaller than the file says, or a new one larger. From memory. */
const TYRE_UNCERTAINTY = 0.02;

const KMH_PER_MPH = 1.609344;

/** Reads "2100 rpm at 50 km/h" or "2,100 rpm at 31 mph, locked"; undefined for anything else. */
export function roadReadingFrom(text: string): RoadReading | undefined {
  const [, rpm = '', speed = '', unit = '', locked] = FORM.exec(text.trim().toLowerCase()) ?? [];
  const engineRpm = numberIn(rpm.replace(/[,. ](?=\d{3}$)/, ''));
  const road = numberIn(speed);
  if (!(engineRpm > 0 && road > 0)) return undefined;
  const uncertainty = halfDigit(rpm) / engineRpm + halfDigit(speed) / road;
  return {
    engineRpm,
    roadKmh: unit === 'mph' ? road * KMH_PER_MPH : road,
    uncertainty,
    locked: locked !== undefined,
  };
}

const FORM = new RegExp(
  String.raw`^(\d{1,2}[,. ]\d{3}|\d{3,5}) ?(?:rpm|r/min|1/min)` +
    String.raw` ?(?:at|@|,|a) ?(\d{1,3}(?:[.,]\d{1,2})?) ?(km/h|kmh|mph)` +
    String.raw`(?:,? ?(?:converter )?(locked))?$`,
  'u',
);

/** The ratio of the gear, by tyre and final drive. */
export function ratioByCar(reading: RoadReading, car: Car): RatioRange {
  const wheelRpm = (reading.roadKmh * 1e6) / 60 / (Math.PI * car['tyre mm']);
  const outputRpm = wheelRpm * (car['final drive'] ?? 1);
  return bounds(
    reading.engineRpm / outputRpm,
    reading.uncertainty + TYRE_UNCERTAINTY,
    slipOf(reading),
    0,
  );
}

/**
 * The ratio of the gear, by the same two readings in a gear that is good and whose ratio is
 * `ratio`, as the train gives it: tyre and final drive, and what a speedometer adds, fall out.
 */
export function ratioByGear(reading: RoadReading, good: RoadReading, ratio: number): RatioRange {
  const times = reading.engineRpm / reading.roadKmh / (good.engineRpm / good.roadKmh);
  const uncertainty = reading.uncertainty + good.uncertainty;
  return bounds(Math.abs(ratio) * times, uncertainty, slipOf(reading), slipOf(good));
}

/** Whether a ratio, of either sign, is one that was read. */
export function isWithin({ from, to }: RatioRange, ratio: number): boolean {
  return Math.abs(ratio) >= from && Math.abs(ratio) <= to;
}

/** As a person writes it, to be read again. */
export function roadReadingText({ engineRpm, roadKmh, locked }: RoadReading): string {
  const speed = Number(roadKmh.toFixed(1));
  return `${engineRpm} rpm at ${speed} km/h${locked ? ', locked' : ''}`;
}

// The engine runs ahead of the input, so the ratio is smaller than the speeds say; where the
// good gear slipped too, it is larger by as much.
function bounds(told: number, uncertainty: number, slip: number, goodSlip: number): RatioRange {
  return {
    from: (told * (1 - slip)) / (1 + uncertainty),
    to: (told * (1 + uncertainty)) / (1 - goodSlip),
  };
}

function slipOf({ locked }: RoadReading): number {
  return locked ? 0 : OPEN_SLIP;
}

function numberIn(text: string): number {
  return Number(text.replace(',', '.'));
}

// Half of the last place that was written: 50 is 49.5 to 50.5; 2100 is read to its hundreds,
// but no tachometer is worse than 25 by its marks.
function halfDigit(text: string): number {
  const [whole = '', part] = text.split(/[.,](?!\d{3}$)/);
  if (part !== undefined) return 0.5 / 10 ** part.length;
  const zeros = /0*$/.exec(whole)?.[0].length ?? 0;
  return whole.length < 3 ? 0.5 : Math.min(25, 0.5 * 10 ** zeros);
}
