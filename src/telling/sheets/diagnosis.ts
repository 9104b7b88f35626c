import type { Suspicion } from '../../asking/faults/index.ts';
import type { Inquiry } from '../../engine/cause/index.ts';
import { type Bracket, sidesOf } from '../../engine/suspects/index.ts';
import { type Test, testText } from '../../engine/sight/index.ts';
import { inTradeOrder } from '../../engine/triage/index.ts';
import type { FoldedJob } from '../../shop/records/index.ts';
import {
  causeText,
  evidenceText,
  fewText,
  keyOf,
  outcomeText,
  proposalText,
  sightText,
  stopText,
  suspectText,
  testName,
  visible,
  type Voice,
} from '../narrative/index.ts';
import { percent } from '../report/index.ts';
import { cautionOf } from './cautions.ts';
import type { SheetBlock, Caution, SheetCell, SheetColumn, Sheet, SheetTable } from './document.ts';
import { fieldOf, headOf, jobFields } from './filled.ts';

/** What of a suspicion stands on paper: plain data. */
export interface Diagnosed extends Pick<
  Suspicion,
  'observations' | 'ranking' | 'advice' | 'experience'
> {
  readonly inquiry: Pick<Inquiry, 'tests' | 'experience'>;
}

/** What a diagnosis sheet takes of a suspicion. */
export function diagnosedOf(suspicion: Suspicion): Diagnosed {
  const { observations, ranking, advice, experience, inquiry } = suspicion;
  const { tests, experience: figures } = inquiry;
  return { observations, ranking, advice, experience, inquiry: { tests, experience: figures } };
}

/**
 * The diagnosis sheet: the complaint, every test that needs no unit on the bench with room for
 * what it showed, the suspects by what was seen, the next best test, and lines for the reasoning.
 */
export function diagnosisSheet(suspicion: Diagnosed, voice: Voice, job?: FoldedJob): Sheet {
  return {
    title: voice.say('sheet.title', { sheet: 'diagnosis' }),
    blocks: [
      cautionsOf(suspicion, voice),
      jobFields(voice, job),
      { block: 'fields', fields: [fieldOf('complaint', voice, job && visible(job.complaint))] },
      { block: 'fields', fields: [fieldOf('driver', voice)] },
      { block: 'heading', text: voice.say('sheet.diagnosis.tests') },
      testsTable(suspicion, voice),
      { block: 'heading', text: voice.say('suspects.ranked') },
      ...rankedBlocks(suspicion, voice),
      { block: 'together', blocks: nextBlocks(suspicion, voice) },
      {
        block: 'together',
        blocks: [
          { block: 'heading', text: voice.say('sheet.diagnosis.notes') },
          { block: 'lines', count: NOTES },
        ],
      },
      {
        block: 'paragraph',
        text: voice.say('suspects.legend', { file: suspicion.experience }),
        look: 'quiet',
      },
    ],
  };
}

const NOTES = 6;

function cautionsOf({ inquiry }: Diagnosed, voice: Voice): Caution {
  // That of a stall stands beside it.
  const made = [...new Set(rowsOf(inquiry).map(({ test }) => test))].filter((test) => {
    return test !== 'stall';
  });
  const lines = made.map((test) => {
    return voice.say('sheet.test', { test: keyOf(test), caution: voice.say(`caution.${test}`) });
  });
  return cautionOf([], voice, lines);
}

// Every test that needs no unit on the bench, in the order of the trade. Of a gear the road is
// enough.
function rowsOf({ tests, experience }: Diagnosed['inquiry']): Test[] {
  const here = tests.filter(({ test }) => {
    return experience.tests[test].at !== 'on the bench' && test !== 'slip log';
  });
  return inTradeOrder(here);
}

