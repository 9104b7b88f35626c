import { askCheck } from '../../asking/gears/index.ts';
import { problemText, visible } from '../../telling/narrative/index.ts';
import {
  anotherText,
  noneText,
  optionText,
  questionOf,
  topicText,
  wrongText,
} from '../../telling/questions/index.ts';
import { checkText } from '../../telling/report/index.ts';
import { paragraph } from '../../telling/text/index.ts';
import { done, type Reply, type Session, textOf, unwritable } from '../../command/session/index.ts';
import { Misuse } from '../../command/machine/index.ts';
import { Told } from './told.ts';

/**
 * Makes a train file by questions, the rounds of the page: each is written into the file when its
 * last question is answered. Goes on with a file that is there; ends with what `check` says of it.
 */
export async function describe(file: string, session: Session): Promise<Reply> {
  const { world, page } = session;
  const { voice } = page;
  const { language } = voice;
  if (file === '-' || !world.lines) throw new Misuse('bad.nobody asked');
  const told = new Told(world.start(file) === undefined ? '' : textOf(file, world));
  const tell = (lines: readonly string[]) => world.out(`${lines.join('\n')}\n`);
  const show = () => {
    const { strong, choices, hint } = wordsOf(told, session);
    const numbered = choices.flatMap((choice, i) => paragraph(`${i + 1}  ${choice}`, page));
    const below = hint === '' ? [] : paragraph(hint, page);
    tell(['', ...paragraph(strong, page).map(page.ink.strong), ...below, ...numbered, '>']);
  };
  tell(paragraph(voice.say('describe.how', { file: visible(file) }), page));
  show();
  for await (const line of world.lines()) {
    const word = line.trim();
    if (word === 'q' || word === 'quit') break;
    if (word === 'back') told.back();
    else {
      const { choices } = wordsOf(told, session);
      const wrong = told.hear(word, choices, (its) => wrongText(its, language));
      if (wrong === 'end') break;
      if (wrong !== undefined) {
        const known = voice.say('describe.known', { given: visible(word) });
        tell(paragraph(wrong === 'unknown' ? known : wrong, page));
      }
    }
    if (told.isWritten) {
      try {
        world.write(file, new TextEncoder().encode(told.text));
      } catch (error) {
        throw unwritable(file, error);
      }
      told.isWritten = false;
      const fresh = told.fresh().map((one) => problemText(one, voice));
      if (fresh.length > 0) tell(fresh.flatMap((text) => paragraph(text, page)));
    }
    show();
  }
  const { problems } = askCheck(told.text);
  return done(told.text === '' ? '' : checkText(file, problems, page));
}

// The question of the moment, and what may be picked.
function wordsOf(told: Told, { page: { voice } }: Session) {
  const { language } = voice;
  const { asked, prompt } = told;
  if (asked.ask === 'more') {
    const choices = [voice.say('describe.yes'), voice.say('describe.no')];
    return { strong: anotherText(asked.of, language), hint: '', choices };
  }
  if (asked.ask === 'nothing' || !prompt) {
    const choices = told.further.map((its) => topicText(its, language));
    return { strong: voice.say('describe.further'), hint: '', choices };
  }
  const { inquiry } = asked;
  const { question, hint } = questionOf(inquiry, prompt, voice);
  const empty = prompt.optional
    ? voice.say('describe.empty', { means: noneText(inquiry, prompt, language) })
    : '';
  const units = prompt.kind === 'quantity' || prompt.kind === 'quantities';
  const inUnits = units ? voice.say('describe.units', { units: prompt.options.join(', ') }) : '';
  const seen = prompt.kind === 'way' ? voice.say('describe.seen from the input') : '';
  const said = [hint, inUnits, seen, empty].filter(Boolean).join(' ');
  const naming = (option: string) =>
    prompt.of === 'words' ? optionText(prompt, option, language) : voice.name(option);
  return { strong: question, hint: said, choices: units ? [] : prompt.options.map(naming) };
}
