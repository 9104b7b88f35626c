import { opposite, signOf } from '../../engine/linear/index.ts';
import type { Answer, Misconception, Question } from '../../shop/lessons/index.ts';
import { seenFrom } from './oneway.ts';
import { faultName, gearName } from './signs.ts';
import { AT_THE_INPUT, type Stand, wayFor } from '../../asking/request/index.ts';
import { keyOf, visible, type Voice, voiceOf } from '../voice/index.ts';

/** The question with what must be known to answer it: the gear, what is on, who turns what. */
export function questionText(
  question: Question,
  voice: Voice = voiceOf('en'),
  stand: Stand = AT_THE_INPUT,
): string {
  const { kind, setting, subject } = question;
  const { gear, on, hold, turn, end, output = 'clockwise', fault } = setting;
  const [first, second] = subject;
  const asked = voice.say('lesson.question', {
    kind: keyOf(kind),
    thing: voice.name(first?.name ?? ''),
    holder: second?.kind === 'device' ? voice.name(second.name) : '',
    held: second?.kind === 'device' ? 'yes' : 'no',
    face: visible(setting.face ?? ''),
  });
  const said: string[] = [];
  if (fault) said.push(voice.say('lesson.fault', { fault: faultName(fault, voice) }));
  if (setting.off) {
    const parts = voice.list(setting.off.slice(-MOST_OFF).map(visible));
    const more = Math.max(0, setting.off.length - MOST_OFF);
    said.push(voice.say('lesson.off', { more, parts }));
  }
  if (turn) {
    const way = voice.say('way', { way: wayFor(turn.way, stand) });
    const applied = { count: on.length, devices: voice.names(on) };
    const hands = { ...applied, held: voice.names(hold), turned: voice.name(turn.member), way };
    said.push(voice.say('lesson.hands', { ...hands, seen: seenFrom(stand, voice) }));
  } else if (gear) {
    const way = voice.say('way', { way: wayFor(output, stand) });
    const devices = { gear: gearName(gear, voice), count: on.length, devices: voice.names(on) };
    said.push(voice.say('lesson.gear', { ...devices, end, way, seen: seenFrom(stand, voice) }));
  }
  return [...said, asked].join(' ');
}

/** Of the parts that are off, so many are named: those that came off last. */
const MOST_OFF = 3;

/** What a choice says, in a few words. */
export function choiceText(
  answer: Answer,
  voice: Voice = voiceOf('en'),
  stand: Stand = AT_THE_INPUT,
): string {
  switch (answer.answer) {
    case 'turning': {
      const way = wayFor(answer.is === 'anticlockwise' ? 'anticlockwise' : 'clockwise', stand);
      return voice.say('lesson.turning', { is: answer.is, way: voice.say('way', { way }) });
    }
    case 'ratio': {
      const { ratio } = answer;
      const back = signOf(ratio) < 0;
      return voice.say('lesson.ratio', { ratio: voice.number(ratio), back: back ? 'yes' : 'no' });
    }
    case 'device':
      return voice.say('lesson.device', { does: keyOf(answer.does) });
    case 'devices':
      return voice.names(answer.devices);
    case 'members': {
      const members = voice.names(answer.members);
      return voice.say('lesson.members', { count: answer.members.length, members });
    }
    case 'yes or no':
      return voice.say('lesson.yes or no', { is: answer.yes ? 'yes' : 'no' });
    case 'torque': {
      if (answer.pushed === null) return voice.say('lesson.no torque');
      const size = signOf(answer.size) < 0 ? opposite(answer.size) : answer.size;
      const torque = voice.say('torque', { end: 'input', size: voice.number(size) });
      const way = voice.say('way', { way: wayFor(answer.pushed, stand) });
      return voice.say('lesson.torque', { torque, way });
    }
    case 'state':
      return voice.say('lesson.state', outcomeOf(answer, voice));
    case 'part':
      return voice.called(answer.part);
    case 'facing':
      return voice.say('lesson.facing', { to: answer.to });
    case 'sign': {
      const { sign } = answer;
      if (!sign) return voice.say('lesson.no sign');
      const where = { gear: gearName(sign.gear, voice), end: sign.end };
      return voice.say('lesson.sign', { ...where, ...outcomeOf(sign, voice) });
    }
  }
}

/** The wrong idea that leads to a wrong choice, and what is so. */
export function misconceptionText(
  misconception: Misconception,
  voice: Voice = voiceOf('en'),
): string {
  return voice.say(`misconception.${misconception}`);
}

function outcomeOf(
  { state, ratio }: Pick<Extract<Answer, { answer: 'state' }>, 'state' | 'ratio'>,
  voice: Voice,
) {
  return {
    state: keyOf(state),
    at: ratio ? 'yes' : 'no',
    ratio: ratio ? voice.number(ratio) : '',
  };
}
