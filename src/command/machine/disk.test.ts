import { execFileSync, spawn } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { DISK, MOST_BYTES } from './disk.ts';

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'holdturn-disk-'));
afterAll(() => fs.rmSync(folder, { recursive: true }));
const at = (name: string) => path.join(folder, name);
const coded = (code: string) => expect.objectContaining({ code });

describe('reading', () => {
  it('a file of 300 MB is refused before a byte of it is read', () => {
    const file = at('huge');
    fs.writeFileSync(file, '');
    fs.truncateSync(file, 300 * 2 ** 20);
    const before = process.memoryUsage().rss;
    expect(() => DISK.read(file)).toThrow(coded('EFBIG'));
    expect(process.memoryUsage().rss - before).toBeLessThan(2 * MOST_BYTES);
  });

  it('a device that never ends is refused', () => {
    expect(() => DISK.read('/dev/zero')).toThrow(coded('EFBIG'));
  });

  it('a pipe that nobody writes into is given up, and one that somebody does is read', () => {
    const pipe = at('pipe');
    execFileSync('sh', ['-c', 'mkfifo "$1"', 'sh', pipe]);
    expect(() => DISK.read(pipe)).toThrow(coded('ETIMEDOUT'));
    const writer = spawn('sh', ['-c', `sleep 0.3; (echo one; sleep 0.3; echo two) > "${pipe}"`]);
    expect(DISK.read(pipe)).toBe('one\ntwo\n');
    writer.kill();
  });

  it('characters of several bytes come back as they were, wherever a block ends', () => {
    const text = 'aé€𝄞'.repeat(30_000);
    fs.writeFileSync(at('long'), text);
    expect(DISK.read(at('long'))).toBe(text);
  });
});

describe('writing', () => {
  it('keeps a link and the mode of what it leads to', () => {
    fs.writeFileSync(at('kept'), 'old', { mode: 0o600 });
    fs.symlinkSync('kept', at('link'));
    DISK.write(at('link'), Buffer.from('new'));
    expect(fs.readFileSync(at('kept'), 'utf8')).toBe('new');
    expect(fs.statSync(at('kept')).mode & 0o777).toBe(0o600);
    expect(fs.lstatSync(at('link')).isSymbolicLink()).toBe(true);
  });

  it('leaves the old where the new cannot be made whole', () => {
    fs.writeFileSync(at('old'), 'old');
    const whole = fs.writeFileSync;
    fs.writeFileSync = () => {
      throw Object.assign(new Error('full'), { code: 'ENOSPC' });
    };
    try {
      expect(() => DISK.write(at('old'), Buffer.from('new'))).toThrow(coded('ENOSPC'));
    } finally {
      fs.writeFileSync = whole;
    }
    expect(fs.readFileSync(at('old'), 'utf8')).toBe('old');
    expect(fs.readdirSync(folder).filter((name) => name.endsWith('.new'))).toEqual([]);
  });

  it('writes to a device', () => {
    DISK.write('/dev/null', Buffer.from('new'));
    expect(fs.statSync('/dev/null').isCharacterDevice()).toBe(true);
  });
});
