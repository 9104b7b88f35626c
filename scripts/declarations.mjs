import fs from 'node:fs';
import path from 'node:path';

/**
 * Keeps of a folder of declarations what the public names lead to, and takes the rest out: a room
 * re-exports more than the library, and what it needs for itself would bring in the types of
 * packages, and with them the DOM's.
 */
export function pruneTypes(folder) {
  const reach = new Reach();
  reach.all(path.resolve(folder, 'index.d.ts'));
  for (const name of fs.readdirSync(folder, { recursive: true })) {
    const file = path.resolve(folder, name);
    if (!name.endsWith('.d.ts')) continue;
    const kept = reach.files.get(file);
    if (kept) fs.writeFileSync(file, kept.pruned());
    else fs.rmSync(file);
  }
}

const FROM = /^(import|export) (type )?(\{[^}]*\}|\* as \w+|\*) from '([^']+)';\n/gm;
const INLINE = /import\("([^"]+)"\)\.(\w+)/g;
const DECLARED =
  /^export (?:declare )?(?:abstract )?(?:const|function|class|interface|type|enum) (\w+)/gm;

class Declarations {
  constructor(file) {
    this.text = fs.readFileSync(file, 'utf8');
    this.declared = new Set([...this.text.matchAll(DECLARED)].map(([, name]) => name));
    this.links = [...this.text.matchAll(FROM)].map(([line, verb, type = '', what, from]) => ({
      line,
      verb,
      type,
      file: path.resolve(path.dirname(file), from.replace(/\.ts$/, '.d.ts')),
      from,
      what,
      names: what.startsWith('{') ? namesIn(what) : [],
    }));
    this.inline = [...this.text.matchAll(INLINE)].map(([, from, name]) => ({
      file: path.resolve(path.dirname(file), from.replace(/\.ts$/, '.d.ts')),
      name,
    }));
    this.used = new Set();
  }

  // A re-export keeps the names that somebody asked for, and goes where nobody did.
  pruned() {
    let { text } = this;
    for (const { line, verb, type, what, names, from } of this.links) {
      if (verb === 'import') continue;
      const kept = names.filter(({ as }) => this.used.has(as));
      if (what.startsWith('{') && kept.length > 0) {
        const list = kept.map(({ told }) => told).join(', ');
        text = text.replace(line, () => `export ${type}{ ${list} } from '${from}';\n`);
      } else if (what.startsWith('{') || !this.used.has(line)) text = text.replace(line, '');
    }
    return text;
  }
}

function namesIn(list) {
  const parts = list.slice(1, -1).split(',');
  return parts.flatMap((part) => {
    const told = part.trim();
    if (told === '') return [];
    const [name, as = name] = told.replace(/^type /, '').split(' as ');
    return [{ told, name, as }];
  });
}

class Reach {
  files = new Map();
  seen = new Set();

  // Every name of a file.
  all(file) {
    const its = this.read(file);
    if (!its) return;
    for (const name of its.declared) this.name(file, name);
    for (const link of its.links) {
      if (link.verb === 'import') continue;
      for (const { as } of link.names) this.name(file, as);
      if (link.names.length === 0) {
        its.used.add(link.line);
        this.all(link.file);
      }
    }
  }

  // One name; whether the file has it.
  name(file, name) {
    const its = this.read(file);
    if (!its) return false;
    const key = `${file} ${name}`;
    if (this.seen.has(key)) return true;
    if (its.declared.has(name)) {
      this.seen.add(key);
      for (const link of its.links) {
        if (link.verb !== 'import') continue;
        for (const one of link.names) this.name(link.file, one.name);
        if (link.names.length === 0) this.all(link.file);
      }
      for (const one of its.inline) this.name(one.file, one.name);
      return true;
    }
    for (const link of its.links) {
      if (link.verb === 'import') continue;
      const named = link.names.find(({ as }) => as === name);
      const spread = link.what === `* as ${name}`;
      if (!named && !spread && link.what !== '*') continue;
      if (spread) this.all(link.file);
      else if (!this.name(link.file, named?.name ?? name)) continue;
      its.used.add(named ? name : link.line);
      this.seen.add(key);
      return true;
    }
    return false;
  }

  // Undefined for a package.
  read(file) {
    let its = this.files.get(file);
    if (!its && fs.existsSync(file)) this.files.set(file, (its = new Declarations(file)));
    return its;
  }
}
