import { isApplied, isFriction, type Train } from '../train/index.ts';
import { type Caret, caretAt } from './caret.ts';
import { FILE, TELLING } from './definition.ts';
import { ROLES, type Role } from './mention.ts';
import { membersOf } from './parts.ts';
import { scalarText } from './write.ts';

/** What may be typed at a place: it takes the place of the text from `from` to the caret. */
export interface Offers {
  readonly from: number;
  readonly offers: readonly Offer[];
}

export interface Offer {
  /** What is shown, and what the typed letters are held against. */
  readonly label: string;
  /** What is put; `\u0000` stands where the reader types on. */
  readonly put: string;
  readonly what: 'key' | 'word' | 'form' | Role;
}

type Entries = Readonly<Record<string, Form>>;
type Form =
  | { readonly type: 'exact_optional' | 'nullish'; readonly wrapped: Form }
  | { readonly type: 'union'; readonly options: readonly Form[] }
  | { readonly type: 'record'; readonly key: Form; readonly value: Form }
  | { readonly type: 'strict_object'; readonly entries: Entries }
  | { readonly type: 'array'; readonly item: Form }
  | { readonly type: 'strict_tuple'; readonly items: readonly Form[] }
  | { readonly type: 'picklist'; readonly options: readonly string[] }
  | { readonly type: 'literal'; readonly literal: string | number }
  | { readonly type: 'string' | 'number' };

const TELLING_FORMS = TELLING as unknown as readonly (readonly [key: string, form: Form])[];
const HERE = '\u0000';

/**
 * What the train file could go on with at an offset of a text that may be half written, by the
 * definitions and by the names of `known`, the train as far as it is.
 */
export function offersAt(text: string, offset: number, known: Train): Offers | undefined {
  const caret = caretAt(text, offset);
  if (!caret) return undefined;
  const form = formAt(FILE as unknown as Form, caret);
  if (!form) return undefined;
  const offers = caret.at === 'key' ? keys(form, caret, known) : values(form, caret, known);
  return offers.length === 0 ? undefined : { from: caret.from, offers };
}

// The form that a path leads to; of a set or a device the kind that the keys beside tell.
function formAt(root: Form, caret: Caret): Form | undefined {
  let form: Form | undefined = root;
  for (const [i, step] of caret.path.entries()) {
    const deep = i === caret.path.length - 1 && caret.at === 'value';
    form = form && within(told(opened(form), deep ? caret.beside : [step]), step);
  }
  return form && told(opened(form), caret.at === 'key' ? caret.beside : []);
}

function opened(form: Form): Form {
  return form.type === 'exact_optional' || form.type === 'nullish' ? opened(form.wrapped) : form;
}

function told(form: Form, keysBeside: readonly string[]): Form {
  if (form.type !== 'union') return form;
  const key = TELLING_FORMS.find(
    ([telling, its]) => keysBeside.includes(telling) && form.options.includes(its),
  );
  return key?.[1] ?? form;
}

function within(form: Form, step: string): Form | undefined {
  switch (form.type) {
    case 'record':
      return form.value;
    case 'strict_object':
      return Object.hasOwn(form.entries, step) ? form.entries[step] : undefined;
    case 'array':
      return form.item;
    case 'strict_tuple':
      return form.items[Number(step)];
    case 'union':
      return form.options.map((option) => within(option, step)).find((its) => its !== undefined);
    default:
      return undefined;
  }
}

function keys(form: Form, { beside, word, flow, path }: Caret, known: Train): Offer[] {
  // A section of the file has its entries on lines of their own.
  const isSection = (name: string) => {
    const its = path.length === 0 && !flow && form.type === 'strict_object' && form.entries[name];
    return its && opened(its).type === 'record';
  };
  const named = (names: readonly string[], what: Offer['what']) =>
    [...new Set(names)]
      .filter((name) => !beside.includes(name) || name === word)
      .map((name): Offer => {
        const gap = isSection(name) ? '\n  ' : ' ';
        return { label: name, put: `${scalarText(name)}:${gap}${HERE}`, what };
      });
  switch (form.type) {
    case 'strict_object':
      return named(Object.keys(form.entries), 'key');
    case 'union':
      return named(
        TELLING_FORMS.flatMap(([key, its]) => (form.options.includes(its) ? [key] : [])),
        'key',
      );
    case 'record': {
      const role = roleOf(form.key);
      // A thing of its own is given a name that nobody else has.
      const isNew = role === undefined || OWN.has(role);
      return isNew ? [] : named(namesFor(role, known, ''), role);
    }
    default:
      return [];
  }
}

