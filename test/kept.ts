import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect } from 'vitest';

/** A kept picture; the style sheet is shared, and changes with other pictures. */
export function expectPicture(file: string, svg: string): void {
  expectKept(file, svg, (text) => text.replace(/<style>.*<\/style>/su, ''));
}

/**
 * What was made must be what is kept in a file. UPDATE=1 keeps what is made now where it differs as
 * compared, and then somebody looks at the difference. Where it differs the new one is left beside the
 * kept one, `a.svg` as `a.changed.svg`, which git does not see, and the failure says where; it goes
 * once they agree again. `compared` takes away what may differ.
 */
export function expectKept(
  file: string,
  made: string,
  compared: (text: string) => string = (text) => text,
): void {
  const { dir, name, ext } = path.parse(file);
  const changed = path.join(dir, `${name}.changed${ext}`);
  const kept = existsSync(file) ? readFileSync(file, 'utf8') : undefined;
  const agrees = kept !== undefined && compared(kept) === compared(made);
  const updates = process.env['UPDATE'] === '1';
  if (updates && !agrees) writeFileSync(file, made);
  if (updates || agrees) {
    rmSync(changed, { force: true });
    return;
  }
  writeFileSync(changed, made);
  const where = `${path.relative('', file)} is not as it was kept: beside it ${path.basename(changed)}`;
  expect(compared(made), `${where} is what is made now; UPDATE=1 keeps it`).toBe(
    compared(kept ?? ''),
  );
}
