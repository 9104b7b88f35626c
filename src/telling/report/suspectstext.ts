import type { Proof, Suspicion } from '../../asking/faults/index.ts';
import type { Growler } from '../../engine/noise/index.ts';
import {
  type Bracket,
  type Observation,
  type Proposal,
  type Ranking,
  sidesOf,
} from '../../engine/suspects/index.ts';
import { testText } from '../../engine/sight/index.ts';
import type { Counsel, StoppedTest } from '../../engine/triage/index.ts';
import {
  causeText,
  evidenceText,
  failureTexts,
  fewText,
  keyOf,
  observationText,
  outcomeText,
  proposalText,
  sightText,
  growlerText,
  heldText,
  leftText,
  stopText,
  suspectText,
  testName,
  visible,
  type Voice,
} from '../narrative/index.ts';
import { type Page, paragraph, section, table } from '../text/index.ts';

/** What was seen, who is suspected and why, what contradicts, and what to test next. */
export function suspectsText(suspicion: Suspicion, all: boolean, page: Page): string {
  const { inquiry, observations, ranking, advice, experience } = suspicion;
  const { voice } = page;
  const seen = observations.map(({ test, sight, sure }) => [
    testName(test, voice),
    sightText(sight, voice),
    voice.say('seen.sure', { sure: keyOf(sure) }),
  ]);
  const train = voice.train(inquiry.train);
  return [
    ...paragraph(voice.say('suspects.title', { train }), page).map(page.ink.strong),
    ...(seen.length === 0
      ? paragraph(voice.say('suspects.nothing seen'), page)
      : section(voice.say('suspects.seen'), table(['test', 'seen', 'sure'], seen, page), page)),
    ...unusedLines(suspicion.unused, page),
    ...stageLines(suspicion, page),
    ...section(voice.say('contradiction'), contradictionLines(suspicion, page), page),
    ...section(voice.say('suspects.ranked'), rankingLines(ranking, all, page), page),
    ...section(voice.say('proof.title'), proofLines(suspicion.proofs, all, page), page),
    ...section(voice.say('noise.title'), growlerLines(suspicion.growlers, all, page), page),
    ...section(voice.say('failure.title'), failureLines(suspicion, page), page),
    ...section(voice.say('suspects.next'), adviceLines(advice, observations, page), page),
    '',
    ...paragraph(voice.say('suspects.legend', { file: visible(experience) }), page).map(
      page.ink.faint,
    ),
  ].join('\n');
}

function stageLines({ at }: Suspicion, page: Page): string[] {
  if (!at) return [];
  return paragraph(page.voice.say('suspects.stage', { stage: keyOf(at) }), page);
}

/** The proposed test, what it would part and its cautions; before it whatever must wait. */
export function adviceLines(
  { best, others, heldBack, stops, again }: Counsel,
  observations: readonly Observation[],
  page: Page,
): string[] {
  const { voice } = page;
  const held = [...new Map(heldBack.map((its) => [its.test.test, its])).values()];
  return [
    ...held.flatMap((its) => paragraph(heldText(its, voice), page).map(page.ink.bad)),
    ...stopLines(stops, page),
    ...(best
      ? proposalLines(best, again > 0 ? 'next.reread' : 'next.again', observations, page)
      : paragraph(voice.say('next.none'), page)),
    ...(others.length === 0
      ? []
      : paragraph(
          voice.say('next.then', {
            tests: others.map(({ test }) => testName(test, voice)).join('; '),
            count: others.length,
          }),
          page,
        )),
  ];
}

/** What may not be done now and why, and what is left in its place. */
function stopLines(stops: readonly StoppedTest[], page: Page): string[] {
  const { voice } = page;
  return stops.flatMap((stop) => {
    const left = stop.stops === 'road test' ? [...stop.left] : [];
    return [
      ...paragraph(stopText(stop, voice), page).map(page.ink.bad),
      ...left.flatMap(([place, tests]) => paragraph(leftText(place, tests, voice), page)),
    ];
  });
}

function proposalLines(
  proposal: Proposal,
  made: 'next.reread' | 'next.again',
  observations: readonly Observation[],
  page: Page,
): string[] {
  const { voice } = page;
  const { test, parts } = proposal;
  const again = observations.some((other) => testText(other.test) === testText(test));
  const rows = parts.map(({ outcome, chance, suspects }) => [
    outcomeText(outcome, voice),
    `${percent(chance, voice)} %`,
    fewText(
      suspects.map((cause) => causeText(cause, voice)),
      MOST_LEFT,
      voice,
    ),
  ]);
  return [
    ...paragraph(proposalText(proposal, voice), page),
    ...(again ? paragraph(voice.say(made), page) : []),
    ...paragraph(voice.say(`caution.${test.test}`), page).map(page.ink.odd),
    ...table(['seen', 'chance', 'leaves'], rows, page),
  ];
}

function rankingLines({ brackets, enough }: Ranking, all: boolean, page: Page): string[] {
  const { voice } = page;
  const shown = all
    ? brackets
    : brackets.filter(({ chance }, k) => k === 0 || (k < MOST_BRACKETS && chance >= 0.01));
  const others = brackets.slice(shown.length).flatMap(({ suspects }) => suspects);
  const rest = others.reduce((sum, { chance }) => sum + chance, 0);
  return [
    ...shown.flatMap((bracket, k) => bracketLines(bracket, k + 1, all, page)),
    ...(others.length === 0
      ? []
      : paragraph(
          voice.say('suspects.others', { count: others.length, chance: percent(rest, voice) }),
          page,
        )),
    ...(enough && shown.length > 0 ? paragraph(voice.say('suspects.enough'), page) : []),
  ];
}

