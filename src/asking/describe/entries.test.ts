import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { LANGUAGES } from '../../telling/narrative/index.ts';
import { isWorded } from '../../telling/questions/index.ts';
import {
  answer,
  changeOf,
  entriesOf,
  FORM_SECTIONS,
  inquire,
  type Inquiry,
  nextPrompt,
  type Prompt,
  type Reply,
  sectionsToTell,
} from './index.ts';

const BEGUN = `holdturn: 1
name: Wren
input: shaft
output: drum
sets:
  main: { sun: 30, ring: 66, planets: 3 }
gear pairs:
  drop: { driver: [drum, 30], driven: [wheel, 60] }
joined:
  shaft: [main.sun]
  drum: [main.carrier]
devices:
  low: { brake: main.ring }
  strap: { band: main.ring }
  lock: { clutch: [shaft, drum] }
ranges:
  D: { "1": [low], "2": [lock], "3": [strap, lock] }
`;

const trainIn = (text: string) => readTrain(text).train as Train;

/** Answers a round as `reply` does, which is told what is asked; the text that it makes. */
function tell(
  text: string,
  begun: Inquiry,
  reply: (prompt: Prompt) => Reply,
  asked: Prompt[] = [],
): string {
  let inquiry = begun;
  for (;;) {
    const prompt = nextPrompt(inquiry, trainIn(text));
    if (!prompt) throw new Error('all is asked, and nothing was written');
    asked.push(prompt);
    const answered = answer(text, trainIn(text), inquiry, reply(prompt), true);
    // Anything that is said of controls makes no sense, and is refused when all of it was asked.
    const isSenseless = begun.section === 'controls' && !nextAfter(inquiry, prompt, reply, text);
    if ('wrong' in answered && isSenseless) return text;
    if ('wrong' in answered) throw new Error(`${prompt.key}: ${JSON.stringify(answered.wrong)}`);
    if ('text' in answered) return answered.text;
    inquiry = answered.further;
  }
}

function nextAfter(inquiry: Inquiry, { key }: Prompt, reply: (its: Prompt) => Reply, text: string) {
  const prompt = nextPrompt(inquiry, trainIn(text)) as Prompt;
  const answers = new Map(inquiry.answers).set(key, reply(prompt));
  return nextPrompt({ ...inquiry, answers }, trainIn(text));
}

const entry = (section: string) => inquire('entry', { section });

// Says something to whatever is asked; of kinds the one in turn.
function anything(turn: number) {
  return (prompt: Prompt): Reply => {
    const { kind, options, key } = prompt;
    switch (kind) {
      case 'several':
        return options;
      case 'pick':
      case 'way':
        if (key.endsWith('+')) return 'no';
        // How much a shim moves a backlash nobody can tell, so the file has no shelf of it.
        if (key === 'endplay.measure') return 'end play';
        return options[turn % options.length] ?? 'thing';
      case 'quantity':
        return `${turn + 1} ${options[0]}`;
      case 'quantities':
        return [`1 ${options[0]}`, `2 ${options[0]}`];
      case 'number':
        return 2;
      case 'decimal':
        return key.endsWith('.1') || key.endsWith('friction') ? 0.5 : /tyre/u.test(key) ? 630 : 3;
      default:
        return 'thing';
    }
  };
}

