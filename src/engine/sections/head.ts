import * as v from 'valibot';
import { plainName, or, text, WAY } from '../form/index.ts';
import { assemble, CASE, outputsOf, type Train } from '../train/index.ts';
import { MEMBER, section } from '../entries/index.ts';

// What a train file says of the train as a whole, a line each.

const FINAL_PAIR = plainName('A gear pair that stands behind the gears.', {
  as: 'final pair',
  names: 'gear pair',
});
const END_NAME = plainName('What an end of the unit is called.');

export const NAME = section({
  key: 'name',
  form: v.exactOptional(text('What the train is called.')),
  read: (entry = '') => ({ name: entry }),
  write: (train) => train.name || undefined,
});

export const ABOUT = section({
  key: 'about',
  form: v.exactOptional(text('A paragraph for the reader.')),
  read: (about = '') => ({ about }),
  write: ({ about }) => about || undefined,
});

export const INPUT = section({
  key: 'input',
  form: v.pipe(
    MEMBER,
    v.description('The member that the engine turns. Clockwise is seen from this end.'),
  ),
  read: (input = '') => ({ input }),
  write: ({ input }) => input,
  check: ({ input }, at, findings) => {
    if (input === CASE) findings.error(at('input'), { problem: 'case cannot turn', end: 'input' });
  },
});

export const OUTPUT = section({
  key: 'output',
  form: v.pipe(
    v.union(
      [MEMBER, v.pipe(v.array(MEMBER, or('members')), v.minLength(1, or('members')))],
      or('members'),
    ),
    v.description(
      'The member that drives the load; or several, as [left half shaft, right half shaft].',
    ),
  ),
  read: (entry = ''): Pick<Train, 'output' | 'others'> => {
    if (typeof entry === 'string') return { output: entry };
    const [output = '', ...others] = entry;
    return { output, ...(others.length > 0 && { others }) };
  },
  write: (train) => (train.others ? outputsOf(train) : train.output),
  check: (train, at, findings) => {
    if (train.output === CASE) {
      findings.error(at('output'), { problem: 'case cannot turn', end: 'output' });
    }
    outputsOf(train).forEach((member, i, all) => {
      const place = () => at('output', `${i}`);
      if (i > 0 && member === CASE) {
        findings.error(place(), { problem: 'case cannot turn', end: 'output' });
      } else if (all.indexOf(member) < i) {
        findings.error(place(), { problem: 'listed twice', name: member });
      }
    });
  },
  checkSound: (train, at, findings) => {
    const { bodyOf, onPins, gearing } = assemble(train);
    const ends = new Map<number | undefined, { by: string; end: 'input' | 'output' }>();
    ends.set(bodyOf(train.input), { by: train.input, end: 'input' });
    outputsOf(train).forEach((member, i) => {
      const place = train.others ? at('output', `${i}`) : at('output');
      const body = bodyOf(member);
      const other = ends.get(body);
      if (other) findings.error(place, { problem: 'end taken', member, ...other });
      else if (onPins.has(body as number) && gearing.planets.some((its) => its.member === member)) {
        findings.warning(place, { problem: 'planet as an end', member });
      }
      ends.set(body, { by: member, end: 'output' });
    });
  },
});

export const FORWARD = section({
  key: 'forward',
  form: v.exactOptional(
    v.pipe(
      WAY,
      v.description(
        'How the output turns as the vehicle goes forward, seen from the input end. Absent: as most of the gears that drive turn it.',
      ),
    ),
  ),
  read: (forward): Pick<Train, 'forward'> => (forward ? { forward } : {}),
  write: ({ forward }) => forward,
});

export const FINAL_DRIVE = section({
  key: 'final drive',
  form: v.exactOptional(
    v.pipe(
      v.union(
        [
          FINAL_PAIR,
          v.pipe(v.array(FINAL_PAIR, or('gear pairs')), v.minLength(1, or('gear pairs'))),
        ],
        or('gear pairs'),
      ),
      v.description(
        'The gear pair behind the gears, or several: overdrive and reduction are told of what stands before.',
      ),
    ),
  ),
  read: (entry): Pick<Train, 'finalDrive'> => (entry ? { finalDrive: [entry].flat() } : {}),
  write: ({ finalDrive }) => finalDrive,
});

export const UNIT_ENDS = section({
  key: 'ends',
  form: v.exactOptional(
    v.pipe(
      v.strictTuple([END_NAME, END_NAME], or('two ends')),
      v.description(
        'What the two ends of the unit are called, the input end first, as [pump end, cover end].',
      ),
    ),
  ),
  read: (ends): Pick<Train, 'ends'> => (ends ? { ends } : {}),
  write: ({ ends }) => ends,
});
