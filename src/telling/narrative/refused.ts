import type { Refused, Unknown } from '../../asking/request/index.ts';
import { problemText } from './problems.ts';
import { type Arguments, visible, type Voice } from '../voice/index.ts';

/** Why there is no answer, and what to say instead: one line. `file` is what the train's text is called. */
export function refusedText(why: Refused, file: string, voice: Voice): string {
  switch (why.refused) {
    case 'no.member':
    case 'no.range':
    case 'no.gear':
    case 'no.device':
    case 'no.part':
    case 'no.output':
    case 'no.one-way':
    case 'no.entry kind':
    case 'no.entry':
    case 'no.measured':
    case 'no.task':
      return voice.say(why.refused, unknownWords(why));
    case 'bad.task of':
      return voice.say('bad.task of', { task: why.task, of: visible(why.of) });
    case 'no.fault name':
      return voice.say('no.fault name', { ...unknownWords(why), option: `--${why.of}` });
    case 'no.fault':
    case 'no.fault place': {
      const all = visible(why.known.join(', '));
      return voice.say(why.refused, { ...unknownWords(why), all, name: visible(why.name) });
    }
    case 'no.way':
    case 'no.race':
    case 'no.friction':
    case 'no.device.at all':
    case 'bad.speeds':
    case 'bad.efficiency':
    case 'bad.excess':
    case 'bad.pressure':
    case 'bad.torque':
    case 'bad.stall ratio':
      return voice.say(why.refused, { given: visible(why.given) });
    case 'no.load':
      return voice.say('no.load', { given: visible(why.given), name: visible(why.output) });
    case 'bad.load twice':
      return voice.say('bad.load twice', { output: visible(why.output) });
    case 'bad.oil chase':
      return voice.say('bad.oil chase', { gear: voice.called(why.gear) });
    case 'bad.fault twice':
      return voice.say('bad.fault twice', {
        given: visible(why.given),
        before: visible(why.before),
      });
    case 'bad.loads':
      return voice.say('bad.loads', { all: visible(why.outputs.join(', ')) });
    case 'no.end': {
      const named = [...why.ends, 'input', 'output'].map(visible).join(', ');
      const all = why.ends.length > 0 ? named : 'no';
      return voice.say('no.end', { given: visible(why.given), all });
    }
    case 'bad.held turned':
      return voice.say('bad.held turned', { member: visible(why.member) });
    case 'bad.gear alone': {
      const all = visible(why.ranges.join(', '));
      return voice.say('bad.gear alone', { gear: visible(why.gear), all });
    }
    case 'bad.missing turn':
    case 'bad.case turned':
    case 'bad.few speeds':
    case 'bad.choice':
    case 'bad.oil on':
    case 'no.ranges':
    case 'bad.at losses':
    case 'bad.series alone':
      return voice.say(why.refused);
    case 'no.capacities':
    case 'no.torque':
    case 'no.teardown':
      return voice.say(why.refused, { file: visible(file) });
    case 'bad.one-way':
      return voice.say('bad.one-way', { option: `--${why.option}` });
    case 'bad.many devices':
    case 'bad.many parts':
      return voice.say(why.refused, { count: why.count, most: why.most });
    case 'bad.many faults':
      return voice.say('bad.many faults', { rows: why.rows, gears: why.gears });
    case 'bad.trials':
    case 'bad.series': {
      const [given, least, most] = [visible(why.given), `${why.least}`, `${why.most}`];
      return voice.say(why.refused, { given, least, most });
    }
    case 'no.measured pack':
    case 'no.measured endplay':
    case 'no.measured preload':
    case 'no.measured band':
    case 'no.measured wear':
      return voice.say(why.refused, { file: visible(why.called) });
    case 'bad.missing words':
      return voice.say('bad.missing words', { kind: why.kind });
    case 'bad.words':
      return voice.say('bad.words', { kind: why.kind, given: visible(why.given) });
    case 'bad.entry':
      return voice.say('bad.entry', { problem: problemText(why.problem, voice) });
    case 'bad.train':
    case 'bad.file':
      return unreadText(why, voice);
  }
}

// The first problem, by "file:line:column", which editors and terminals turn into a link.
function unreadText(
  { refused, called, problems }: Extract<Refused, { refused: 'bad.train' | 'bad.file' }>,
  voice: Voice,
): string {
  const [first] = problems;
  const file = visible(called);
  return voice.say(refused, {
    file,
    place: first ? `${file}:${first.place.line}:${first.place.column}` : file,
    problem: first ? problemText(first, voice) : '',
    more: problems.length - 1,
  });
}

/** The arguments of a message on an unknown name: the nearest, else the first that could stand there. */
export function unknownWords({ given, near, known }: Unknown): Arguments {
  const few = known.slice(0, MOST_TOLD).join(', ');
  return {
    given: visible(given),
    has: near === undefined ? 'no' : 'yes',
    near: visible(near ?? ''),
    all: visible(few + (known.length > MOST_TOLD ? ', …' : '')),
  };
}

const MOST_TOLD = 12;