describe('what is asked by the forms of the file', () => {
  it('is every section that no round of its own asks for, a new one by itself', () => {
    expect(sectionsToTell(trainIn(BEGUN))).toEqual(FORM_SECTIONS);
    expect(FORM_SECTIONS).toEqual(expect.arrayContaining(['packs', 'wear', 'ends', 'final drive']));
  });

  const rounds = FORM_SECTIONS.flatMap((section) =>
    [0, 1, 2, 3].map((turn) => ({ section, turn })),
  );
  it.each(rounds)('writes $section, turn $turn, with words for each question', (round) => {
    const asked: Prompt[] = [];
    const said = anything(round.turn);
    // Which device is told of which sizes is the file's to refuse; here each kind is its own.
    const device = ['low', 'strap', 'lock', 'lock'][round.turn] as string;
    const isOf = ({ key }: Prompt) => round.section === 'capacities' && key === 'capacities@';
    const text = tell(
      BEGUN,
      entry(round.section),
      (prompt) => (isOf(prompt) ? device : said(prompt)),
      asked,
    );
    expect(readTrain(text).problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    const written = round.section === 'controls' ? [] : [round.section];
    expect(entriesOf(trainIn(text)).map(({ section }) => section)).toEqual(written);
    const paths = asked.flatMap(({ key, word = key, options, kind }) => [
      word,
      ...(word === 'know?' && kind === 'several'
        ? options.map((option) => `${key.replace(/\?$/u, '')}.${option}`)
        : []),
    ]);
    for (const language of LANGUAGES) {
      expect(paths.filter((path) => !isWorded(path, language))).toEqual([]);
    }
  });

  it('of a pack is the count of plates and how thick they are, not plate by plate', () => {
    const said: Record<string, Reply> = {
      'packs@': 'low',
      'packs.plates.first': 'steel',
      'packs.plates.frictions': 2,
      'packs.plates.steels': 2,
      'packs.plates.friction': '2.00 mm',
      'packs.plates.steel': '1.80 mm',
      'packs.plates.also': ['backing plate'],
      'packs.plates.backing plate': '5.00 mm',
      'packs?': ['limits'],
      'packs.limits?': ['clearance'],
      'packs.limits.clearance?': ['least', 'most'],
      'packs.limits.clearance.least': '0.80 mm',
      'packs.limits.clearance.most': '1.20 mm',
    };
    const [pack] = trainIn(tell(BEGUN, entry('packs'), ({ key }) => said[key] ?? null)).packs ?? [];
    expect(pack?.plates.map(({ kind, thickness }) => `${kind} ${thickness}`)).toEqual([
      'steel 1.80 mm',
      'friction 2.00 mm',
      'steel 1.80 mm',
      'friction 2.00 mm',
      'backing plate 5.00 mm',
    ]);
    expect(pack?.limits).toEqual({ clearance: { least: '0.80 mm', most: '1.20 mm' } });
  });

  it('changes what is picked alone, in every train of ours', () => {
    const folder = new URL('../../../trains/', import.meta.url);
    const files = readdirSync(folder).filter((name) => name.endsWith('.train.yaml'));
    let met = 0;
    for (const file of files) {
      const text = readFileSync(new URL(file, folder), 'utf8');
      const train = trainIn(text);
      for (const { section, name } of entriesOf(train)) {
        const inquiry = changeOf(train, { thing: 'entry', within: section, name });
        if (!inquiry) throw new Error(`${section} ${name} can be changed`);
        const kept = (prompt: Prompt): Reply => {
          const isGate = prompt.key === `${section}?`;
          return isGate ? [] : (inquiry.before.get(prompt.key) ?? null);
        };
        expect(tell(text, inquiry, kept)).toBe(text);
        met += 1;
      }
    }
    expect(met).toBeGreaterThan(20);
  });
});

describe('a wrong answer', () => {
  const asked = (begun: Inquiry, said: Record<string, Reply>, last: Reply, sure = false) => {
    let inquiry = begun;
    const train = trainIn(BEGUN);
    for (let prompt; (prompt = nextPrompt(inquiry, train)) && prompt.key in said;) {
      const answered = answer(BEGUN, train, inquiry, said[prompt.key] as Reply, true);
      if (!('further' in answered)) throw new Error(`${prompt.key}: ${JSON.stringify(answered)}`);
      inquiry = answered.further;
    }
    const answered = answer(BEGUN, train, inquiry, last, sure);
    return 'wrong' in answered ? answered.wrong.wrong : 'taken';
  };
  const plates = { 'packs@': 'low', 'packs.plates.first': 'steel' };

  it('is told at its question', () => {
    // An input that is also the output, and the case; a device that holds the case.
    expect(asked(inquire('input'), {}, 'drum')).toBe('same piece');
    expect(asked(inquire('device'), { kind: 'brake', name: 'new' }, 'case')).toBe('same piece');
    expect(asked(inquire('device'), { kind: 'brake' }, 'main')).toBe('name taken');
    expect(asked(inquire('device'), { kind: 'brake' }, 'low')).toBe('name taken');
    expect(asked(entry('packs'), { 'packs@': 'low', 'packs.plates.first': 'steel' }, 40)).toBe(
      'doubt',
    );
    const four = { ...plates, 'packs.plates.frictions': 4 };
    expect(asked(entry('packs'), four, 7)).toBe('cannot alternate');
    expect(asked(entry('packs'), four, 5)).toBe('taken');
    expect(asked(entry('packs'), { ...four, 'packs.plates.steels': 4 }, '2 furlongs')).toBe(
      'expected',
    );
    const play = { 'endplay@': 'shaft', 'endplay?': ['limit'], 'endplay.limit?': ['most'] };
    expect(asked(entry('endplay'), play, '90 mm')).toBe('doubt');
    // Said once more it stands.
    expect(asked(entry('endplay'), play, '90 mm', true)).toBe('taken');
  });

  it('that makes the file wrong is not written', () => {
    const rings = {
      'capacities@': 'low',
      'capacities!': 'faces',
      'capacities.faces': 8,
      'capacities.friction': 0.1,
      'capacities.lining mm.0': 100,
      'capacities.lining mm.1': 136,
      'capacities.piston mm.0': 120,
      'capacities.piston mm.1': 60,
      'capacities.springs N': 0,
    };
    expect(asked(entry('capacities'), rings, [])).toBe('mistake');
  });
});
