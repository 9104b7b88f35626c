import { CASE, type OneWayClutch, type Train } from '../../engine/train/index.ts';
import type { FoldedJob } from '../../shop/records/index.ts';
import type { Stand } from '../../asking/request/index.ts';
import { endOf, freeWay, keyOf, visible, type Voice } from '../narrative/index.ts';
import { cautionOf } from './cautions.ts';
import type { SheetBlock, SheetCell, SheetColumn, Sheet } from './document.ts';
import { headOf, jobFields } from './filled.ts';
import { checksIn } from './job.ts';

/** The one-way card: for each clutch what the hands must find, whichever race they hold. */
export function oneWayCard(train: Train, voice: Voice, stand: Stand, job?: FoldedJob): Sheet {
  const clutches = train.devices.filter((one): one is OneWayClutch => one.kind === 'one-way');
  return {
    title: voice.say('sheet.title', { sheet: 'one_way' }),
    blocks: [
      cautionOf(['hands'], voice),
      jobFields(voice, job),
      {
        block: 'paragraph',
        text: voice.say(clutches.length === 0 ? 'one-way.none' : 'one-way.legend'),
      },
      ...clutches.map((clutch) => checksOf(clutch, train, stand, voice)),
      ...checksIn(job, voice),
    ],
  };
}

function checksOf(clutch: OneWayClutch, train: Train, from: Stand, voice: Voice): SheetBlock {
  const fits = clutch.stuck ? FITS.slice(0, 1) : FITS;
  // Nobody turns the case.
  const races = RACES.filter((hold) => {
    return (hold === 'outer' ? clutch.first : clutch.second) !== CASE;
  });
  const stands = fits.flatMap((fitted) => races.map((hold): Stand => ({ ...from, hold, fitted })));
  const rows = stands.map((stand) => rowOf(clutch, stand, voice));
  return {
    block: 'together',
    blocks: [
      { block: 'heading', text: voice.called(clutch.name) },
      ...faceBlocks(clutch, train, voice),
      { block: 'table', columns: columnsOf(voice), rows, rowMm: 13 },
    ],
  };
}

function faceBlocks({ name }: OneWayClutch, { teardown = [] }: Train, voice: Voice): SheetBlock[] {
  return teardown.flatMap((part): SheetBlock[] => {
    if (part.face === undefined || !part.carries.includes(name)) return [];
    const names = { part: voice.called(part.name), face: visible(part.face) };
    return [{ block: 'paragraph', text: voice.say('sheet.one-way face', names) }];
  });
}

const FITS = ['as described', 'other way up'] as const;
const RACES = ['outer', 'inner'] as const;

function rowOf(clutch: OneWayClutch, stand: Stand, voice: Voice): SheetCell[] {
  const { hold, fitted = 'as described' } = stand;
  const [held, turned] =
    hold === 'outer' ? (['outer', 'inner'] as const) : (['inner', 'outer'] as const);
  const race = (which: 'inner' | 'outer') => {
    const member = voice.name(which === 'inner' ? clutch.first : clutch.second);
    return voice.say('sheet.race', { race: which, member });
  };
  return [
    race(held),
    race(turned),
    voice.say('sheet.end', endOf(stand, voice)),
    voice.say('sheet.fitted', { fitted: keyOf(fitted) }),
    predicted(clutch, stand, voice),
    '',
  ];
}

function predicted(clutch: OneWayClutch, stand: Stand, voice: Voice): SheetCell {
  const free = freeWay(clutch, stand);
  const text = voice.say('sheet.one-way', { state: clutch.stuck ?? 'sound', free });
  // The wrong way is told so, and never as loud as the right one.
  const look = stand.fitted === 'other way up' ? 'quiet' : 'strong';
  return { text, look, ...(clutch.stuck === undefined && { turns: free }) };
}

function columnsOf(voice: Voice): SheetColumn[] {
  const shares = { held: 5, turned: 5, end: 3, face: 4, predicted: 8, felt: 5 };
  return Object.entries(shares).map(([head, share]) => {
    return { head: headOf(head, voice), width: { share } };
  });
}
