import {
  type Observation,
  type Outcome,
  seenText,
  type Sight,
  sightMeant,
  sightOf,
  type Test,
  testText,
} from '../../engine/suspects/index.ts';
import { causeText, outcomeText, testName, visible, voiceOf } from '../../telling/narrative/index.ts';
import {
  adviceLines,
  paragraph,
  percent,
  suspectsText,
  type Suspicion,
} from '../../telling/report/index.ts';
import { done, type Reply, type Session } from './session.ts';

/**
 * Asks a question at a time, the one that is worth most, until the first suspect is likely
 * enough, no test parts them, or nobody answers; ends with the whole answer and the file.
 */
export async function interview(
  reckon: (observations: readonly Observation[], tests?: readonly Test[]) => Suspicion,
  lines: AsyncIterable<string>,
  session: Session,
): Promise<Reply> {
  const { world, page, options } = session;
  const voice = voiceOf(page.language);
  const observations: Observation[] = [];
  const skipped = new Set<string>();
  const answers = lines[Symbol.asyncIterator]();
  const tell = (told: readonly string[]) => world.out(`${told.join('\n')}\n`);
  let suspicion = reckon(observations);
  const example = voice.say('outcome', { word: 'slips', has: 'no', ratio: '' });
  tell(paragraph(voice.say('ask.how', { example }), page));
  while (!suspicion.ranking.enough && suspicion.advice.best) {
    const { test } = suspicion.advice.best;
    tell(question(suspicion, session));
    const answer = await heard(test, suspicion, answers, observations, session);
    if (answer === 'quit') break;
    if (answer === 'skip') skipped.add(testText(test));
    else observations.push(answer);
    const { tests } = suspicion.inquiry;
    suspicion = reckon(
      observations,
      tests.filter((other) => !skipped.has(testText(other))),
    );
  }
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
function question({ advice, ranking, observations, inquiry }: Suspicion, { page }: Session): string[] {
  const voice = voiceOf(page.language);
  const { best } = advice;
  if (!best) return [];
  const leading = ranking.brackets.slice(0, 3).flatMap(({ suspects: [first], chance }) => {
    if (!first) return [];
    const suspect = causeText(first.cause, voice);
    return [voice.say('ask.leading one', { suspect, chance: percent(chance) })];
  });
  const { outcomes, whole } = inquiry.predict(best.test);
  const asked = voice.say('ask.test', {
    test: testName(best.test, voice),
    minutes: best.minutes,
    whole: outcomeText(outcomes[whole] as Outcome, voice),
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

async function heard(
  test: Test,
  { inquiry }: Suspicion,
  answers: AsyncIterator<string>,
  observations: readonly Observation[],
  { world, page }: Session,
): Promise<Observation | 'skip' | 'quit'> {
  const voice = voiceOf(page.language);
  for (;;) {
    world.out('> ');
    const { done: ended, value } = await answers.next();
    if (ended) {
      world.out('\n');
      return 'quit';
    }
    const typed = String(value).trim();
    const sure = /\?$/.test(typed) ? 'not sure' : 'sure';
    const said = typed.replace(/\s*\?$/, '').toLowerCase();
    if (said === 'q' || said === 'quit') return 'quit';
    if (said === 's' || said === 'skip') return 'skip';
    if (said === 'p' || said === 'print') {
      world.out(seenText(observations));
      continue;
    }
    const sight = sightSaid(said);
    if (sight) return { test, sight, sure };
    const values = { given: visible(typed), others: others(test, inquiry, voice).join(', ') };
    world.out(`${paragraph(voice.say('ask.known', values), page).join('\n')}\n`);
  }

  function sightSaid(said: string): Sight | undefined {
    if (['y', 'yes', 'sí', 'si'].includes(said)) return { saw: 'as it should' };
    if (['n', 'no'].includes(said)) return { saw: 'not as it should' };
    // The words of the page, and those of the file.
    const shown = inquiry
      .predict(test)
      .outcomes.find((outcome) => outcomeText(outcome, voice).toLowerCase() === said);
    return shown ? sightOf(shown) : sightMeant(said, test);
  }
}

// What the test may show beside what it should.
function others(
  test: Test,
  inquiry: Suspicion['inquiry'],
  voice: ReturnType<typeof voiceOf>,
): string[] {
  const { outcomes, whole } = inquiry.predict(test);
  return outcomes.flatMap((outcome, o) => (o === whole ? [] : [outcomeText(outcome, voice)]));
}
