import fs from 'node:fs';
import { request } from 'node:http';
import type { AddressInfo } from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { DISK } from '../../command/machine/disk.ts';
import { run } from './run.ts';
import { serverOf } from './serve.ts';
import type { Handed } from '../../command/machine/world.ts';

const KESTREL = 'trains/kestrel-three-speed.train.yaml';

describe('holdturn screen FILE', () => {
  it('opens a short address, however long the file is, and nothing of the file is in it', async () => {
    const text = `${fs.readFileSync(KESTREL, 'utf8')}# ${'long '.repeat(100_000)}\n`;
    let [opened, out] = ['', ''];
    let given: Handed | undefined;
    const exit = await run({
      args: ['screen', 'a unit/é.train.yaml'],
      env: {},
      terminal: false,
      ...DISK,
      read: () => text,
      serve: async (_folder, port, say, its) => {
        opened = say(`http://127.0.0.1:${port}/`);
        given = its;
      },
      out: (more) => (out += more),
      err: () => {},
    });
    expect(exit).toBe(0);
    expect(opened).toMatch(/^http:\/\/127\.0\.0\.1:8477\/#given\/[\w-]{22}\/%C3%A9\.train\.yaml$/u);
    expect(out).toContain(opened);
    expect(given?.text).toBe(text);
    expect(opened.endsWith(`#${given?.path}`)).toBe(true);
  });
});

describe('the server', () => {
  it('hands the file to whoever has its path and names this machine, and to nobody else', async () => {
    const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'holdturn-served-'));
    fs.writeFileSync(path.join(folder, 'index.html'), 'the page');
    const server = serverOf(folder, { path: 'given/secret/t.yaml', text: 'name: é' });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const { port } = server.address() as AddressInfo;
    const get = (url: string, host = `127.0.0.1:${port}`) =>
      new Promise<[number | undefined, string]>((resolve, reject) => {
        request({ port, path: url, headers: { host } }, (answer) => {
          let body = '';
          answer.setEncoding('utf8').on('data', (more: string) => (body += more));
          answer.on('end', () => resolve([answer.statusCode, body]));
        })
          .on('error', reject)
          .end();
      });
    expect(await get('/')).toEqual([200, 'the page']);
    expect(await get('/given/secret/t.yaml')).toEqual([200, 'name: é']);
    expect(await get('/given/secret/t.yaml', `localhost:${port}`)).toEqual([200, 'name: é']);
    expect(await get('/given/secret/t.yaml', `elsewhere.example:${port}`)).toEqual([404, '']);
    expect(await get('/given/secreu/t.yaml')).toEqual([404, '']);
    server.close();
  });
});
