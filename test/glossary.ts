import { type MessageFormatElement, parse, TYPE } from '@formatjs/icu-messageformat-parser';
import { parseSync } from 'vite';
import type { Concept } from '../src/engine/words/index.ts';
import type { Source } from './sources.ts';

/** Something that a person reads, in the languages in which it is there. */
export interface Said {
  /** Where it stands: `en.ts fact.turned`, `src/page/diagram/words.ts key`. */
  readonly where: string;
  readonly en?: string;
  readonly es?: string;
}

/** What a glossary has against something that is said, a sentence each. */
export function against(glossary: Readonly<Record<string, Concept>>, said: Said): string[] {
  return Object.entries(glossary).flatMap(([name, concept]) => {
    const banned = (['en', 'es'] as const).flatMap((language) => {
      const text = said[language];
      if (text === undefined) return [];
      return foundIn(text, bansOf(concept, language)).map(
        (word) => `${said.where}: "${word}": say ${concept[language]}`,
      );
    });
    return [...banned, ...onlyOne(name, concept, said)];
  });
}

/** The texts of an ICU message, with what it fills in left out. */
export function plainText(message: string): string {
  const texts = (elements: readonly MessageFormatElement[]): string[] =>
    elements.flatMap((element) => {
      if (element.type === TYPE.literal) return [element.value];
      if (element.type !== TYPE.plural && element.type !== TYPE.select) return [' … '];
      return Object.values(element.options).flatMap((option) => [...texts(option.value), ' | ']);
    });
  return texts(parse(message, { ignoreTag: true })).join('');
}

/** The words of a view: what stands in the tables of `spoken`, language by language. */
export function spokenIn({ path, text }: Source): Said[] {
  const found = new Map<string, { en?: string; es?: string }>();
  const walk = (node: Node): void => {
    if (node.type === 'CallExpression' && nameOf(node['callee']) === 'spoken') {
      for (const property of partsOf((node['arguments'] as Node[])[0])) {
        const language = nameOf(property['key']);
        if (language !== 'en' && language !== 'es') continue;
        for (const [where, its] of textsOf(property['value'], [])) {
          const before = found.get(where) ?? {};
          found.set(where, { ...before, [language]: `${before[language] ?? ''} | ${its}` });
        }
      }
    }
    for (const part of partsOf(node)) walk(part);
  };
  walk(parseSync(path, text, { lang: 'tsx' }).program as unknown as Node);
  return [...found].map(([where, its]) => ({ where: `${path} ${where}`, ...its }));
}

// A node of the parser's tree, as far as it is looked at.
type Node = Readonly<Record<string, unknown>> & { readonly type: string };

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'type' in value;
}

function partsOf(node: Node | undefined): Node[] {
  return Object.values(node ?? {})
    .flatMap((its) => (Array.isArray(its) ? its : [its]))
    .filter(isNode);
}

function nameOf(node: unknown): string {
  if (!isNode(node)) return '';
  return `${node['name'] ?? node['value']}`;
}

// Each text under a node, with the keys that lead to it.
function textsOf(node: unknown, path: readonly string[]): [where: string, text: string][] {
  if (!isNode(node)) return [];
  if (node.type === 'Property') return textsOf(node['value'], [...path, nameOf(node['key'])]);
  const { value } = node;
  if (node.type === 'Literal' && typeof value === 'string') return [[path.join('.'), value]];
  if (node.type === 'TemplateElement') {
    return [[path.join('.'), (value as { readonly cooked: string }).cooked]];
  }
  return partsOf(node).flatMap((part) => textsOf(part, path));
}

function bansOf({ read = [], once = [], stands = [], not }: Concept, language: 'en' | 'es') {
  const words = [...read, ...once].filter((word) => !stands.includes(word));
  const pattern = not?.[language];
  return [
    ...words.map((word) => new RegExp(`(?<![\\p{L}-])${word}(?![\\p{L}-])`, 'iu')),
    ...(pattern ? [pattern] : []),
  ];
}

function foundIn(text: string, patterns: readonly RegExp[]): string[] {
  return patterns.flatMap((pattern) => pattern.exec(text)?.slice(0, 1) ?? []);
}

// A concept that one language says and the other does not.
function onlyOne(name: string, { both }: Concept, { where, en, es }: Said): string[] {
  if (!both || en === undefined || es === undefined) return [];
  const [english, spanish] = [both.en.test(bare(en)), both.es.test(bare(es))];
  return english && !spanish ? [`${where}: "${name}" is said in English only`] : [];
}

// A text without its examples: what would stand in a file, or be typed.
function bare(text: string): string {
  return text.replaceAll(/\{[^}]*\}|\[[^\]]*\]|"[^"]*"|\S*\.\w+/g, ' ');
}
