import type { WheelSet } from '../../engine/train/index.ts';
import type { Replies, Reply } from './asking.ts';
import { number, type Prompt, severalOf, text, words } from './prompt.ts';

// A set of any other arrangement: its wheels one by one, then which planet meshes what.

/** What is asked of it, as far as its answers tell. */
export function wheelPrompts(answers: Replies): Prompt[] {
  const prompts: Prompt[] = [];
  const names = namesIn(answers);
  for (let i = 1; i <= names.length + 1; i++) {
    const isLast = i === names.length + 1;
    if (isLast && answers.get(`wheel ${i - 1} more`) === 'no') break;
    const others = names.slice(0, i - 1);
    const about = names[i - 1];
    prompts.push({ ...text(`wheel ${i}`), word: 'wheel', without: [...others, 'carrier'] });
    if (about === undefined) return prompts;
    prompts.push({ ...number(`wheel ${i} teeth`), word: 'wheel teeth', about });
    prompts.push({ ...words(`wheel ${i} more`, ['yes', 'no']), word: 'more wheels' });
    if (answers.get(`wheel ${i} more`) === undefined) return prompts;
  }
  const carried = listed(answers, 'carried');
  const still = names.filter((name) => !carried.includes(name));
  return [
    ...prompts,
    severalOf('carried', names),
    ...(still.length > 0 ? [severalOf('inside', still)] : []),
    ...carried.map((about) => ({
      ...severalOf(`meshes ${about}`, namesFor(answers, about)),
      word: 'meshes',
      about,
    })),
  ];
}

// Which wheels a planet may mesh: another planet is asked once which it meshes.
function namesFor(answers: Replies, wheel: string): string[] {
  const carried = listed(answers, 'carried');
  const before = new Set(carried.slice(0, carried.indexOf(wheel)));
  return namesIn(answers).filter((name) => name !== wheel && !before.has(name));
}

/** The set that was told; its name stands elsewhere. */
export function wheelsSaid(answers: Replies): Pick<WheelSet, 'wheels' | 'carried' | 'meshes'> {
  const names = namesIn(answers);
  const carried = listed(answers, 'carried');
  const inside = listed(answers, 'inside');
  const meshes = carried.flatMap((planet) =>
    listed(answers, `meshes ${planet}`).map((other) => {
      const internal = inside.includes(other);
      return { a: other, b: planet, internal };
    }),
  );
  const teeth = (i: number) => Number(answers.get(`wheel ${i + 1} teeth`) ?? 1);
  return { wheels: new Map(names.map((name, i) => [name, teeth(i)])), carried, meshes };
}

/** What would have been said of a set that is there. */
export function wheelsBefore({ wheels, carried, meshes }: WheelSet): [string, Reply][] {
  const inside = meshes.flatMap(({ a, b, internal }) => {
    return internal ? [a, b].filter((name) => !carried.includes(name)) : [];
  });
  const meshed = carried.map((planet, i): [string, Reply] => {
    const before = new Set(carried.slice(0, i));
    const others = meshes.flatMap(({ a, b }) => (a === planet ? [b] : b === planet ? [a] : []));
    return [`meshes ${planet}`, others.filter((name) => !before.has(name))];
  });
  return [
    ...[...wheels].flatMap(([name, teeth], i): [string, Reply][] => [
      [`wheel ${i + 1}`, name],
      [`wheel ${i + 1} teeth`, teeth],
      [`wheel ${i + 1} more`, i + 1 < wheels.size ? 'yes' : 'no'],
    ]),
    ['carried', carried],
    ['inside', [...new Set(inside)]],
    ...meshed,
  ];
}

function namesIn(answers: Replies): string[] {
  const names: string[] = [];
  for (let i = 1; ; i++) {
    const name = answers.get(`wheel ${i}`);
    if (typeof name !== 'string') return names;
    names.push(name);
  }
}

function listed(answers: Replies, key: string): readonly string[] {
  const said = answers.get(key);
  return Array.isArray(said) ? (said as readonly string[]) : [];
}
