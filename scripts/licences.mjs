import fs from 'node:fs';
import path from 'node:path';

/** The licences of packages (their folders) whose code is handed on, in full, as they ask. */
export function licences(folders) {
  return [...new Set(folders)].toSorted().map(licence);
}

/** A name, a version, which licence it is, and its text; throws where nobody can tell the text. */
function licence(folder) {
  const { name, version, license, author } = JSON.parse(
    fs.readFileSync(path.join(folder, 'package.json'), 'utf8'),
  );
  const file = fs.readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  if (file !== undefined) {
    return { name, version, license, text: fs.readFileSync(path.join(folder, file), 'utf8') };
  }
  // Some packages name the licence and its holder, and leave the text to whoever hands them on.
  const holder = typeof author === 'string' ? author : author?.name;
  if (license !== 'MIT' || !holder) throw new Error(`${name} has no licence that could be told`);
  return { name, version, license, text: MIT.replace('HOLDER', holder) };
}

// As the Open Source Initiative has it.
const MIT = `MIT License

Copyright (c) HOLDER

Permission is hereby granted, free of charge, to any person obtaining a copy
of this software and associated documentation files (the "Software"), to deal
in the Software without restriction, including without limitation the rights
to use, copy, modify, merge, publish, distribute, sublicense, and/or sell
copies of the Software, and to permit persons to whom the Software is
furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all
copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR
IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY,
FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE
AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER
LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM,
OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE
SOFTWARE.
`;
