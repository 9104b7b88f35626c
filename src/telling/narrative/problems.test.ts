import { describe, expect, it } from 'vitest';
import { voiceOf } from '../voice/index.ts';
import { problemText, type Objection } from './problems.ts';

type Any = Objection;
type Kind = Any['problem'];
type Finding<K extends Kind> = Bare<Extract<Any, { problem: K }>>;
type Bare<Its> = Its extends unknown ? Omit<Its, 'problem' | 'severity' | 'place'> : never;

// Every problem with its words: a new kind fails to compile until it stands here.
const WORDED: { readonly [K in Kind]: readonly (readonly [Finding<K>, string])[] } = {
  'too large': [[{ characters: 9, most: 5 }, 'too large: 9 characters; at most 5 are read']],
  'bad character': [
    [{ code: 7 }, 'bad character: U+0007; save the file as UTF-8 text and take it out'],
    [
      { code: 0x202e },
      'bad character: U+202E, which turns the letters behind it round; take it out',
    ],
  ],
  syntax: [
    [
      { what: 'indent' },
      'wrong indent: a line must stand right under the first of its section, or further in',
    ],
    [{ what: 'tab' }, 'tab for an indent: use blanks'],
    [{ what: 'unclosed bracket' }, 'unclosed bracket: close it, with a comma between entries'],
    [{ what: 'unclosed quote' }, 'unclosed quote: close it on the same line'],
    [{ what: 'missing comma' }, 'missing comma between two entries'],
    [{ what: 'second colon' }, 'second colon in one entry: put the text between quotes'],
    [{ what: 'needs quotes' }, 'text that begins with a special character: put it between quotes'],
    [{ what: 'escape' }, 'unknown escape after a backslash: use single quotes'],
    [{ what: 'key' }, 'unreadable key: a key is a name, a colon and a blank'],
    [
      { what: 'unexpected text' },
      'unexpected text: an entry is a name, a colon, a blank and a value',
    ],
  ],
  'one cause': [
    [
      { gears: 4, mend: 'turned round', device: 'low sprag', lets: 'clockwise' },
      'turned-round one-way clutch: look at low sprag first; with lets: clockwise, nothing is odd in any of the 4 gears named below',
    ],
    [
      { gears: 2, mend: 'devices exchanged', device: 'low brake', other: 'second brake' },
      'exchanged devices: look at low brake and second brake first; each with the members of the other, nothing is odd in any of the 2 gears named below',
    ],
    [
      { gears: 2, mend: 'members exchanged', set: 'main', members: ['main.sun', 'main.ring'] },
      'exchanged members: look at main.sun and main.ring first; each where the file has the other, nothing is odd in any of the 2 gears named below',
    ],
    [
      { gears: 2, mend: 'other member', device: 'low brake', was: 'drum', member: 'main.ring' },
      'other member: look at low brake first; with main.ring in place of drum, nothing is odd in any of the 2 gears named below',
    ],
  ],
  'merge mark': [
    [
      {},
      'merge mark: two copies of the file were put together here; keep what is right of both, and take the lines of marks out',
    ],
  ],
  'several documents': [[{}, 'second train in one file: keep each in a file of its own']],
  refused: [
    [{ what: 'anchor' }, 'YAML anchor: write the text out where it is needed'],
    [{ what: 'alias' }, 'YAML alias: write the text out where it is needed'],
    [{ what: 'tag' }, 'YAML tag: leave it out'],
    [{ what: 'merge key' }, 'YAML merge key: write the entries out'],
    [{ what: 'directive' }, 'YAML directive: leave it out'],
  ],
  'end taken': [
    [
      { member: 'main shaft', by: 'turbine shaft', end: 'input' },
      'the output is the input: main shaft turns with turbine shaft; name the member that drives the load',
    ],
    [
      { member: 'main shaft', by: 'counter gear', end: 'output' },
      'one output by two names: main shaft turns with counter gear; name it once',
    ],
  ],
  'planet as an end': [
    [
      { member: 'front.planet' },
      'a planet as the output: front.planet goes round with its carrier; is a member on the axis meant?',
    ],
  ],
  'forward against': [
    [
      { way: 'clockwise' },
      'most gears that drive turn the output the other way than forward: clockwise says: is it seen from the input end?',
    ],
  ],
  'forward taken': [
    [
      { way: 'clockwise' },
      'the gears drive the output both ways; forward is taken to be clockwise, as most of them go: write forward: clockwise, or the other way',
    ],
  ],
  'unknown gear pair': [
    [{ pair: 'final', near: 'finale' }, 'unknown gear pair: final; did you mean finale?'],
    [{ pair: 'x' }, 'unknown gear pair: x'],
  ],
  'too deep': [[{ most: 20 }, 'too deep: at most 20 levels of brackets and indents are read']],
  'duplicate key': [[{ key: 'front' }, 'duplicate key: front; keep one of them']],
  'unknown key': [
    [{ key: 'sunn', near: 'sun' }, 'unknown key: sunn; did you mean sun?'],
    [{ key: 'colour' }, 'unknown key: colour; leave it out'],
  ],
  'misplaced key': [
    [
      { key: 'pairs', beside: 'steps' },
      'misplaced key: pairs cannot stand beside steps; keep one of them',
    ],
  ],
  'missing key': [
    [{ keys: ['ring'] }, 'missing key: add ring'],
    [{ keys: ['clutch', 'brake', 'band'] }, 'missing key: add clutch, brake or band'],
  ],
  'expected keys': [
    [
      { keys: ['clearance', 'travel'], found: '5' },
      'expected entries, as in { clearance: …, travel: … }, not 5',
    ],
    [{ keys: ['torque Nm'], found: '' }, 'expected entries, as in { torque Nm: … }'],
  ],
  expected: [
    [
      { what: 'teeth', found: 'thirty' },
      'expected a number of teeth, a whole number from 1 to 1000000, not thirty',
    ],
    [{ what: 'member', found: '' }, 'expected the name of a member'],
    [{ what: 'set', found: '7' }, 'expected a set, as in { sun: 30, ring: 66 }, not 7'],
    [
      { what: 'gear pair', found: '' },
      'expected a gear pair, as in { driver: [shaft, 41], driven: [layshaft, 43] }',
    ],
    [{ what: 'device', found: '' }, 'expected a device, as in { brake: rear.carrier }'],
    [{ what: 'section', found: '' }, 'expected entries, a name, a colon and its thing each'],
    [{ what: 'version', found: '' }, 'expected the number 1'],
    [{ what: 'text', found: '' }, 'expected text'],
    [{ what: 'name', found: '' }, 'expected a name'],
    [{ what: 'members', found: '' }, 'expected a list of members, as in [front.sun, rear.sun]'],
    [{ what: 'two members', found: '' }, 'expected two members, as in [front.sun, case]'],
    [{ what: 'devices', found: '' }, 'expected a list of devices, as in [forward clutch]'],
    [{ what: 'wheel names', found: '' }, 'expected a list of wheels, as in [idler]'],
    [{ what: 'meshes', found: '' }, 'expected a list of meshes, as in [[sun, idler]]'],
    [
      { what: 'mesh', found: '' },
      'expected two wheels, as in [sun, planet] or [ring, planet, internal]',
    ],
    [{ what: 'internal', found: '' }, 'expected the word internal, or nothing'],
    [{ what: 'wheel', found: '' }, 'expected a member and its teeth, as in [layshaft, 43]'],
    [
      { what: 'two ends', found: '' },
      'expected the names of the two ends, the input end first, as in [pump end, cover end]',
    ],
    [{ what: 'gear pairs', found: '' }, 'expected a gear pair or a list of them'],
    [{ what: 'two teeth', found: '' }, 'expected two numbers of teeth, as in [24, 44]'],
    [{ what: 'count', found: '' }, 'expected a whole number from 1 to 100'],
    [{ what: 'way', found: '' }, 'expected clockwise or anticlockwise'],
    [{ what: 'pair kind', found: '' }, 'expected external, internal or chain'],
    [{ what: 'proportion', found: '-1' }, 'expected a number from 0 to 1000000, not -1'],
    [{ what: 'proportions', found: '' }, 'expected some numbers above 0, or nothing can be shown'],
    [{ what: 'minutes', found: '' }, 'expected a number above 0'],
    [{ what: 'under fifty', found: '' }, 'expected a number above 0 and below 50'],
    [{ what: 'over fifty', found: '' }, 'expected a number above 50 and below 100'],
    [{ what: 'risk', found: '' }, 'expected none, low or high'],
    [{ what: 'stage', found: '' }, 'expected in the car, pan off or on the bench'],
    [{ what: 'pressure', found: '' }, 'expected good, low or high'],
    [{ what: 'fluid', found: '' }, 'expected clean, burnt, metal or milky'],
    [{ what: 'tests seen', found: '' }, 'expected what was seen, as in D 1: drives'],
    [{ what: 'part', found: '5' }, 'expected a part, as in { carries: [front.sun] }, not 5'],
    [
      { what: 'carried', found: 'sun' },
      'expected a list of members and devices, as in [front.sun, low brake], not sun',
    ],
    [{ what: 'part names', found: 'x' }, 'expected a list of parts, as in [sun shell], not x'],
    [{ what: 'note', found: '' }, 'expected a text of one line, of 1 to 200 characters'],
    [{ what: 'yes or no', found: 'perhaps' }, 'expected yes or no, not perhaps'],
    [{ what: 'facing', found: 'front' }, 'expected input, output, up or down, not front'],
    [{ what: 'end', found: 'up' }, 'expected input or output, not up'],
    [{ what: 'bolts', found: '' }, 'expected bolts, as in { torque: 24 Nm, count: 7, once: yes }'],
    [
      { what: 'torque', found: '24' },
      'expected a torque with its unit, as in 24 Nm, 18 lbft or 72 lbin, not 24',
    ],
    [
      { what: 'volume', found: '5' },
      'expected a volume with its unit, as in 5.4 L or 5.7 qt, not 5',
    ],
    [
      { what: 'fluid to fill', found: '' },
      'expected what is filled in, as in { kind: the one in the manual, fill: 5.4 L }',
    ],
    [
      { what: 'closed', found: '' },
      'expected a list of packs, bands and shafts, as in [turbine shaft]',
    ],
    [{ what: 'refit', found: 'keep' }, 'expected reuse or replace, not keep'],
    [{ what: 'outcome', found: '' }, 'expected what was seen, as in slips or: slips, not sure'],
  ],
  'newer version': [
    [
      { version: 2, newest: 1 },
      'newer version: 2; this Holdturn reads up to 1, so bring it up to date',
    ],
  ],
  'too many': [
    [{ what: 'members', count: 9, most: 5 }, 'too many members: 9; at most 5 are read'],
    [{ what: 'devices', count: 9, most: 5 }, 'too many devices: 9; at most 5 are read'],
  ],
  'unknown set': [
    [{ set: 'frnt', near: 'front' }, 'unknown set: frnt; did you mean front?'],
    [{ set: 'x' }, 'unknown set: x; name one of the sections under sets'],
  ],
  'unknown part': [
    [
      { set: 'front', part: 'rig', near: 'ring', parts: [] },
      'unknown part: rig of the front set; did you mean ring?',
    ],
    [
      { set: 'front', part: 'x', parts: ['sun', 'ring'] },
      'unknown part: x of the front set; it has sun and ring',
    ],
  ],
  'unknown wheel': [
    [
      { set: 'odd', wheel: 'idlr', near: 'idler' },
      'unknown wheel: idlr of the odd set; did you mean idler?',
    ],
    [{ set: 'odd', wheel: 'x' }, 'unknown wheel: x of the odd set; name one of its wheels'],
  ],
  'unknown device': [
    [
      { device: 'frward clutch', near: 'forward clutch' },
      'unknown device: frward clutch; did you mean forward clutch?',
    ],
    [{ device: 'x' }, 'unknown device: x; name one that stands under devices'],
  ],
  'not applied': [
    [
      { device: 'low sprag' },
      'one-way clutch in a range: low sprag; nobody applies it, so leave it out',
    ],
  ],
  'not a band': [
    [{ device: 'low brake' }, 'no band: low brake is none; name one under devices that is'],
  ],
  'no band': [
    [{ device: 'low bnad', near: 'low band' }, 'no band: low bnad; did you mean low band?'],
    [{ device: 'x' }, 'no band: x; tell under bands of the train file how it is set'],
  ],
  'no preload': [
    [{ bearings: 'x' }, 'no preload: x; tell it under preload of the train file'],
    [{ bearings: 'sied', near: 'side' }, 'no preload: sied; did you mean side?'],
  ],
  'no wear': [
    [{ part: 'pmup', near: 'pump' }, 'no wear: pmup; did you mean pump?'],
    [{ part: 'x' }, 'no wear: x; tell under wear of the train file what is measured'],
  ],
  'no end play': [
    [
      { shaft: 'input shift', near: 'input shaft' },
      'no end play: input shift; did you mean input shaft?',
    ],
    [{ shaft: 'axle' }, 'no end play: axle; tell it under endplay of the train file'],
  ],
  'no pack': [
    [
      { device: 'frnt brake', near: 'front brake' },
      'no pack: frnt brake; did you mean front brake?',
    ],
    [{ device: 'low brake' }, 'no pack: low brake; tell its plates under packs of the train file'],
  ],
  'inside out': [
    [
      { outer: 70, inner: 130 },
      'inside out: 130 is not smaller than 70; give the outer diameter first',
    ],
  ],
  'ends reversed': [
    [
      { least: '0.60 mm', most: '0.30 mm' },
      'ends reversed: the least, 0.60 mm, is more than the most, 0.30 mm; swap or correct them',
    ],
  ],
  'two units': [
    [
      { least: '0.30 mm', most: '0.60 in' },
      'two units: the least is 0.30 mm and the most 0.60 in; write both in the unit of their source',
    ],
  ],
  'limit doubted': [
    [
      {
        of: 'turbine shaft',
        by: 'point',
        file: { least: '0.35 mm', most: '0.65 mm' },
        job: { most: '6.5 mm' },
      },
      'limit to be looked at: turbine shaft would have at most 6.5 mm, and the train file has 0.35 mm to 0.65 mm: did a point slip? correct it, or, if it is meant, write it again with sure: yes behind it',
    ],
  ],
  'limit in two units': [
    [
      { of: 'low brake' },
      'limit in two units: a limit of low brake has one end in millimetres and one in inches; write both in the unit of their source',
    ],
  ],
  'nothing measured': [
    [
      { name: 'turbine shat', near: 'turbine shaft' },
      'nothing measured: turbine shat; did you mean turbine shaft?',
    ],
    [
      { name: 'low sprag' },
      'nothing measured: low sprag; tell in the train file what is measured of it, under packs, endplay, preload, bands or wear',
    ],
  ],
  'other kind': [
    [
      { device: 'low sprag', kind: 'one-way' },
      'wrong sizes: low sprag is a one-way clutch; give its own, or one torque Nm',
    ],
    [{ device: 'band', kind: 'band' }, 'wrong sizes: band is a band; give its own, or a torque'],
  ],
  'no plates': [
    [
      { device: 'ring band' },
      'no plates: ring band is no multi-plate clutch or brake; name one that is',
    ],
  ],
  'listed twice': [[{ name: 'low brake' }, 'listed twice: low brake; once is enough']],
  'name taken': [
    [{ name: 'a', by: 'set' }, 'name taken: a is a set already; choose another'],
    [{ name: 'a', by: 'gear pair' }, 'name taken: a is a gear pair already; choose another'],
    [{ name: 'a', by: 'device' }, 'name taken: a is a device already; choose another'],
    [{ name: 'a', by: 'join' }, 'name taken: a is joined already; put all its members in one list'],
  ],
  'reserved name': [
    [{ name: 'case' }, 'reserved name: case has a meaning of its own; choose another'],
  ],
  'name of nobody': [
    [{ name: 'sun shel', near: 'sun shell' }, 'name of nobody: sun shel; did you mean sun shell?'],
    [{ name: 'x' }, 'name of nobody: x; name what stands in this file'],
  ],
  'told alike': [
    [
      { name: 'rear', said: 'trasero', other: 'front' },
      'two by one name: front goes by trasero too, and rear must be told from it; give one of them another name',
    ],
  ],
  'not a member': [
    [
      { name: 'front', is: 'set' },
      'not a member: front is a set; name a part of it, as in front.carrier',
    ],
    [
      { name: 'a', is: 'gear pair' },
      'not a member: a is a gear pair; name the member of one of its wheels',
    ],
    [{ name: 'a', is: 'device' }, 'not a member: a is a device; name a member that it holds'],
    [{ name: 'a', is: 'join' }, 'not a member: a is a join; name a member of it'],
  ],
  oil: [
    [
      { is: 'unfed line', name: 'drve', near: 'drive' },
      'nothing gives this line oil: drve; did you mean drive?',
    ],
    [{ is: 'unfed line', name: 'lost' }, 'nothing gives this line oil: lost; say what feeds it'],
    [
      { is: 'unknown solenoid', name: 'shft A', near: 'shift A' },
      'no such solenoid: shft A; did you mean shift A?',
    ],
    [{ is: 'unknown range', name: 'X' }, 'no such range: X; name one of the ranges'],
    [{ is: 'unknown gear', name: '9' }, 'no such gear in this range: 9; name one of its gears'],
    [
      { is: 'range without position', name: 'L' },
      'the selector has no position L, and the ranges do; say what it feeds there, [] for nothing',
    ],
    [
      { is: 'never asked', name: 'shift B' },
      'no gear gives shift B current, and none names its pressure; name it where it has some, or take it out',
    ],
    [
      { is: 'no chamber', name: 'low brake' },
      'nothing here brings oil to low brake; give its line, or say that something else moves it',
    ],
    [
      { is: 'never pushed', name: 'latch' },
      'only latch itself feeds what pushes it, so it never moves; name what moves it first',
    ],
  ],
  'joined to itself': [[{ member: 'a' }, 'joined to itself: a; name another member']],
  'case cannot turn': [
    [{ end: 'input' }, 'the case cannot turn: name another member as the input'],
    [{ end: 'output' }, 'the case cannot turn: name another member as the output'],
  ],
  'cannot share': [
    [
      { set: 'odd' },
      'cannot share: odd has no planets that another set can use; share those of a plain, pair or stepped set',
    ],
  ],
  'shares in a circle': [
    [
      { sets: ['a', 'b'] },
      'sharing in a circle: a and b; one of them must have planets of its own',
    ],
  ],
  'planets differ': [
    [
      { planets: 3, set: 'front', there: 4 },
      'planets differ: 3 here, 4 in the front set, whose planets they are; make them equal',
    ],
  ],
  'meshes itself': [[{ wheel: 'idler' }, 'wheel in mesh with itself: idler; name the other wheel']],
  'none carried': [
    [
      { wheels: ['a', 'b'] },
      'neither is carried: a and b both turn on the main axis and cannot mesh; name one of them under carried',
    ],
  ],
  'unknown carried': [
    [
      { name: 'low spreg', near: 'low sprag' },
      'nothing to carry: low spreg; did you mean low sprag?',
    ],
    [
      { name: 'xyzzy' },
      'nothing to carry: xyzzy; name a member, a device, or NAME.inner or NAME.outer of a one-way clutch',
    ],
  ],
  'unknown teardown part': [
    [{ part: 'shel', near: 'shell' }, 'unknown part: shel; did you mean shell?'],
    [{ part: 'x' }, 'unknown part: x; name one that stands under teardown'],
  ],
  'nothing to measure': [
    [
      { name: 'low pakc', near: 'low pack' },
      'nothing to measure: low pakc; did you mean low pack?',
    ],
    [
      { name: 'x' },
      'nothing to measure: x; name what stands under packs, bands, endplay or preload',
    ],
  ],
  'carried twice': [
    [
      { name: 'low sprag', by: 'sprag cage' },
      'carried twice: low sprag comes with sprag cage already; keep one of them',
    ],
  ],
  'comes off too early': [
    [
      { part: 'rear carrier', cover: 'sun shell' },
      'comes off too early: rear carrier is under sun shell, which must stand before it',
    ],
    [{ part: 'drum', cover: 'drum' }, 'covered by itself: drum; name another part'],
  ],
  'closes too early': [
    [
      { part: 'cover', name: 'output shaft', later: 'washer' },
      'cover closes output shaft, but washer, which sets it or brings a gear of it, goes on later: it is measured after that; let the last of them close it',
    ],
  ],
  'feeds all': [
    [
      { part: 'valve body' },
      'valve body feeds every clutch, brake and band: taken for a valve body, which covers the ports in the case, so plan puts air on everything before it goes on; leave feeds out of a valve body, and in a pump or a support name only what it alone lets through',
    ],
  ],
  'not carried': [
    [{ name: 'rear.ring' }, 'forgotten part: nothing carries rear.ring; let a part carry it'],
  ],
  'half written': [
    [
      {},
      'half written entry: it was cut short, and is left out; what was not kept must be added again',
    ],
  ],
  'changed since': [
    [
      {},
      'entry changed since it was written, and left out: strike an entry through, never edit it',
    ],
  ],
  'strikes nothing': [
    [{ id: '7k2m9qfd' }, 'strikes nothing: there is no entry 7k2m9qfd in this job'],
  ],
  'no scale of speeds': [
    [
      {},
      'an engine speed tells a ratio by tyre and final drive, or beside a gear that drives: add ' +
        'car: { tyre mm: 632, final drive: 3.65 } to the train file, or write what a good gear ' +
        'reads and that it drives',
    ],
  ],
  'unknown test': [
    [{ test: 'D 11', near: 'D 1' }, 'unknown test: D 11; did you mean D 1?'],
    [
      { test: 'x' },
      'unknown test: x; name a gear, a gear and coast, stall, pressure, fluid, air or turn',
    ],
  ],
  'unknown outcome': [
    [
      { outcome: 'slipps', test: 'D 1', can: ['drives', 'slips'], near: 'slips' },
      'D 1 cannot show slipps; did you mean slips?',
    ],
    [
      { outcome: 'x', test: 'pressure', can: ['good', 'low', 'high'] },
      'pressure cannot show x; write good, low or high',
    ],
  ],
  'and more': [
    [{ count: 1 }, 'and one more like these'],
    [{ count: 7 }, 'and 7 more like these'],
  ],
  'member carries nothing': [
    [
      { member: 'rear.ring', touched: 'rear' },
      'idle member: rear.ring touches only rear, so it can carry no load; join it, or give it a device',
    ],
  ],
  'set stands alone': [
    [
      { set: 'dual' },
      'idle set: nothing but dual touches any of its members; join them, or give them devices',
    ],
  ],
  'device does nothing': [
    [
      { device: 'd' },
      'idle device: d joins members that cannot turn against each other anyway; look at its names',
    ],
  ],
  'counts differ': [
    [
      {
        of: 'low brake',
        counts: [
          { in: 'teardown', frictions: 4 },
          { in: 'packs', frictions: 3 },
          { in: 'capacities', frictions: 4 },
        ],
      },
      'counts differ: the frictions of low brake are 4 under teardown, 3 under packs and 8 faces under capacities, and a friction disc has two faces; count the plates, and correct what is wrong',
    ],
  ],
  'limit without figures': [
    [
      { of: 'low brake' },
      'limit without figures: a limit of low brake tells neither least nor most, so nothing is judged by it; add one',
    ],
  ],
  'limits turned round': [
    [
      { of: 'low brake' },
      'limits turned round: low brake has a least that is more than its most; swap or correct them',
    ],
  ],
  'shelf out of reach': [
    [
      { of: 'low brake' },
      'shelf out of reach: by the sizes of the file no part of it brings low brake inside its limits; look for a size, a plate or a unit that is wrong',
    ],
  ],
  'shelf too coarse': [
    [
      { of: 'low brake' },
      'shelf too coarse: two sizes of low brake lie farther apart than its limits, so some clearances cannot be set; is a size missing?',
    ],
  ],
  'fitted not on the shelf': [
    [
      { of: 'low brake' },
      'fitted part not on the shelf: low brake has one of no size that is listed; measure it again, or add its size',
    ],
  ],
  'shelf without limits': [
    [
      { of: 'low brake' },
      'shelf without limits: low brake needs both a least and a most, or no part can be selected',
    ],
  ],
  'no friction to share': [
    [
      { of: 'low brake' },
      'no friction to share: low brake has limits for each friction, and no friction disc',
    ],
  ],
  'squash of no cushion': [
    [
      { of: 'low brake' },
      'squash of no cushion: only a cushion plate of low brake can have one; it is left out of account',
    ],
  ],
  'squash without air': [
    [
      { of: 'low brake' },
      'squash without air: say under at, for low brake, at what pressure the squash was measured',
    ],
  ],
  'device never applied': [
    [{ device: 'd' }, 'idle device: d is applied in no gear; add it to one'],
  ],
  'gear is neutral': [
    [{ range: 'D', gear: '2' }, 'neutral gear: D 2 drives nothing; look at what it applies'],
  ],
  'oil differs': [
    [
      { range: 'D', gear: '2', device: 'second brake', does: 'leaves off' },
      'no oil applies second brake in D 2, and the ranges do; look at its line, and at what the gear applies',
    ],
    [
      { range: 'D', gear: '1', device: 'low brake', does: 'applies' },
      'oil applies low brake in D 1, and the ranges do not; look at its line, and at what the gear applies',
    ],
  ],
  'oil unsettled': [
    [
      { range: 'D', gear: '2', is: 'chase' },
      'valves chase each other in D 2, and nothing comes to rest; look at what pushes them',
    ],
    [
      { range: 'D', gear: '2', is: 'short' },
      'an open way leads from the pump to the exhaust in D 2: no line has pressure to rely on; look at what pushes them',
    ],
    [
      { range: 'D', gear: '2', is: 'race' },
      'which valve moves first decides what D 2 applies; look at what pushes them',
    ],
  ],
  'gear ties up': [
    [{ range: 'D', gear: '2' }, 'tied-up gear: D 2 lets nothing turn; look at what it applies'],
  ],
  'neutral drives': [
    [{ range: 'N', gear: 'N' }, 'driving neutral: N N drives the output; look at what it applies'],
  ],
  'lonely name': [
    [
      { name: 'sun shel', near: 'sun shell' },
      'lonely name: sun shel stands nowhere else; did you mean sun shell?',
    ],
  ],
  renamed: [
    [
      { old: 'flange', now: 'backing plate' },
      'renamed: flange is called backing plate now; it is still read',
    ],
  ],
  'one body': [
    [
      { device: 'd', members: ['a', 'b'] },
      'idle device: d joins a to b, which are one piece, so it can do nothing; name another member',
    ],
  ],
  'ring does not fit': [
    [
      { set: 'front', ring: 70, fits: { from: 66, to: 66 }, allowance: 1 },
      'ring does not fit: 70 teeth in the front set, where 66 close over the sun and the planets; profile shift allows 1 more or less; count again',
    ],
    [
      { set: 'front', ring: 70, fits: { from: 72, to: 80 }, allowance: 1 },
      'ring does not fit: 70 teeth in the front set, where 72 to 80 close over the sun and the planets; profile shift allows 1 more or less; count again',
    ],
    [
      { set: 'front', ring: 20, fits: { from: 32, to: null }, allowance: 1 },
      'ring does not fit: 20 teeth in the front set, where the sun and the planets need 32 or more; profile shift allows 1 less; count again',
    ],
  ],
  'planets not evenly spaced': [
    [
      { set: 'front', planets: 5, sum: 96, by: 'sun + ring', counts: [3, 4] },
      'planets not evenly spaced: 5 in the front set, where sun + ring = 96 does not divide by 5; it does by 3 or 4',
    ],
    [
      { set: 'dual', planets: 5, sum: 41, by: 'ring - sun', counts: [] },
      'planets not evenly spaced: 5 in the dual set, where ring − sun = 41 does not divide by 5; count again',
    ],
  ],
  'planets touch': [
    [
      { set: 'front', planets: 7, teeth: 30, overlap: 3, most: 4 },
      'planets touch: 7 of 30 teeth in the front set overlap at their tips by 1.50 modules; at most 4 have room',
    ],
  ],
  'centre distances differ': [
    [
      {
        set: 'odd',
        wheel: 'idler',
        distances: [
          { with: 'a', distance: 60 },
          { with: 'b', distance: 64 },
        ],
        allowance: 1,
      },
      'centre distances differ: idler of the odd set would sit 30.00 by its mesh with a and 32.00 by its mesh with b modules from the main axis; profile shift allows 1 tooth a wheel; count again',
    ],
  ],
  'no room inside': [
    [
      { within: 'odd', teeth: [40, 40] },
      'no room inside: a wheel of 40 teeth in a ring of 40, in odd; count them again',
    ],
  ],
};

const CASES = Object.entries(WORDED).flatMap(([problem, cases]) =>
  (cases as readonly (readonly [object, string])[]).map(([finding, words]) => {
    const place = { line: 1, column: 1, length: 1 };
    return [words, { problem, severity: 'error', place, ...finding } as Any] as const;
  }),
);

describe('a problem', () => {
  it.each(CASES)('%s', (words, problem) => {
    expect(problemText(problem, voiceOf('en'))).toBe(words);
  });

  it.each(CASES)('is one other line in Spanish: %s', (words, problem) => {
    const spanish = problemText(problem, voiceOf('es'));
    expect(spanish).not.toBe(words);
    expect(spanish).toMatch(/^[^\n]+$/);
  });
});
