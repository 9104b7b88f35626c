import {
  lastSeen,
  type Mistake,
  type Plan,
  type PlannedCheck,
  type Step,
} from '../../engine/plan/index.ts';
import { CASE, type Part, type Train } from '../../engine/train/index.ts';
import { feltText, gripText, mistakeText, partTexts } from './building.ts';
import { boltTexts, fillText } from './fastening.ts';
import { measuringTexts } from './measuring.ts';
import { oneWayWords } from './oneway.ts';
import { AT_THE_INPUT, type Stand } from '../../asking/request/index.ts';
import { type MessageId, keyOf, type Voice } from '../voice/index.ts';

/** A step of a build in words: what it is, what can hurt there, and what is done. */
export interface StepTold {
  readonly title: string;
  readonly caution?: string;
  /** How it is done; read once. */
  readonly how: readonly string[];
  /** To be looked at, counted or done; each is ticked. */
  readonly ticks: readonly string[];
  /** Readings that are written down. */
  readonly reads: boolean;
  /** Of which one was heard; the first is right. */
  readonly heard: readonly string[];
  readonly checks: readonly CheckTold[];
  /** What the step catches, and what its outcomes mean. */
  readonly catches: readonly string[];
}

/** The words of a step; its checks by hand among them. */
export function stepTold(step: Step, context: StepContext): StepTold {
  const { train, plan, voice, stand = AT_THE_INPUT } = context;
  const title = titleOf(step, voice);
  const danger = dangerOf(step, train);
  const caution = danger && { caution: voice.say('plan.danger', { danger }) };
  const none = { how: [], ticks: [], reads: false, heard: [], checks: [] };
  const told = { title, ...caution, ...none, catches: catchesOf(step, context) };
  // How it is done is said at the first of its kind.
  const isFirst = plan.steps.find(({ does }) => does === step.does)?.number === step.number;
  const first = (id: MessageId) => (isFirst ? [voice.say(id)] : []);
  switch (step.does) {
    case 'turn over':
      return { ...told, ticks: [voice.say('plan.turned')] };
    case 'fit': {
      const looks = partTexts(step.part, voice, step.up);
      const ticks = [...looks, ...packTexts(step.part.frictions, voice)];
      const checks = step.checks.map((check) => checkTold(check, step, context));
      const how = (step.oneWays ?? []).map((device) => {
        const words = oneWayWords(device, stand, voice);
        return voice.say('plan.one-way', { words });
      });
      return { ...told, checks, how, ticks: ticks.length > 0 ? ticks : [voice.say('part.fitted')] };
    }
    case 'height':
    case 'clearance':
    case 'band':
    case 'end play':
    case 'preload':
      return { ...told, how: measuringTexts(step, plan, voice), reads: true };
    case 'tighten': {
      const felt = step.still && feltText(step.still.felt, voice, stand);
      const turn = step.still && voice.name(step.still.turn.member);
      const still = felt && turn ? [voice.say('plan.still', { turn, felt })] : [];
      return { ...told, ticks: [...boltTexts(step.bolts, voice), ...still] };
    }
    case 'air check': {
      const { device, check } = step;
      const names = { a: voice.name(device.first), b: voice.name(device.second) };
      const joins = device.second === CASE ? 'no' : 'yes';
      const locks = voice.say('plan.air locks', { joins, ...names });
      const heard = (['thud', 'hiss', 'nothing'] as const).map((sound) => {
        return voice.say('plan.air heard', { sound });
      });
      const how = [...first('plan.air doubt'), ...(check ? [] : [voice.say('plan.air unseen')])];
      const checks = check ? [checkTold(check, step, context)] : [];
      return { ...told, heard, ticks: [locks], how, checks };
    }
    case 'pawl check': {
      const { device, check } = step;
      const names = { a: voice.name(device.first), b: voice.name(device.second) };
      const how = [voice.say('plan.pawl'), ...(check ? [] : [voice.say('plan.air unseen')])];
      const checks = check ? [checkTold(check, step, context)] : [];
      return { ...told, how, ticks: [voice.say('plan.pawl locks', names)], checks };
    }
    case 'fill':
      return { ...told, ticks: [fillText(step.fluid, voice), voice.say('plan.fill level')] };
  }
}

export interface StepContext {
  readonly train: Train;
  readonly plan: Plan;
  readonly voice: Voice;
  readonly stand?: Stand;
}

/** A check by hand: "Check 3. Hold the main shaft, turn the rear ring". */
export interface CheckTold {
  readonly ask: string;
  readonly right: string;
  /** What each other answer may mean. */
  readonly wrong: readonly string[];
}