function testsTable({ inquiry, observations }: Diagnosed, voice: Voice): SheetTable {
  const seen = observations.map(({ test, sight, sure }): SheetCell[] => [
    testName(test, voice),
    { text: sightText(sight, voice), look: 'strong' },
    voice.say('seen.sure', { sure: keyOf(sure) }),
  ]);
  const told = new Set(observations.map(({ test }) => testText(test)));
  // Nobody stalls without having read what it takes.
  const called = (test: Test) => {
    const name = testName(test, voice);
    return test.test === 'stall' ? `${name}\n${voice.say('caution.stall')}` : name;
  };
  const unseen = rowsOf(inquiry)
    .filter((test) => !told.has(testText(test)))
    .map((test): SheetCell[] => [called(test), '', '']);
  return {
    block: 'table',
    columns: [
      { head: voice.say('head', { head: 'test' }), width: { share: 5 } },
      { head: voice.say('head', { head: 'seen' }), width: { share: 5 } },
      { head: voice.say('head', { head: 'sure' }), width: { share: 2 } },
    ],
    rows: [...seen, ...unseen],
    rowMm: 9,
  };
}

// The likeliest, and how much is left to the others; while nothing was seen, room for them.
function rankedBlocks({ ranking, observations }: Diagnosed, voice: Voice): SheetBlock[] {
  const shown = ranking.brackets.slice(0, MOST_BRACKETS);
  const columns: SheetColumn[] = [
    { head: headOf('chance', voice), width: { mm: 22 } },
    { head: headOf('suspect', voice), width: { share: 3 } },
    { head: headOf('reason', voice), width: { share: 4 } },
  ];
  const rest = ranking.brackets.slice(MOST_BRACKETS);
  const chance = rest.reduce((sum, bracket) => sum + bracket.chance, 0);
  const count = rest.flatMap(({ suspects }) => suspects).length;
  if (observations.length === 0) {
    const empty = Array.from({ length: MOST_BRACKETS }, () => ['', '', '']);
    return [{ block: 'table', columns, rows: empty, rowMm: 11 }];
  }
  return [
    { block: 'table', columns, rows: shown.map((bracket) => bracketRow(bracket, voice)) },
    ...(count === 0
      ? []
      : [
          {
            block: 'paragraph' as const,
            text: voice.say('sheet.diagnosis.others', { count, chance: percent(chance, voice) }),
          },
        ]),
  ];
}

const MOST_BRACKETS = 6;
const MOST_SUSPECTS = 6;
const MOST_EVIDENCE = 4;

function bracketRow({ chance, suspects, evidence }: Bracket, voice: Voice): SheetCell[] {
  const named = suspects.map((suspect) => suspectText(suspect, voice));
  const spoken = sidesOf(evidence, MOST_EVIDENCE);
  const said = (['for', 'against'] as const).flatMap((side) => {
    const told = spoken[side].map((one) => evidenceText(one, voice)).join('; ');
    return told === '' ? [] : [voice.say(`suspects.${side}`, { evidence: told })];
  });
  return [
    { text: `${percent(chance, voice)} %`, look: 'strong' },
    fewText(named, MOST_SUSPECTS, voice, '\n'),
    said.join('\n'),
  ];
}

function nextBlocks({ advice: { best, stops } }: Diagnosed, voice: Voice): SheetBlock[] {
  const heading: SheetBlock = { block: 'heading', text: voice.say('suspects.next') };
  const stopped = stops.map((stop): SheetBlock => {
    return { block: 'paragraph', text: stopText(stop, voice), look: 'strong' };
  });
  if (!best) return [heading, ...stopped, { block: 'paragraph', text: voice.say('next.none') }];
  const { test, parts } = best;
  return [
    heading,
    ...stopped,
    { block: 'paragraph', text: proposalText(best, voice), look: 'strong' },
    ...(test.test === 'hand check'
      ? [{ block: 'paragraph' as const, text: voice.say('caution.hand check') }]
      : []),
    {
      block: 'table',
      columns: [
        { head: voice.say('head', { head: 'seen' }), width: { share: 2 } },
        { head: voice.say('head', { head: 'chance' }), width: { mm: 22 } },
        { head: voice.say('head', { head: 'leaves' }), width: { share: 5 } },
        { head: headOf('found', voice), width: { share: 2 } },
      ],
      rows: parts.map(({ outcome, chance, suspects }): SheetCell[] => {
        const left = suspects.map((cause) => causeText(cause, voice));
        return [
          outcomeText(outcome, voice),
          `${percent(chance, voice)} %`,
          fewText(left, MOST_SUSPECTS, voice),
          '',
        ];
      }),
    },
  ];
}
