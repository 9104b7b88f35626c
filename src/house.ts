/**
 * The rooms of the house, in order, a sentence each. A room imports only rooms listed above
 * it; a test reads every import against this list.
 */
export const ROOMS: readonly (readonly [folder: string, purpose: string])[] = [
  ['engine/linear', 'Exact numbers, linear programmes, and who solves them; knows no gears.'],
  [
    'engine/quantity',
    'Lengths, pressures, forces and torques as people write them: exact, with the last digit told.',
  ],
  ['engine/train', 'Members, sets, pairs, joins, devices: what is connected to what; no speed.'],
  ['engine/words', 'What each thing is called in each language, and what else is read for it.'],
  ['engine/trainfile', 'Characters, lines, keys: reading with places, writing, near names.'],
  ['engine/motion', 'A train turned into rows of the motion cone; the one sign convention.'],
  ['engine/proof', 'Does this answer satisfy every row? Shares no code with linear.'],
  ['engine/lever', 'A set as a straight lever, its members at true distances; sets that make one.'],
  [
    'engine/reckon',
    'A question put to the cone, solved and proved: speeds, torques, how far each is free.',
  ],
  ['engine/flow', 'A gear under power, on coast and rolled back, and the reasons.'],
  ['engine/noise', 'Who turns and who is loaded in the noisy gears, and not in the quiet ones.'],
  ['engine/hand', 'Hold these, turn that: does it turn, and what do the others do?'],
  ['engine/chart', 'Every combination of friction devices, and the swaps between gears.'],
  ['engine/faults', 'What can be wrong with a train, as edits of it.'],
  ['engine/road', 'Engine speed at a road speed, as the ratio of a gear.'],
  ['engine/practice', 'Tests that a shop makes, and how often each thing is wrong.'],
  [
    'engine/suspects',
    'Which fault a symptom means: what was seen, ranked, and the next best test.',
  ],
  ['engine/plan', 'The build, step by step, and the fewest hand checks that catch its mistakes.'],
  ['engine/margin', 'What a gear can pass before something slips, and at what pressure it holds.'],
  ['engine/check', 'Is this a sensible train? Warnings from its teeth and its behaviour.'],
  ['shop/length', 'Lengths exact in millimetres and inches, with the last digit a tool told.'],
  [
    'shop/limits',
    'Limits and shelves: is a gap inside, may it be believed, and which part sets it right?',
  ],
  ['shop/capacity', 'What torque a pack, a band or a one-way clutch can carry, from its sizes.'],
  ['shop/packs', 'Plates and their clearance: measured, judged, and the part that sets it right.'],
  ['shop/endplay', 'How far a shaft moves along itself, and the washer or race that sets it.'],
  ['shop/bands', 'A band at its drum: turns backed off, rod travel, and the rod that sets it.'],
  ['shop/wear', 'Bushings, planets, pumps and springs against their limits, and what to do.'],
  ['shop/figures', 'Can these limits be met, and do these shelves help? Warnings, with places.'],
  [
    'shop/records',
    'What was done and found on a job, by whom: only added to, struck, never erased.',
  ],
  ['shop/lessons', 'What a class can predict of a train, the wrong ideas, and the votes.'],
  ['telling/narrative', 'Facts and problems to sentences; a file a language.'],
  ['telling/report', 'Answers to JSON and to tables of text.'],
  ['telling/drawing', 'A train to a scene as plain data, then to SVG: no screen, no file.'],
  ['telling/sheets', 'Answers to sheets of paper: plain data, then source text for a typesetter.'],
  ['doors/web', 'The bench on a screen: holds what is asked, paints what is answered; no physics.'],
  ['doors/cli', 'The command: files, arguments, exit codes; holds no physics.'],
];
