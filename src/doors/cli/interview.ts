import {
  type Case,
  type Suspicion,
  suspicionOf,
  type Witnessed,
  witnessedBy,
} from '../../asking/faults/index.ts';
import { roadReadingFrom } from '../../engine/road/index.ts';
import { type Inquiry } from '../../engine/cause/index.ts';
import { type Observation, seenText, speedSight } from '../../engine/suspects/index.ts';
import { type Sight, sightMeant, sightOf, type Test, testText } from '../../engine/sight/index.ts';
import {
  causeText,
  observationText,
  outcomeText,
  stopText,
  testName,
  visible,
  type Voice,
} from '../../telling/narrative/index.ts';
import { adviceLines, percent, suspectsText, unusedLines } from '../../telling/report/index.ts';
import { paragraph } from '../../telling/text/index.ts';
import { done, type Reply, type Session } from '../../command/session/index.ts';

/**
 * Asks what the driver says, where nothing is known yet, then a question at a time: what comes
 * first in the trade, then the one that is worth most, until the first suspect is likely enough,
 * no test that may be made parts them, or nobody answers. Ends with the whole answer and the
 * file.
 */
export async function interview(
  { inquiry, told: known, experience }: Case,
  lines: AsyncIterable<string>,
  { world, page, options }: Session,
): Promise<Reply> {
  const { voice } = page;
  let told = known;
  const skipped = new Set<string>();
  // What stops is said when it begins.
  const stopped = new Set<string>();
  const tell = (lined: readonly string[], end = '\n') => world.out(`${lined.join('\n')}${end}`);
  // What is piped in is not echoed, and ends no line.
  const prompt = world.terminal ? '> ' : '>\n';
  const offered = (test: Test) => !skipped.has(testText(test));
  const asked = (): Test | undefined => {
    const suspicion = suspicionOf({ inquiry, told, experience }, offered);
    const { best, first, again } = suspicion.advice;
    if (!best || (suspicion.ranking.enough && first + again === 0)) return undefined;
    const stops = suspicion.advice.stops.filter((stop) => {
      const text = stopText(stop, voice);
      return !stopped.has(text) && stopped.add(text);
    });
    const news = { ...suspicion, advice: { ...suspicion.advice, stops } };
    tell([...question(news, page), prompt], '');
    return best.test;
  };
  const example = voice.say('outcome', { word: 'slips', has: 'no', ratio: '' });
  tell(paragraph(voice.say('ask.how', { example }), page));
  let driver = told.observations.length === 0;
  if (driver)
    tell(['', ...paragraph(voice.say('ask.driver'), page).map(page.ink.strong), prompt], '');
  let test = driver ? undefined : asked();
  if (driver || test) {
    for await (const line of lines) {
      if (driver) {
        driver = false;
        if (['q', 'quit'].includes(line.trim())) break;
        told = witnessedBy(inquiry, told.observations, [line]);
        tell(understood(told, page));
        test = asked();
        if (!test) break;
        continue;
      }
      if (!test) break;
      const answer = answerIn(line, test, { inquiry, told, voice });
      if (answer === 'quit') break;
      if (answer === 'print') tell([seenText(told.observations) + prompt], '');
      else if (answer === undefined) {
        const shown = others(test, inquiry, voice).join(', ');
        const values = { given: visible(line.trim()), others: shown };
        tell([...paragraph(voice.say('ask.known', values), page), prompt], '');
      } else {
        if (answer === 'skip') skipped.add(testText(test));
        else told = { ...told, observations: [...told.observations, answer] };
        test = asked();
        if (!test) break;
      }
    }
  }
  const suspicion = suspicionOf({ inquiry, told, experience }, offered);
  const file = seenText(told.observations).trimEnd();
  return done(
    [
      '',
      suspectsText(suspicion, options.all ?? false, page),
      ...(file === '' ? [] : ['', ...paragraph(voice.say('ask.end'), page), '', file]),
    ].join('\n'),
  );
}

// What was made of the driver's words, and what was not.
function understood({ observations, unused }: Witnessed, page: Session['page']): string[] {
  const { voice } = page;
  const texts = observations.map((one) => observationText(one, voice)).join('; ');
  return [
    ...(texts === '' ? [] : paragraph(voice.say('ask.understood', { observations: texts }), page)),
    ...unusedLines(unused, page),
  ];
}

// Who leads so far, what must wait, the test with its cautions, and the question.
function question(
  { advice, ranking, observations, inquiry }: Suspicion,
  page: Session['page'],
): string[] {
  const { voice } = page;
  const { best } = advice;
  if (!best) return [];
  const leading = ranking.brackets.slice(0, 3).flatMap(({ suspects, chance: its }) => {
    const [first, ...sharing] = suspects;
    if (!first) return [];
    const chance = percent(its, voice);
    // A chance that several share is nobody's own.
    if (sharing.length > 0)
      return [voice.say('ask.leading group', { count: suspects.length, chance })];
    return [voice.say('ask.leading one', { suspect: causeText(first.cause, voice), chance })];
  });
  const { outcomes, whole } = inquiry.predict(best.test);
  const [should] = outcomes.slice(whole);
  const asked = voice.say('ask.test', {
    test: testName(best.test, voice),
    minutes: best.minutes,
    whole: should ? outcomeText(should, voice) : '',
    others: others(best.test, inquiry, voice).join(', '),
  });
  return [
    '',
    ...(observations.length === 0
      ? []
      : paragraph(voice.say('ask.leading', { suspects: leading.join(', ') }), page)),
    ...adviceLines(advice, observations, page),
    ...paragraph(asked, page).map(page.ink.strong),
  ];
}

// What was typed; undefined for what is no answer.
function answerIn(
  line: string,
  test: Test,
  { inquiry, told, voice }: Asked,
): Observation | 'skip' | 'print' | 'quit' | undefined {
  const typed = line.trim();
  const sure = typed.endsWith('?') ? 'not sure' : 'sure';
  const said = typed.replace(/\s*\?$/, '').toLowerCase();
  if (['q', 'quit'].includes(said)) return 'quit';
  if (['s', 'skip'].includes(said)) return 'skip';
  if (['p', 'print'].includes(said)) return 'print';
  const sight = speedIn(said, test, inquiry, told) ?? sightIn(said, test, inquiry, voice);
  return sight && { test, sight, sure };
}

interface Asked {
  readonly inquiry: Inquiry;
  readonly told: Witnessed;
  readonly voice: Voice;
}

// An engine speed at a road speed, of a gear.
function speedIn(
  said: string,
  test: Test,
  inquiry: Inquiry,
  { observations }: Witnessed,
): Sight | undefined {
  const reading = test.test === 'under power' ? roadReadingFrom(said) : undefined;
  return reading && speedSight(reading, inquiry, observations);
}

function sightIn(said: string, test: Test, inquiry: Inquiry, voice: Voice): Sight | undefined {
  if (['y', 'yes', 'sí', 'si'].includes(said)) return { saw: 'as it should' };
  if (['n', 'no'].includes(said)) return { saw: 'not as it should' };
  // The words of the page, and those of the file.
  const { outcomes } = inquiry.predict(test);
  const shown = outcomes.find((outcome) => outcomeText(outcome, voice).toLowerCase() === said);
  return shown ? sightOf(shown) : sightMeant(said, test);
}

// What the test may show beside what it should.
function others(test: Test, inquiry: Inquiry, voice: Voice): string[] {
  const { outcomes, whole } = inquiry.predict(test);
  return outcomes.flatMap((outcome, o) => (o === whole ? [] : [outcomeText(outcome, voice)]));
}