function checkTold(check: PlannedCheck, at: Step, its: StepContext): CheckTold {
  const { train, plan, voice, stand = AT_THE_INPUT } = its;
  const felt = (of: PlannedCheck['right']) => feltText(of, voice, stand);
  const wrong = check.wrong.map(({ felt: other, mistakes }) => {
    const names = mistakes.map((mistake) => lateText(mistake, at.number, { train, plan, voice }));
    return voice.say('plan.wrong', { felt: felt(other), mistakes: names.join('; ') });
  });
  const { hold, turn } = check;
  const grips = {
    holds: hold ? 'yes' : 'no',
    hold: hold ? gripText(hold, voice) : '',
    turn: gripText(turn, voice),
  };
  const ask =
    at.does === 'air check' || at.does === 'pawl check'
      ? voice.say(at.does === 'air check' ? 'plan.air check' : 'plan.pawl check', grips)
      : voice.say('plan.check', { ...grips, number: numberOf(check, plan) });
  return { ask, right: felt(check.right), wrong };
}

// Among the hand checks with nothing applied.
function numberOf(check: PlannedCheck, { steps }: Plan): number {
  const checks = steps.flatMap((step) => (step.does === 'fit' ? step.checks : []));
  return checks.indexOf(check) + 1;
}

/** What is looked at for the last time at a step, in a sentence; undefined where there is nothing. */
export function lastLook(step: Step, { train, plan, voice }: StepContext): string | undefined {
  const names = lastSeen(plan, step).map(({ mistake }) => {
    return mistakeText(mistake, train, voice);
  });
  return names.length === 0 ? undefined : voice.say('plan.stop', { mistakes: names.join('; ') });
}

/** The mistake, and where it is covered by then, how far back the way to it is. */
function lateText(mistake: Mistake, at: number, { train, plan, voice }: StepContext): string {
  const name = mistakeText(mistake, train, voice);
  const watched = plan.mistakes.find((other) => other.mistake === mistake);
  const late = watched !== undefined && watched.open < at;
  return late ? voice.say('plan.late', { mistake: name, step: watched.open }) : name;
}

function titleOf(step: Step, voice: Voice): string {
  const of = (name: string, does: string = step.does) =>
    voice.say('plan.step', { does: keyOf(does), name: voice.called(name) });
  switch (step.does) {
    case 'fit':
      return voice.called(step.part.name);
    case 'turn over':
      return voice.say('plan.turn over', { end: step.up ?? 'input' });
    case 'height':
    case 'tighten':
      return of(step.part.name);
    case 'clearance':
      return of(step.pack.device);
    case 'band':
      return of(step.band.device);
    case 'end play':
      return of(step.endPlay.shaft, step.endPlay.measure);
    case 'preload':
      return of(step.preload.bearings);
    case 'air check':
    case 'pawl check':
      return of(step.device.name);
    case 'fill':
      return of('');
  }
}

function dangerOf(step: Step, train: Train): string | undefined {
  switch (step.does) {
    case 'turn over':
      return 'weight';
    case 'air check':
      return 'air';
    case 'fill':
      return 'fluid';
    case 'fit':
      return isSprung(step.part, train) ? 'springs' : undefined;
    default:
      return undefined;
  }
}

/**
 * Whether springs are under a part: a pack has its piston's and a snap ring; of a band the servo has
 * them, not the strap.
 */
export function isSprung(
  { carries, feeds = [] }: Part,
  { devices, teardown = [] }: Train,
): boolean {
  const kindOf = (name: string) => devices.find((device) => device.name === name)?.kind;
  const isServoOf = (part: Part) => (part.feeds ?? []).every((name) => kindOf(name) === 'band');
  const pushed = (band: string) => {
    return teardown.some((part) => part.feeds?.includes(band) && isServoOf(part));
  };
  const sprung = (name: string) => {
    const kind = kindOf(name);
    return kind === 'clutch' || kind === 'brake' || (kind === 'band' && !pushed(name));
  };
  return (
    carries.some(sprung) || (feeds.length > 0 && feeds.every((name) => kindOf(name) === 'band'))
  );
}

// What the steps that measure catch; a hand check says so itself, and eyes need no list.
function catchesOf(step: Step, { train, plan, voice }: StepContext): string[] {
  const caught = plan.mistakes.filter(({ caught: its }) => {
    return its.step === step.number && its.by === step.does;
  });
  const felt =
    step.does === 'air check' || step.does === 'pawl check' ? (step.check?.wrong ?? []) : [];
  const told = new Set(felt.flatMap(({ mistakes }) => mistakes));
  const others = caught.filter(({ mistake }) => !told.has(mistake));
  const names = others.map(({ mistake }) => lateText(mistake, step.number, { train, plan, voice }));
  return names.length === 0 ? [] : [voice.say('plan.catches', { mistakes: names.join('; ') })];
}

function packTexts(frictions: number | undefined, voice: Voice): string[] {
  if (frictions === undefined) return [];
  return [voice.say('plan.soak'), voice.say('plan.clicks', { frictions })];
}
