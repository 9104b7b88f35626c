import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { LEDGER } from './ledger.ts';

let folder: string;
let file: string;
beforeEach(() => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'holdturn-ledger-'));
  file = path.join(folder, 'a.job.yaml');
});
afterEach(() => {
  vi.restoreAllMocks();
  fs.rmSync(folder, { recursive: true });
});

const failing = (code: string) => () => {
  throw Object.assign(new Error(code), { code });
};

// What happens to the disk, in its order: "sync a.job.yaml.1.new", "rename … a.job.yaml".
function events(): string[] {
  const seen: string[] = [];
  const names = new Map<number, string>();
  const { openSync, fsyncSync, renameSync } = fs;
  vi.spyOn(fs, 'openSync').mockImplementation((place, ...rest) => {
    const handle = openSync(place, ...rest);
    names.set(handle, path.basename(String(place)));
    return handle;
  });
  vi.spyOn(fs, 'fsyncSync').mockImplementation((handle) => {
    seen.push(`sync ${names.get(handle)}`);
    fsyncSync(handle);
  });
  vi.spyOn(fs, 'renameSync').mockImplementation((from, to) => {
    seen.push(`rename ${path.basename(String(to))}`);
    renameSync(from, to);
  });
  return seen;
}

describe.each(['EPERM', 'ENOTSUP', 'EMLINK', 'ENOSYS'])(
  'a new job on a disk whose hard links fail with %s',
  (code) => {
    beforeEach(() => {
      vi.spyOn(fs, 'linkSync').mockImplementation(failing(code));
    });

    it('is whole on the disk before it has its name', () => {
      const seen = events();
      LEDGER.create(file, 'whole\n');
      expect(fs.readFileSync(file, 'utf8')).toBe('whole\n');
      const draft = `${path.basename(file)}.${process.pid}.new`;
      expect(seen).toEqual([
        `sync ${draft}`,
        `rename ${path.basename(file)}`,
        `sync ${path.basename(folder)}`,
      ]);
      expect(fs.readdirSync(folder)).toEqual([path.basename(file)]);
    });

    it('never takes the place of one that is there', () => {
      fs.writeFileSync(file, 'theirs\n');
      expect(() => LEDGER.create(file, 'ours\n')).toThrow(
        expect.objectContaining({ code: 'EEXIST' }),
      );
      expect(fs.readFileSync(file, 'utf8')).toBe('theirs\n');
      expect(fs.readdirSync(folder)).toEqual([path.basename(file)]);
    });

    it('leaves nothing behind where it cannot be written', () => {
      vi.spyOn(fs, 'renameSync').mockImplementation(failing('ENOSPC'));
      expect(() => LEDGER.create(file, 'ours\n')).toThrow(
        expect.objectContaining({ code: 'ENOSPC' }),
      );
      expect(fs.readdirSync(folder)).toEqual([]);
    });
  },
);

it('a disk that will not sync a folder still keeps a job', () => {
  const { fsyncSync } = fs;
  vi.spyOn(fs, 'fsyncSync').mockImplementation((handle) => {
    if (fs.fstatSync(handle).isDirectory()) failing('EINVAL')();
    fsyncSync(handle);
  });
  LEDGER.create(file, 'whole\n');
  expect(fs.readFileSync(file, 'utf8')).toBe('whole\n');
});
