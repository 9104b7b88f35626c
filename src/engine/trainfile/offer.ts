import { type Form, opened, type Role, within } from '../form/index.ts';
import { FILE } from '../sections/index.ts';
import { membersOf, namesOf, type Train } from '../train/index.ts';
import { type Caret, caretAt, scalarText } from '../yaml/index.ts';

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
  /** `key`, `word` or `form`; of a name, what it is where it would stand. */
  readonly what: string;
}

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

function told(form: Form, keysBeside: readonly string[]): Form {
  if (form.type !== 'union') return form;
  return form.telling?.find(([key]) => keysBeside.includes(key))?.[1] ?? form;
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
        (form.telling ?? []).map(([key]) => key),
        'key',
      );
    case 'record': {
      const { role } = form.key;
      // A thing of its own is given a name that nobody else has.
      const isNew = role === undefined || (role.own && role.names !== 'member');
      return isNew ? [] : named(namesFor(role, known, ''), role.as);
    }
    default:
      return [];
  }
}

function values(given: Form, caret: Caret, known: Train): Offer[] {
  const form = opened(given);
  const { role } = form;
  if (role) {
    return namesFor(role, known, caret.path[1] ?? '')
      .filter((name) => !caret.beside.includes(name))
      .map((name) => ({ label: name, put: scalarText(name), what: role.as }));
  }
  switch (form.type) {
    case 'picklist':
      return (form.options ?? []).map((word) => ({ label: word, put: word, what: 'word' }));
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

/**
 * The names that may stand for a role; of a member that a join makes, those without a dot. `within_`:
 * of a wheel, its set.
 */
export function namesFor(role: Role, train: Train, within_: string): string[] {
  const { sets, devices, teardown = [] } = train;
  const { names, own, only, offered = only ?? isAny } = role;
  switch (names) {
    case 'member':
      return membersOf(train).filter((name) => !own || !name.includes('.'));
    case 'carried':
      return [...membersOf(train), ...devices.map(nameOf)];
    case 'device':
      return devices.filter(offered).map(nameOf);
    case 'gear pair':
      return train.pairs.map(nameOf);
    case 'set':
      return sets.map(nameOf);
    case 'wheel': {
      const set = sets.find(({ name }) => name === within_);
      return set?.kind === 'wheels' ? [...set.wheels.keys()] : [];
    }
    case 'gap':
      return [
        ...[...(train.packs ?? []), ...(train.bands ?? [])].map(({ device }) => device),
        ...(train.endPlays ?? []).map(({ shaft }) => shaft),
        ...(train.preloads ?? []).map(({ bearings }) => bearings),
      ];
    case 'part':
      return teardown.map(nameOf);
    case 'anything':
      return namesOf(train);
    case 'range':
    case 'gear':
      return [];
  }
}

function isAny(): boolean {
  return true;
}

function nameOf({ name }: { readonly name: string }): string {
  return name;
}
