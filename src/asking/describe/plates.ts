import { type Form, length } from '../../engine/form/index.ts';
import type { Value } from '../../engine/yaml/index.ts';
import type { Replies } from './asking.ts';
import { number, type Prompt, words } from './prompt.ts';

/**
 * The plates of a pack, told as hands tell them: how many frictions and steels that lie in turn, how
 * thick, and what lies at either end. What is asked so far, and the plates from the piston on.
 */
export function plates(path: string, answers: Replies): [Prompt[], Value] {
  const key = (its: string) => `${path}.${its}`;
  const thick = (its: string): Prompt => ({
    ...words(key(its), ['mm', 'in']),
    kind: 'quantity',
    form: THICKNESS,
  });
  const ends = { ...words(key('also'), ['cushion', 'backing plate']), kind: 'several' as const };
  const also = answers.get(key('also'));
  const has = (its: string) => Array.isArray(also) && also.includes(its);
  const prompts = [
    words(key('first'), ['steel', 'friction']),
    number(key('frictions'), 100),
    number(key('steels'), 100),
    thick('friction'),
    thick('steel'),
    { ...ends, optional: true },
    ...(has('cushion') ? [thick('cushion')] : []),
    ...(has('backing plate') ? [thick('backing plate')] : []),
  ];
  const plate = (kind: string): Value => {
    return new Map([
      ['kind', kind],
      ['thickness', `${answers.get(key(kind)) ?? ''}`],
    ]);
  };
  const count = (its: string) => Number(answers.get(key(its)) ?? 0);
  const [frictions, steels] = [count('frictions'), count('steels')];
  const order =
    answers.get(key('first')) === 'friction' ? ['friction', 'steel'] : ['steel', 'friction'];
  const kinds = Array.from({ length: frictions + steels }, (_, i) => order[i % 2] as string);
  return [
    prompts,
    [
      ...(has('cushion') ? [plate('cushion')] : []),
      ...kinds.map(plate),
      ...(has('backing plate') ? [plate('backing plate')] : []),
    ],
  ];
}

const THICKNESS = length('How thick it is.') as unknown as Form;

/** Whether so many cannot lie in turn, beginning with `first` at the piston. */
export function cannotAlternate(path: string, answers: Replies): boolean {
  const said = (its: string) => answers.get(`${path}.${its}`);
  const [frictions, steels] = [Number(said('frictions')), Number(said('steels'))];
  const over = said('first') === 'friction' ? frictions - steels : steels - frictions;
  return over !== 0 && over !== 1;
}
