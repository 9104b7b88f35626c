import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { ask } from './asked.ts';

const NAME = 'trains/kestrel-three-speed';
const KESTREL = `${NAME}.train.yaml`;

describe('holdturn draw', () => {
  it('prints the picture that stands beside the train', async () => {
    const { out, exit } = await ask(`draw ${KESTREL}`);
    expect(exit).toBe(0);
    expect(bare(out)).toBe(bare(fs.readFileSync(`${NAME}.svg`, 'utf8')));
  });

  it('writes a file, and says so', async () => {
    const file = path.join(fs.mkdtempSync(path.join(os.tmpdir(), 'drawn-')), 'kestrel.svg');
    const { out, exit } = await ask(`draw ${KESTREL} -o ${file} --lang es`);
    expect([out, exit]).toEqual([`${file}: esquema cinemático de Kestrel de tres marchas\n`, 0]);
    const { out: told } = await ask(`draw ${KESTREL} --lang es`);
    expect(bare(fs.readFileSync(file, 'utf8'))).toBe(bare(told));
  });

  // Second is held by a brake through a roller; with a hundred in, the carrier takes 1 + 36/84.
  it('shows a gear: torques, marks, which it is', async () => {
    const { out } = await ask(`draw ${KESTREL} --range D --gear 2`);
    const words = [...out.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text);
    expect(words).toEqual(expect.arrayContaining(['D 2, under power', '143 N·m', '■ 43 N·m']));
    expect(words.filter((text) => text === '●')).toHaveLength(2);
    expect(words.filter((text) => text === '»')).toHaveLength(1);
  });

  it('shows coasting, and what a fault does to it', async () => {
    const coast = 'draw trains/kestrel-three-speed.train.yaml --range D --gear 1 --side coast';
    expect((await ask(coast)).out).toContain('D 1, on coast: neutral');
    const { out } = await ask(`${coast} --fault "low sprag: seized"`);
    expect(out).toContain('>D 1, on coast<');
  });

  it('shows a set from its end, in a gear too, with its teeth and who carries', async () => {
    const { out, exit } = await ask(`draw ${KESTREL} --end rear --range D --gear 1`);
    expect(exit).toBe(0);
    expect(out).toContain('<title>rear, seen from the input end</title>');
    expect(out.match(/class="end-wheel end-planet/g)).toHaveLength(3);
    expect(out).toContain('>rear sun 36 (sun shell) · 43 N·m<');
    expect(out).toContain('>rear carrier · ■ 143 N·m<');
    const there = await ask(`draw ${KESTREL} --end rear --seen-from output --lang es`);
    expect(there.out).toContain('<title>trasero, visto desde el lado de salida</title>');
  });

  it('says what of a set is not drawn as counted', async () => {
    const { out } = await ask('draw trains/dunlin-final-drive.train.yaml --end differential');
    expect(out).toContain('>A scheme: the further side gear is drawn larger');
  });

  // With the shell held, the rear carrier and the shaft stand as 30 + 66 says.
  it('shows the lever diagram, in a gear', async () => {
    const { out, exit } = await ask(`draw ${KESTREL} --lever --range D --gear 2`);
    expect(exit).toBe(0);
    expect(out).toContain('<title>Lever diagram of Kestrel three-speed</title>');
    const nodes = out.match(/class="lever-node"[^>]*data-name="[^"]*"/g);
    expect(nodes).toHaveLength(6);
    expect(out).toContain('>0.70<');
    const spanish = await ask(`draw ${KESTREL} --lever --range D --gear 2 --lang es`);
    expect(spanish.out).toContain('>0,70<');
  });

  it('shows the parts in a row, as a file says them', async () => {
    const { out, exit } = await ask(`draw ${KESTREL} --exploded --lang es`);
    expect(exit).toBe(0);
    expect(out).toContain('<title>Despiece de Kestrel de tres marchas</title>');
    expect(out.match(/data-kind="part"/g)).toHaveLength(24);
    expect(out).toContain('>Lado de salida arriba<');
    const none = await ask('draw trains/wren-plain-set.train.yaml --exploded');
    expect([none.out, none.exit]).toEqual(['', 2]);
    expect(none.err).toContain('teardown');
  });

  it.each([
    ['--end rear --lever', 'too much: give one of --end, --lever and --exploded'],
    ['--lever --exploded', 'too much: give one of --end, --lever and --exploded'],
    [
      '--exploded --range D --gear 2',
      'an exploded row shows no gear: leave out --range, --gear, --on and --side',
    ],
    ['--end raer', 'unknown set: raer; did you mean rear?'],
    ['--side coast', 'which gear? add --range and --gear, or --on'],
    ['--gear 1 --range D --side coat', 'unknown side: coat; type --side drive or --side coast'],
  ])('refuses %s', async (options, says) => {
    const { out, err, exit } = await ask(`draw ${KESTREL} ${options}`);
    expect([out, err, exit]).toEqual(['', `holdturn: ${says}\n`, 2]);
  });
});

function bare(svg: string): string {
  return svg.replace(/<style>.*<\/style>/su, '').trim();
}
