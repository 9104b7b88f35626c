import { FACINGS, isFriction, type Part, type Train, uncarried } from '../../engine/train/index.ts';
import { partValue } from '../../engine/sections/index.ts';
import { type Edited, put } from '../../engine/yaml/index.ts';
import { recalled, remember } from '../words/index.ts';

/** What is asked of a part that came off, in turn. */
export const ASKED = [
  'name',
  'carries',
  'up',
  'inner',
  'outer',
  'face',
  'faces',
  'align',
  'frictions',
  'steels',
  'selective',
  'refit',
] as const;
export type Asked = (typeof ASKED)[number];

/** What was said of it so far; null where it was left out. */
export type Draft = Partial<Record<Asked, string | number | readonly string[] | null>>;

export { FACINGS };

/** The first question that is still open; undefined when all are answered. */
export function openQuestion(train: Train, draft: Draft): Asked | undefined {
  return ASKED.find((asked) => draft[asked] === undefined && isAsked(train, draft, asked));
}

/** The last question that was answered, to be asked again. */
export function lastAnswered(draft: Draft): Asked | undefined {
  return ASKED.findLast((asked) => draft[asked] !== undefined);
}

function isAsked(train: Train, draft: Draft, asked: Asked): boolean {
  const carries = Array.isArray(draft.carries) ? (draft.carries as readonly string[]) : [];
  const packed = train.devices.some((device) => {
    return isFriction(device) && device.kind !== 'band' && carries.includes(device.name);
  });
  switch (asked) {
    case 'carries':
      return uncarried({ ...train, teardown: train.teardown ?? [] }).length > 0;
    case 'up':
      // Said once, and again where the unit is turned over: in the text.
      return (train.teardown ?? []).length === 0;
    case 'faces':
      return typeof draft.face === 'string';
    case 'frictions':
    case 'steels':
      return packed;
    case 'selective':
      return carries.length === 0;
    default:
      return true;
  }
}

/** The train file with the part as the last that came off. */
export function withPart(text: string, draft: Draft): Edited {
  const { name, carries, ...notes } = draft;
  const said = Object.fromEntries(Object.entries(notes).filter(([, its]) => its !== null));
  const { selective, ...others } = said;
  const part = {
    name: String(name),
    carries: Array.isArray(carries) ? carries : [],
    ...others,
    ...(selective !== undefined && { selective: selective === 'yes' }),
  } as Part;
  return put(text, ['teardown', part.name], partValue(part));
}

/** What a browser keeps of a part that is half told, a job or train each. */
export function recallDraft(work: string): Draft {
  try {
    const draft = JSON.parse(recalled(keyOf(work), ['browser'])) as unknown;
    return draft !== null && typeof draft === 'object' ? (draft as Draft) : {};
  } catch {
    return {};
  }
}

export function keepDraft(work: string, draft: Draft): void {
  const text = Object.keys(draft).length > 0 ? JSON.stringify(draft) : '';
  remember(keyOf(work), text, ['browser']);
}

export function isHalfMade(work: string): boolean {
  return Object.keys(recallDraft(work)).length > 0;
}

const keyOf = (work: string) => `strip part ${work}`;