function bracketLines(
  { chance, suspects, evidence }: Bracket,
  place: number,
  all: boolean,
  page: Page,
): string[] {
  const { voice } = page;
  const named = (suspect: (typeof suspects)[number]) => suspectText(suspect, voice);
  const head = voice.say('suspects.bracket', {
    place,
    chance: percent(chance, voice),
    count: suspects.length,
    suspect: suspects[0] ? named(suspects[0]) : '',
  });
  const listed = suspects.length === 1 ? [] : all ? suspects : suspects.slice(0, MOST_SUSPECTS);
  const hidden = suspects.length === 1 ? [] : suspects.slice(listed.length);
  const rest = hidden.reduce((sum, suspect) => sum + suspect.chance, 0);
  const spoken = sidesOf(evidence);
  const inner = { ...page, columns: page.columns - INDENT.length };
  const told = [
    ...listed.flatMap((suspect) => {
      const values = {
        chance: percent(suspect.chance, voice).padStart(4),
        suspect: named(suspect),
      };
      return [voice.say('suspects.one', values)];
    }),
    ...(hidden.length === 0
      ? []
      : [voice.say('suspects.hidden', { count: hidden.length, chance: percent(rest, voice) })]),
    ...(['for', 'against'] as const).flatMap((side) => {
      if (spoken[side].length === 0) return [];
      const texts = spoken[side].map((one) => evidenceText(one, voice));
      return [
        voice.say(`suspects.${side}`, {
          evidence: fewText(texts, all ? Infinity : MOST_EVIDENCE, voice, '; '),
        }),
      ];
    }),
  ];
  return [...paragraph(head, page, INDENT), ...told.flatMap((line) => indented(line, inner))];
}

/** Of the leading suspects, whether they explain all that was seen, and how that is known. */
function proofLines(proofs: readonly Proof[], all: boolean, page: Page): string[] {
  const { voice } = page;
  return proofs.slice(0, all ? proofs.length : 1).flatMap(({ cause, explained }) => {
    const count = explained.filter(({ agrees }) => !agrees).length;
    const id = count === 0 ? 'proof.all' : 'proof.not';
    const rows = explained.map(({ observation, shows, agrees, by }) => [
      observationText(observation, voice),
      voice.say('proof.shows', {
        agrees: agrees ? 'yes' : 'no',
        outcome: outcomeText(shows, voice),
      }),
      voice.say('proof.by', { by }),
    ]);
    return [
      ...paragraph(voice.say(id, { suspect: causeText(cause, voice), count }), page),
      ...table(['seen', 'shows', 'known'], rows, page),
    ];
  });
}

function contradictionLines({ doubts, again, pairs }: Suspicion, page: Page): string[] {
  const { voice } = page;
  const told = doubts.slice(0, MOST_DOUBTS).map(({ observations, causes }) =>
    voice.say('contradiction.doubt', {
      count: observations.length,
      observations: observations.map((one) => observationText(one, voice)).join('; '),
      causes: fewText(
        causes.map((cause) => causeText(cause, voice)),
        MOST_LEFT,
        voice,
      ),
    }),
  );
  const more = doubts.length - told.length;
  return [
    ...(pairs.length > 0 ? [voice.say('contradiction.pairs', { count: pairs.length })] : []),
    ...told,
    ...(more > 0 ? [voice.say('contradiction.more', { count: more })] : []),
    ...(again.length === 0
      ? []
      : [
          voice.say('contradiction.again', {
            tests: fewText(
              again.map((test) => testName(test, voice)),
              MOST_LEFT,
              voice,
            ),
          }),
        ]),
  ].flatMap((line) => paragraph(line, page, INDENT));
}

/** What the driver says that came to nothing; no line where all of it was used. */
export function unusedLines(unused: readonly string[], page: Page): string[] {
  if (unused.length === 0) return [];
  const parts = unused.map((part) => visible(part)).join('; ');
  return paragraph(page.voice.say('complaint.unused', { parts }), page);
}

function failureLines({ failures }: Suspicion, page: Page): string[] {
  if (failures.length === 0) return [];
  const { voice } = page;
  return [
    ...failures.slice(0, MOST_FAILURES).flatMap((failure) => {
      const [why, mend] = failureTexts(failure, voice);
      return [...paragraph(why, page, INDENT), ...indented(mend, page)];
    }),
    ...paragraph(voice.say('failure.legend'), page).map(page.ink.faint),
  ];
}

function growlerLines(growlers: readonly Growler[], all: boolean, page: Page): string[] {
  const { voice } = page;
  return growlers
    .slice(0, all ? growlers.length : MOST_GROWLERS)
    .flatMap((growler) => paragraph(growlerText(growler, voice), page, INDENT));
}

function indented(text: string, page: Page): string[] {
  // A number that stands in front of a name stays under its neighbours.
  const [, lead = '', rest = ''] = /^(\s*)(.*)$/su.exec(text) ?? [];
  const narrow = { ...page, columns: page.columns - lead.length };
  return paragraph(rest, narrow, INDENT).map((line, k) => INDENT + (k === 0 ? lead : '') + line);
}

/** Hundredths; one decimal below ten. */
export function percent(chance: number, voice: Voice): string {
  const hundredths = chance * 100;
  const told =
    hundredths > 0 && hundredths < 0.1 ? '<0.1' : hundredths.toFixed(hundredths < 9.95 ? 1 : 0);
  return voice.written(told);
}

const INDENT = '   ';
const MOST_BRACKETS = 5;
const MOST_SUSPECTS = 6;
const MOST_EVIDENCE = 6;
const MOST_LEFT = 4;
const MOST_DOUBTS = 3;
const MOST_FAILURES = 6;
const MOST_GROWLERS = 6;
