import { signal } from '@preact/signals';
import { describe, expect, it, vi } from 'vitest';
import { Guide } from './guide.ts';
import { keepHalfway } from './halfway.ts';

function begin(text = '') {
  const file = { text: signal(text), written: 0, write };
  function write(next: string) {
    file.text.value = next;
    file.written += 1;
  }
  const guide = new Guide(file);
  guide.arrive();
  return { file, guide };
}

const BEGUN = `holdturn: 1
name: Wren
input: shaft
output: drum
sets:
  main: { sun: 30, ring: 66 }
devices:
  low: { brake: main.ring }   # four plates
`;

describe('the guide', () => {
  it('writes a round once, when its last question is answered', () => {
    const { file, guide } = begin(BEGUN);
    guide.add('set');
    for (const said of ['rear', 'plain', 30, 66, null]) guide.answer(said);
    expect(file.written).toBe(0);
    guide.answer(null);
    expect(file.written).toBe(1);
    expect(file.text.value).toContain('  rear: { sun: 30, ring: 66 }\n');
    expect(guide.begun.value).toBeUndefined();
  });

  it('goes back a question, and out of a round, with nothing written', () => {
    const { file, guide } = begin(BEGUN);
    guide.add('set');
    guide.answer('rear');
    expect(guide.prompt.value?.key).toBe('planets are');
    guide.back();
    expect(guide.prompt.value?.key).toBe('name');
    guide.back();
    expect(guide.begun.value).toBeUndefined();
    expect(file.text.value).toBe(BEGUN);
  });

  it.each([
    ['low', 'name taken'],
    ['shaft', 'name taken'],
    ['a.b', 'not a name'],
    ['', 'not a name'],
  ])('takes no %j for a name', (name, refused) => {
    const { guide } = begin(BEGUN);
    guide.add('set');
    guide.answer(name);
    expect(guide.wrong.value?.wrong).toBe(refused);
    expect(guide.prompt.value?.key).toBe('name');
  });

  it('renames a thing wherever it stands, or says why not', () => {
    const { file, guide } = begin(BEGUN);
    expect(guide.rename({ thing: 'set', name: 'main' }, 'low')).toBe(false);
    expect(guide.wrong.value?.wrong).toBe('name taken');
    expect(guide.rename({ thing: 'set', name: 'main' }, 'front')).toBe(true);
    expect(file.text.value).toBe(BEGUN.replaceAll('main', 'front'));
  });

  it('takes a set away with what acts on it alone', () => {
    const { file, guide } = begin(BEGUN);
    guide.discard({ thing: 'set', name: 'main' });
    expect(file.text.value).toBe(
      'holdturn: 1\nname: Wren\ninput: shaft\noutput: drum\nsets:\ndevices:\n',
    );
  });

  it('asks nothing of a broken text, and tells where it is broken', () => {
    const { guide } = begin(`${BEGUN}joined: [`);
    expect(guide.train.value).toBeUndefined();
    expect(guide.asked.value.ask).toBe('nothing');
    expect(guide.mistakes.value[0]?.place.line).toBe(9);
    expect(begin('holdturn: 1\n').guide.mistakes.value).toEqual([]);
  });

  it('asks nothing of a file that lacks nothing', () => {
    const whole = BEGUN.replace(
      'devices:',
      'joined:\n  shaft: [main.sun]\n  drum: [main.carrier]\ndevices:',
    );
    const { guide } = begin(`${whole}ranges:\n  D: { "1": [low] }\n`);
    expect(guide.asked.value.ask).toBe('nothing');
    guide.discard({ thing: 'gear', within: 'D', name: '1' });
    expect(guide.asked.value).toEqual({ ask: 'nothing' });
  });
});

describe('a round that is half answered', () => {
  it('goes on in a new page with the same text, and with no other', () => {
    const shelf = new Map<string, string>();
    vi.stubGlobal('sessionStorage', {
      getItem: (key: string) => shelf.get(key) ?? null,
      setItem: (key: string, word: string) => shelf.set(key, word),
    });
    const { guide } = begin(BEGUN);
    guide.settle('device');
    guide.add('set');
    for (const said of ['rear', 'plain', 30]) guide.answer(said);
    keepHalfway(BEGUN, { begun: guide.begun.value, settled: guide.settled.value });

    const again = begin(BEGUN);
    expect(again.guide.settled.value).toContain('device');
    expect(again.guide.prompt.value?.key).toBe(guide.prompt.value?.key);
    for (const said of [66, null, null]) again.guide.answer(said);
    expect(again.file.text.value).toContain('  rear: { sun: 30, ring: 66 }\n');

    expect(begin(BEGUN.replace('Wren', 'Linnet')).guide.begun.value).toBeUndefined();
    const { guide: elsewhere } = begin(BEGUN);
    elsewhere.arrive();
    expect(elsewhere.begun.value).toBeUndefined();
    vi.unstubAllGlobals();
  });
});
