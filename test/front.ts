import { readFileSync } from 'node:fs';
import path from 'node:path';
import { parseSync } from 'vite';

/** Something that the package exports, where it is defined. */
export interface Exported {
  /** As the package calls it. */
  readonly name: string;
  /** `file:name` of its definition. */
  readonly home: string;
  readonly hasDocstring: boolean;
  /** The homes of the types that its definition mentions, but for bodies. */
  readonly mentions: readonly string[];
}

/** Reads the names that a file exports, each followed to the definition that it comes from. */
export function exportedBy(entry: string): Exported[] {
  const files = new Map<string, Source>();
  const read = (file: string): Source => {
    let its = files.get(file);
    if (!its) files.set(file, (its = new Source(file)));
    return its;
  };
  const homeOf = (file: string, name: string): string | undefined => {
    const its = read(file);
    if (its.definitions.has(name)) return `${file}:${name}`;
    const from = its.names.get(name);
    if (from) return homeOf(from.file, from.name);
    for (const star of its.stars) {
      const home = homeOf(star, name);
      if (home) return home;
    }
    return undefined;
  };
  return read(entry)
    .exported(read)
    .map((name): Exported => {
      const home = homeOf(entry, name);
      if (!home) throw new Error(`${name} is defined nowhere`);
      const [file = '', own = ''] = home.split(':');
      const definition = read(file).definitions.get(own) as Definition;
      const mentions = definition.mentions.flatMap((type) => homeOf(file, type) ?? []);
      return { name, home, hasDocstring: definition.hasDocstring, mentions };
    });
}

interface Definition {
  readonly hasDocstring: boolean;
  readonly mentions: readonly string[];
}

type Node = Readonly<Record<string, unknown>> & { readonly type: string; readonly start: number };

class Source {
  readonly definitions = new Map<string, Definition>();
  /** Names that come from another file, imported or passed on. */
  readonly names = new Map<string, { readonly file: string; readonly name: string }>();
  readonly stars: string[] = [];
  private readonly passedOn: string[] = [];

  constructor(file: string) {
    const text = readFileSync(file, 'utf8');
    const { program, comments } = parseSync(file, text);
    const docstrings = comments.filter(
      ({ type, value }) => type === 'Block' && value.startsWith('*'),
    );
    for (const node of program.body as unknown as Node[]) {
      const from = node['source'] as { readonly value: string } | null | undefined;
      const at = from?.value.startsWith('.')
        ? path.resolve(path.dirname(file), from.value)
        : undefined;
      if (node.type === 'ExportAllDeclaration' && at) this.stars.push(at);
      for (const one of (node['specifiers'] ?? []) as Node[]) {
        const [own, other] = [one['local'], one['exported'] ?? one['imported']].map(nameOf);
        const exported = node.type === 'ExportNamedDeclaration';
        if (exported) this.passedOn.push(other ?? '');
        if (at)
          this.names.set((exported ? other : own) ?? '', {
            file: at,
            name: (exported ? own : other) ?? '',
          });
      }
      const declaration = (node['declaration'] ?? node) as Node;
      const hasDocstring = docstrings.some(({ end }) => text.slice(end, node.start).trim() === '');
      for (const one of (declaration['declarations'] as Node[] | undefined) ?? [declaration]) {
        const name = nameOf(one['id']);
        if (!name) continue;
        this.definitions.set(name, { hasDocstring, mentions: [...new Set(typesIn(one))] });
      }
    }
  }

  exported(read: (file: string) => Source): string[] {
    const all = this.stars.flatMap((file) => read(file).exported(read));
    return [...new Set([...this.passedOn, ...all])];
  }
}

function nameOf(node: unknown): string {
  return `${(node as Node | undefined)?.['name'] ?? ''}`;
}

// The names of types that stand in a definition; of a class without what is private.
function typesIn(node: unknown): string[] {
  if (Array.isArray(node)) return node.flatMap(typesIn);
  if (typeof node !== 'object' || node === null || !('type' in node)) return [];
  const its = node as Node;
  if (its['accessibility'] === 'private') return [];
  if (
    its.type === 'TSTypeReference' ||
    its.type === 'TSInterfaceHeritage' ||
    its.type === 'TSClassImplements'
  ) {
    const name = nameOf(its['typeName'] ?? its['expression']);
    return [name, ...typesIn(its['typeArguments'])];
  }
  if (its.type === 'BlockStatement') return [];
  // What a constant is, its annotation says.
  const parts = Object.entries(its).filter(
    ([key]) => !['init', 'value', 'decorators'].includes(key) || its.type === 'MethodDefinition',
  );
  return parts.flatMap(([, part]) => typesIn(part));
}
