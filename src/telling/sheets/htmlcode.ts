/** Markup that was made by `element` or `words`: a text of a file is never one by itself. */
export type Markup = string & { readonly markup: unique symbol };

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** A text as HTML: nothing in it is read as markup. */
export function words(text: string): Markup {
  const plain = text.replaceAll(CONTROL, (its) => (its === '\n' ? its : '\uFFFD'));
  return plain
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;') as Markup;
}

/** An element: `element('p', { class: 'quiet' }, words(text))`; what is undefined is left out. */
export function element(name: string, given: Attributes, ...inside: readonly Markup[]): Markup {
  const attributes = Object.entries(given).map(([key, value]) => {
    return value === undefined ? '' : ` ${key}="${words(`${value}`)}"`;
  });
  const end = name === 'col' ? '' : `</${name}>`;
  return `<${name}${attributes.join('')}>${inside.join('')}${end}` as Markup;
}

/** A drawing of ours, as `toSvg` makes it: its names are text already. */
export function drawn(svg: string): Markup {
  return svg as Markup;
}

// Without the joined halves that a lone one is none of.
const CONTROL = /[\p{Cc}\p{Cs}\u2028\u2029]/gu;
