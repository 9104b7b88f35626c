import {
  accountsOf,
  type Inquiry,
  nextTest,
  type Observation,
  rank,
  seenText,
  type Sight,
  sightMeant,
  sightOf,
  type Test,
  testText,
} from '../../engine/suspects/index.ts';
import {
  causeText,
  outcomeText,
  testName,
  visible,
  type Voice,
  voiceOf,
} from '../../telling/narrative/index.ts';
import {
  adviceLines,
  paragraph,
  percent,
  suspectsText,
  type Suspicion,
} from '../../telling/report/index.ts';
import { done, type Reply, type Session } from './session.ts';
import { suspicionOf } from './suspicion.ts';

/**
 * Asks a question at a time, the one that is worth most, until the first suspect is likely
 * enough, no test parts them, or nobody answers; ends with the whole answer and the file.
 */
export async function interview(
  inquiry: Inquiry,
  practice: string,
  lines: AsyncIterable<string>,
  { world, page, options }: Session,
): Promise<Reply> {
  const voice = voiceOf(page.language);
  const observations: Observation[] = [];
  const skipped = new Set<string>();
  const tell = (told: readonly string[], end = '\n') => world.out(`${told.join('\n')}${end}`);
  // What is piped in is not echoed, and ends no line.
  const prompt = world.terminal ? '> ' : '>\n';
  const offered = (test: Test) => !skipped.has(testText(test));
  const asked = (): Test | undefined => {
    const accounts = accountsOf(inquiry, observations);
    const ranking = rank(inquiry, accounts);
    const advice = nextTest(inquiry, accounts, ranking.belief, offered);
    if (ranking.enough || !advice.best) return undefined;
    tell([...question({ inquiry, observations, ranking, advice }, page), prompt], '');
    return advice.best.test;
  };
  const example = voice.say('outcome', { word: 'slips', has: 'no', ratio: '' });
  tell(paragraph(voice.say('ask.how', { example }), page));
  let test = asked();
  if (test) {
    for await (const line of lines) {
      const answer = answerIn(line, test, inquiry, voice);
      if (answer === 'quit') break;
      if (answer === 'print') tell([seenText(observations) + prompt], '');
      else if (answer === undefined) {
        const shown = others(test, inquiry, voice).join(', ');
        const values = { given: visible(line.trim()), others: shown };
        tell([...paragraph(voice.say('ask.known', values), page), prompt], '');
      } else {
        if (answer === 'skip') skipped.add(testText(test));
        else observations.push(answer);
        test = asked();
        if (!test) break;
      }
    }
  }
  const suspicion = suspicionOf(inquiry, observations, practice, offered);
  const file = seenText(observations).trimEnd();
  return done(
    [
      '',
      suspectsText(suspicion, options.all ?? false, page),
      ...(file === '' ? [] : ['', ...paragraph(voice.say('ask.end'), page), '', file]),
    ].join('\n'),
  );
}

// Who leads so far, what must wait, the test with its cautions, and the question.
function question(
  {
    advice,
    ranking,
    observations,
    inquiry,
  }: Pick<Suspicion, 'advice' | 'ranking' | 'observations' | 'inquiry'>,
  page: Session['page'],
): string[] {
  const voice = voiceOf(page.language);
  const { best } = advice;
  if (!best) return [];
  const leading = ranking.brackets.slice(0, 3).flatMap(({ suspects: [first], chance }) => {
    if (!first) return [];
    const suspect = causeText(first.cause, voice);
    return [voice.say('ask.leading one', { suspect, chance: percent(chance, voice) })];
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
  inquiry: Inquiry,
  voice: Voice,
): Observation | 'skip' | 'print' | 'quit' | undefined {
  const typed = line.trim();
  const sure = typed.endsWith('?') ? 'not sure' : 'sure';
  const said = typed.replace(/\s*\?$/, '').toLowerCase();
  if (['q', 'quit'].includes(said)) return 'quit';
  if (['s', 'skip'].includes(said)) return 'skip';
  if (['p', 'print'].includes(said)) return 'print';
  const sight = sightIn(said, test, inquiry, voice);
  return sight && { test, sight, sure };
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
