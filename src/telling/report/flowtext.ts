import type { Fact, Flow, RollbackCase, Travel, Working } from '../../engine/flow/index.ts';
import { compare, ONE, opposite, type Rational, signOf } from '../../engine/linear/index.ts';
import type { Train, Way } from '../../engine/train/index.ts';
import { gearName, keyOf, type MessageId, sentences, type Voice } from '../narrative/index.ts';
import { type Page, paragraph, section } from '../text/index.ts';
import { workTables } from './worktables.ts';

/** One gear: what it does, who carries what, and why. With `all`, also what is left brief. */
export interface FlowReport {
  readonly train: Train;
  readonly flow: Flow;
  /** Where the gear was asked for by its name. */
  readonly gear?: { readonly range: string; readonly gear: string };
  readonly all: boolean;
}

export function flowText(report: FlowReport, page: Page): string {
  const { flow, all } = report;
  const { voice } = page;
  const part = (id: MessageId, lines: readonly string[]) => section(voice.say(id), lines, page);
  return [
    ...paragraph(title(report, voice), page).map(page.ink.strong),
    ...paragraph(driveLine(flow, voice), page),
    ...slippingLines(report, page),
    ...[flow, ...(flow.inReverse ? [flow.inReverse] : [])].flatMap((travel) => [
      ...paragraph(coastLine(travel, voice), page),
      ...paragraph(rollbackLine(travel, voice), page),
    ]),
    ...part('flow.power', workTables(flow.drive, 'drive', report, page)),
    ...part('flow.why', reasons(flow.drive.facts, page)),
    ...(all
      ? rest(report, page)
      : ['', ...paragraph(voice.say('flow.more'), page).map(page.ink.faint)]),
  ].join('\n');
}

// What slips does so only above the load that it still carries.
function slippingLines({ train, flow: { on } }: FlowReport, page: Page): string[] {
  const slipping = train.devices.filter(({ name, stuck }) => {
    return stuck === 'slipping' && on.includes(name);
  });
  if (slipping.length === 0) return [];
  const { voice } = page;
  const devices = voice.names(slipping.map(({ name }) => name));
  return paragraph(voice.say('flow.slipping', { devices, count: slipping.length }), page);
}

/** A train at speeds that are given: what it does, who carries what, and why. */
export function flowAtText(
  report: {
    readonly train: Train;
    readonly on: readonly string[];
    readonly working: Working;
    readonly all: boolean;
  },
  page: Page,
): string {
  const { train, on, working } = report;
  const { voice } = page;
  const heading = {
    train: voice.train(train),
    named: 'no',
    gear: '',
    count: on.length,
    on: voice.names(on),
  };
  return [
    ...paragraph(voice.say('flow.title', heading), page).map(page.ink.strong),
    ...paragraph(voice.say('flow.given', { state: working.state }), page),
    '',
    ...workTables(working, 'given', report, page),
    ...section(voice.say('flow.why'), reasons(working.facts, page), page),
  ].join('\n');
}

// What the heading only touched on.
function rest(report: FlowReport, page: Page): string[] {
  const { voice } = page;
  const part = (id: MessageId, lines: readonly string[]) => section(voice.say(id), lines, page);
  const { coast, rollback, inReverse } = report.flow;
  return [
    ...part('flow.coast', workTables(coast, 'coast', report, page)),
    ...part('flow.coast.why', reasons(coast.facts, page)),
    ...part('flow.rollback.free', reasons(rollback.inputFree.facts, page)),
    ...part('flow.rollback.held', reasons(rollback.inputHeld.facts, page)),
    ...(inReverse
      ? [
          ...part('flow.coast.reverse', workTables(inReverse.coast, 'coast', report, page)),
          ...part('flow.coast.reverse.why', reasons(inReverse.coast.facts, page)),
        ]
      : []),
  ];
}

/** Numbered sentences. */
export function reasons(facts: readonly Fact[], page: Page): string[] {
  return sentences(facts, page.voice, page.stand).flatMap((sentence, i) => {
    return paragraph(`${i + 1}. ${sentence}`, page, '   ');
  });
}

function title({ train, flow, gear }: FlowReport, voice: Voice): string {
  return voice.say('flow.title', {
    train: voice.train(train),
    named: gear === undefined ? 'no' : 'yes',
    gear: gear ? gearName(gear, voice) : '',
    count: flow.on.length,
    on: voice.names(flow.on),
  });
}

function driveLine({ drive, forward, beforeFinal }: Flow, voice: Voice): string {
  const told = voice.say('flow.drive', {
    state: drive.state,
    sense: drive.ratio ? senseOf(drive.ratio, forward, beforeFinal) : 'none',
    ratio: drive.ratio ? voice.number(drive.ratio) : '',
  });
  const before =
    beforeFinal && voice.say('flow.before final', { ratio: voice.number(beforeFinal) });
  const text = before ? `${told} ${before}` : told;
  if (!drive.efficiency) return text;
  const { state, value } = drive.efficiency;
  const percent = value ? voice.percent(value) : '';
  return `${text} ${voice.say('flow.efficiency', { state: keyOf(state), percent })}`;
}

function coastLine({ coast, travels }: Travel, voice: Voice): string {
  return voice.say('flow.coasting', {
    travels,
    state: coast.state,
    ratio: coast.ratio ? voice.number(coast.ratio) : '',
  });
}

function rollbackLine(
  { travels, rollback: { inputFree, inputHeld } }: Travel,
  voice: Voice,
): string {
  const by = ({ heldBy }: RollbackCase) => voice.names(heldBy);
  return voice.say('flow.rollback', {
    travels,
    free: inputFree.rolls ? 'rolls' : 'holds',
    held: inputHeld.rolls ? 'rolls' : 'holds',
    freeCount: inputFree.heldBy.length,
    freeBy: by(inputFree),
    heldCount: inputHeld.heldBy.length,
    heldBy: by(inputHeld),
  });
}

// A ratio's name: reverse is against the way of the vehicle, whatever the sign; a reduction turns
// the output, or what stands before the final drive, slower than the input.
function senseOf(
  ratio: Rational,
  forward: Way,
  before = ratio,
): 'reverse' | 'direct' | 'reduction' | 'overdrive' {
  const way = signOf(ratio) < 0 ? 'anticlockwise' : 'clockwise';
  if (way !== forward) return 'reverse';
  const against = compare(signOf(before) < 0 ? opposite(before) : before, ONE);
  return against === 0 ? 'direct' : against > 0 ? 'reduction' : 'overdrive';
}