const OWN: ReadonlySet<Role> = new Set([
  'set',
  'gear pair',
  'device',
  'range',
  'gear',
  'wheel',
  'part',
]);

function values(given: Form, caret: Caret, known: Train): Offer[] {
  const form = opened(given);
  const role = roleOf(given) ?? roleOf(form);
  if (role) {
    return namesFor(role, known, caret.path[1] ?? '')
      .filter((name) => !caret.beside.includes(name))
      .map((name) => ({ label: name, put: scalarText(name), what: role }));
  }
  switch (form.type) {
    case 'picklist':
      return form.options.map((word) => ({ label: word, put: word, what: 'word' }));
    case 'literal':
      return [{ label: `${form.literal}`, put: `${form.literal}`, what: 'word' }];
    case 'union':
      return form.options.flatMap((option) => values(option, caret, known));
    case 'strict_object': {
      const must = Object.entries(form.entries).filter(([, its]) => its.type !== 'exact_optional');
      const named = must.length > 0 ? must : Object.entries(form.entries).slice(0, 2);
      const inner = named.map(([key, its]) => `${key}: ${frame(its)}`).join(', ');
      const label = `{ ${inner.replaceAll(HERE, '…')} }`;
      return [{ label, put: `{ ${inner} }`, what: 'form' }];
    }
    case 'array':
    case 'strict_tuple': {
      const put = frame(form);
      return [{ label: put.replaceAll(HERE, '…'), put, what: 'form' }];
    }
    default:
      return [];
  }
}

function frame(given: Form): string {
  const form = opened(given);
  if (form.type === 'strict_tuple') return `[${form.items.map(() => HERE).join(', ')}]`;
  if (form.type === 'array') return `[${HERE}]`;
  return form.type === 'record' || form.type === 'strict_object' ? `{ ${HERE} }` : HERE;
}

function roleOf(form: Form): Role | undefined {
  // A definition that only adds a description to another starts with it.
  const [base] = (form as { readonly pipe?: readonly unknown[] }).pipe ?? [];
  return ROLES.get(form) ?? ROLES.get(base);
}

function namesFor(role: Role, train: Train, within_: string): string[] {
  const { sets, devices, teardown = [] } = train;
  switch (role) {
    case 'member':
      return membersOf(train);
    case 'join':
      return membersOf(train).filter((name) => !name.includes('.'));
    case 'on a part':
      return [...membersOf(train), ...devices.map(({ name }) => name)];
    case 'applied':
      return devices.filter(isApplied).map(({ name }) => name);
    case 'fed':
      return devices.filter(isFriction).map(({ name }) => name);
    case 'sized':
      return devices.map(({ name }) => name);
    case 'packed':
      return devices.filter(({ kind }) => kind === 'clutch' || kind === 'brake').map(nameOf);
    case 'final pair':
      return train.pairs.map(nameOf);
    case 'shared':
      return sets.map(nameOf);
    case 'meshed':
    case 'carried': {
      const set = sets.find(({ name }) => name === within_);
      return set?.kind === 'wheels' ? [...set.wheels.keys()] : [];
    }
    case 'closed':
      return [
        ...[...(train.packs ?? []), ...(train.bands ?? [])].map(({ device }) => device),
        ...(train.endPlays ?? []).map(({ shaft }) => shaft),
      ];
    case 'cover':
      return teardown.map(nameOf);
    default:
      return [];
  }
}

function nameOf({ name }: { readonly name: string }): string {
  return name;
}
