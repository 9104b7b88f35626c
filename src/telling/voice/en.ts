/**
 * English: every sentence and label that Holdturn says, one ICU message each. A message is
 * whole: a translator may turn the order of everything round. Names are the person's own.
 *
 * In reasons `torque`, `way` and spans come worded, by the messages of those names.
 */
export const en = {
  // The building bricks of quantities and names.
  decimal: '.',
  name: '{name}',
  case: 'case',
  'list.two': '{a} and {b}',
  'list.either': '{a} or {b}',
  'list.more': '{a}, {b}',
  'span.between': '{from} to {to}',
  'span.least': '{from} or more',
  'span.most': '{to} or less',
  'span.any': 'free',
  way: '{way, select, clockwise {clockwise} other {anticlockwise}}',
  'seen from': 'seen from the {end, select, named {{name}} output {output end} other {input end}}',
  times: '{size, select, 1 {once} other {{size} times}}',
  torque:
    '{end, select, input {{size, select, 1 {the input torque} other {{size} times input torque}}} output {{size, select, 1 {the output torque} other {{size} times output torque}}} given {{size, select, 1 {the torque at the first given speed} other {{size} times the torque at the first given speed}}} other {{size, select, 1 {the torque of your hand} other {{size} times the torque of your hand}}}}',

  // Why: what each member does to the next.
  'part on': '{part} ({body})',
  'fact.turned':
    '{end, select, input {The input, the {member}, is turned {way}, {seen}.} other {The output, the {member}, is turned {way}, {seen}.}}',
  'fact.given':
    '{still, select, yes {The {member} is held still.} other {The {member} is turned {way} at {speed}, {seen}.}}',
  'fact.carries':
    'The {device} {kind, select, clutch {carries} brake {carries} band {carries} pawl {carries} one_way {locks and carries} other {carries}} the load from the {from} to the {to}, pushing it {way} with {torque}.',
  'fact.works':
    '{count, plural, =0 {The {set} set pushes {ports}.} one {The {drivers} drives the {set} set, which pushes {ports}.} other {The {drivers} drive the {set} set, which pushes {ports}.}}',
  'fact.works.port':
    '{role, select, reacts {the {member}, which stands still, {way} with {torque}} other {the {member} {way} with {torque}}}',
  'fact.works.alone': 'The {drivers} and the {set} set push against one another.',
  'fact.meshes': 'Through the {pair} gears the {from} pushes the {to} {way} with {torque}.',
  'fact.as one': 'In the {set} set the {members} turn as one: nothing moves on its pins.',
  'fact.holds':
    'The {member} is pushed {way}{kind, select, clutch {; the {device} holds it to the case} brake {; the {device} holds it to the case} band {; the {device} holds it to the case} pawl {; the {device} holds it to the case} one_way { onto the {device}, which hands it to the case} other {; the {device} holds it to the case}}: {torque}.',
  'fact.fixed':
    'The load pushes the {member} {way}; it is made fast to the case, which takes {torque}.',
  'fact.fixed.case': 'The case takes the reaction {way}: {torque}.',
  'fact.shares': 'The {devices} share one reaction: how much of it each carries, nothing settles.',
  'fact.sets share':
    '{count, plural, one {The {sets} set takes a share of the load: how much, and which way it pushes, nothing settles.} other {The {sets} sets share one load: how much each carries, and which way it pushes, nothing settles.}}',
  'fact.outputs':
    'The outputs turn at one speed, as on a straight road, and share the load: {shares}.',
  'output share': 'the {member} takes {torque}',
  'fact.over-runs':
    '{size, select, none {The {device} over-runs; nothing settles how fast.} 1 {The {device} over-runs at {end, select, input {the speed of the input} output {the speed of the output} given {a speed of 1} other {the speed of your hand}}.} other {The {device} over-runs at {end, select, input {{size} times the speed of the input} output {{size} times the speed of the output} given {a speed of {size}} other {{size} times the speed of your hand}}.}}',
  'fact.idle':
    '{because, select, over_run {The {device} is on but carries nothing, because the {other} over-runs: nothing pushes on it.} other {The {device} is on but carries nothing.}}',
  'fact.result':
    '{end, select, output {For each turn of the input the output, the {member}, turns {way} {turns}: the ratio is {ratio}.} other {For each turn of the output the input, the {member}, turns {way} {turns}: the ratio is {ratio}.}}',
  'fact.result.given':
    '{still, select, yes {The output, the {member}, then stands still.} other {The output, the {member}, then turns {way} at {speed}.}}',
  'fact.neutral':
    '{end, select, output {Nothing makes the output, the {member}, turn against its load: neutral.} other {Nothing makes the input, the {member}, turn: it can stand still, and the train coasts freely.}}',
  'fact.tied up':
    '{end, select, given {These speeds cannot be together: the train is tied up.} input {The input, the {member}, cannot be turned {way}: the train is tied up.} rolled {The output, the {member}, cannot be turned {way}: the train does not roll {toward, select, forward {forward} other {back}}.} other {The output, the {member}, cannot be turned {way}: the train is tied up.}}',
  'fact.free':
    '{count, plural, one {The {members} is free: nothing settles its speed.} other {The {members} are free: nothing settles their speeds.}}',
  'fact.recirculates':
    '{count, plural, one {Power goes round in a circle through the {sets} set: {power} times the power that comes in.} other {Power goes round in a circle through the {sets} sets: {power} times the power that comes in.}}',
  'fact.goes round':
    '{count, plural, =0 {Torque goes round in a circle through the {devices}, which turn as one: so what is in the circle may carry more than comes in. Nothing rolls, so no power is lost by it.} one {Torque goes round in a circle through the {devices} and the {sets} set, which turn as one: so what is in the circle may carry more than comes in. Nothing rolls, so no power is lost by it.} other {Torque goes round in a circle through the {devices} and the {sets} sets, which turn as one: so what is in the circle may carry more than comes in. Nothing rolls, so no power is lost by it.}}',
  'fact.engine braking':
    '{there, select, yes {On coast the train turns the engine: there is engine braking.} other {{count, plural, =0 {On coast nothing turns the engine: there is no engine braking.} one {The {devices} over-runs, so the engine is not turned: there is no engine braking.} other {The {devices} over-run, so the engine is not turned: there is no engine braking.}}}}',
  'fact.rolls':
    '{held, select, yes {Even with the {member} held, the train rolls {toward, select, forward {forward} other {back}}.} other {With the input free, the train rolls {toward, select, forward {forward} other {back}}.}}',
  'fact.checked':
    '{count, plural, =0 {{turns, select, yes {With nothing held, the {turned} turns {way}, {seen}.} other {With nothing held, the {turned} locks {way}, {seen}.}}} other {{turns, select, yes {With the {held} held, the {turned} turns {way}, {seen}.} other {With the {held} held, the {turned} locks {way}, {seen}.}}}}',
  'fact.moves':
    '{still, select, yes {The {member} stands still.} other {The {member} turns {way} {turns} for each turn of your hand.}}',
  'fact.held by hand': 'The {member} is pushed {way} against the hand that holds it: {torque}.',

  // One-way clutches, and what gives a fault away.
  'one-way':
    'Hold the {hold, select, inner {inner} other {outer}} race of the {device} (the {held}) and turn the {hold, select, inner {outer} other {inner}} (the {turned}): {state, select, open {it turns freely both ways, and holds nothing.} locked {it locks both ways.} other {{seen}, fitted {fitted, select, other_way_up {the other way up} other {as described}}, it turns {free} freely and locks {locked}.}}',
  'one-way.none': 'This train has no one-way clutch.',
  'one-way.turned': 'This one was found fitted the other way up.',
  'one-way.legend':
    'One way it should drag lightly and the other lock solid within a few degrees: try it at several angles. The words hold only with all four things: which race is held, which turns, seen from which end, which face is up.',
  fault:
    '{name}: {is, select, will_not_apply {will not apply} will_not_release {will not release} slips {slips} leaks {its circuit leaks} parted {parted from its devices} seized {seized} backwards {backwards} left_out {left out} stripped_at {stripped at {place}} join {stripped} never_flows {never flows} always_flows {always flows} no_current {no current} swapped {wires swapped with {place}} spring_broken {spring broken} stuck {stuck in position {place}} line_leaks {leaks} blocked {blocked} joined {joined to {place}} other {stripped}}',
  'sign.bench':
    'On the bench: {count, plural, =0 {with nothing held} other {with the {held} held}}{air, plural, =0 {} other { and the {on} on air}}, the {turned} {turns, select, yes {turns {way}, where it should lock} other {locks {way}, where it should turn}}, {seen}.',
  'sign.bench.none': 'On the bench: no check with two things held or applied shows it.',
  'sign.road':
    '{end, select, drive {{is, select, slips {On the road: {gear} slips under load; above what is still carried the engine runs up.} neutral {On the road: {gear} does not drive.} tied_up {On the road: {gear} is tied up.} drives {On the road: {gear} drives at a ratio of {ratio}, where it should not.} other {On the road: {gear} drives at a ratio of {ratio} instead of {was}.}}} coast {{is, select, slips {On the road: {gear} slips on coast, and brakes less than it should.} neutral {On the road: {gear} has no engine braking, where it should have.} tied_up {On the road: {gear} is tied up on coast.} drives {On the road: {gear} has engine braking, where it should not.} other {On the road: {gear} turns the engine on coast at a ratio of {ratio} instead of {was}.}}} other {{is, select, slips {Pushed backwards: {gear} slips.} neutral {Pushed backwards: {gear} does not turn the engine, where it should.} tied_up {Pushed backwards: {gear} is tied up.} drives {Pushed backwards: {gear} turns the engine, where it should not.} other {Pushed backwards: {gear} turns the engine at a ratio of {ratio} instead of {was}.}}}}',
  'sign.road.none': 'On the road: no gear shows it.',
  'sign.free':
    '{count, plural, one {There the speed of the {members} is no longer settled.} other {There the speeds of the {members} are no longer settled.}}',
  'sign.fast':
    '{end, select, drive {In {gear} the {member} spins fast: {speed} times the speed of the input.} other {In {gear} the {member} spins fast on coast: {speed} times the speed of the output.}}',

  // What is wrong with a file, in one grammar: what, where it helps the name, the way out.
  'problem.too large': 'too large: {characters} characters; at most {most} are read',
  'problem.bad character':
    'bad character: {code}{turns, select, yes {, which turns the letters behind it round; take it out} other {; save the file as UTF-8 text and take it out}}',
  'problem.syntax':
    '{what, select, indent {wrong indent: a line must stand right under the first of its section, or further in} tab {tab for an indent: use blanks} unclosed_bracket {unclosed bracket: close it, with a comma between entries} unclosed_quote {unclosed quote: close it on the same line} missing_comma {missing comma between two entries} second_colon {second colon in one entry: put the text between quotes} needs_quotes {text that begins with a special character: put it between quotes} escape {unknown escape after a backslash: use single quotes} key {unreadable key: a key is a name, a colon and a blank} other {unexpected text: an entry is a name, a colon, a blank and a value}}',
  'problem.merge mark':
    'merge mark: two copies of the file were put together here; keep what is right of both, and take the lines of marks out',
  'problem.several documents': 'second train in one file: keep each in a file of its own',
  'problem.refused':
    '{what, select, anchor {YAML anchor: write the text out where it is needed} alias {YAML alias: write the text out where it is needed} tag {YAML tag: leave it out} merge_key {YAML merge key: write the entries out} other {YAML directive: leave it out}}',
  'problem.too deep': 'too deep: at most {most} levels of brackets and indents are read',
  'problem.duplicate key': 'duplicate key: {name}; keep one of them',
  'problem.unknown key':
    'unknown key: {name}{has, select, yes {; did you mean {near}?} other {; leave it out}}',
  'problem.misplaced key': 'misplaced key: {name} cannot stand beside {beside}; keep one of them',
  'problem.missing key': 'missing key: add {names}',
  'problem.expected keys':
    'expected entries, as in {form}{has, select, yes {, not {found}} other {}}',
  'problem.expected': '{what}{has, select, yes {, not {found}} other {}}',
  'problem.newer version':
    'newer version: {version}; this Holdturn reads up to {newest}, so bring it up to date',
  'problem.too many':
    '{what, select, members {too many members: {count}; at most {most} are read} other {too many devices: {count}; at most {most} are read}}',
  'problem.unknown set':
    'unknown set: {name}{has, select, yes {; did you mean {near}?} other {; name one of the sections under sets}}',
  'problem.unknown part':
    'unknown part: {part} of the {set} set{has, select, yes {; did you mean {near}?} other {; it has {names}}}',
  'problem.unknown wheel':
    'unknown wheel: {name} of the {set} set{has, select, yes {; did you mean {near}?} other {; name one of its wheels}}',
  'problem.unknown gear pair':
    'unknown gear pair: {name}{has, select, yes {; did you mean {near}?} other {}}',
  'problem.unknown device':
    'unknown device: {name}{has, select, yes {; did you mean {near}?} other {; name one that stands under devices}}',
  'problem.not applied': 'one-way clutch in a range: {name}; nobody applies it, so leave it out',
  'problem.inside out':
    'inside out: {inner} is not smaller than {outer}; give the outer diameter first',
  'problem.ends reversed':
    'ends reversed: the least, {least}, is more than the most, {most}; swap or correct them',
  'problem.two units':
    'two units: the least is {least} and the most {most}; write both in the unit of their source',
  'limit.ends':
    '{kind, select, both {{least} to {most}} least {at least {least}} other {at most {most}}}',
  'problem.limit doubted':
    'limit to be looked at: {of} would have {job}, and the train file has {file}{by, select, unit {: were inches and millimetres taken for each other?} point {: did a point slip?} wide {, which is far narrower;} other {, which is far off;}} {way, select, asked {correct it, or say that it is meant} other {correct it, or, if it is meant, write it again with sure: yes behind it}}',
  'problem.limit in two units':
    'limit in two units: a limit of {name} has one end in millimetres and one in inches; write both in the unit of their source',
  'problem.nothing measured':
    'nothing measured: {name}{has, select, yes {; did you mean {near}?} other {; tell in the train file what is measured of it, under packs, endplay, preload, bands or wear}}',
  'problem.other kind':
    'wrong sizes: {name} is a {kind, select, clutch {multi-plate clutch} brake {multi-plate brake} band {band} pawl {park pawl} one_way {one-way clutch} other {device}}; give its own, or {kind, select, clutch {a torque} brake {a torque} band {a torque} pawl {a torque} one_way {one torque Nm} other {a torque}}',
  'problem.no plates': 'no plates: {name} is no multi-plate clutch or brake; name one that is',
  'problem.not a band': 'no band: {name} is none; name one under devices that is',
  'problem.no band':
    'no band: {name}{has, select, yes {; did you mean {near}?} other {; tell under bands of the train file how it is set}}',
  'problem.no preload':
    'no preload: {name}{has, select, yes {; did you mean {near}?} other {; tell it under preload of the train file}}',
  'problem.no wear':
    'no wear: {name}{has, select, yes {; did you mean {near}?} other {; tell under wear of the train file what is measured}}',
  'problem.no end play':
    'no end play: {name}{has, select, yes {; did you mean {near}?} other {; tell it under endplay of the train file}}',
  'problem.no pack':
    'no pack: {name}{has, select, yes {; did you mean {near}?} other {; tell its plates under packs of the train file}}',
  'problem.listed twice': 'listed twice: {name}; once is enough',
  'problem.name taken':
    '{by, select, set {name taken: {name} is a set already; choose another} gear_pair {name taken: {name} is a gear pair already; choose another} device {name taken: {name} is a device already; choose another} other {name taken: {name} is joined already; put all its members in one list}}',
  'problem.reserved name': 'reserved name: {name} has a meaning of its own; choose another',
  'problem.name of nobody':
    'name of nobody: {name}{has, select, yes {; did you mean {near}?} other {; name what stands in this file}}',
  'problem.told alike':
    'two by one name: {other} goes by {said} too, and {name} must be told from it; give one of them another name',
  'problem.not a member':
    '{is, select, set {not a member: {name} is a set; name a part of it, as in {name}.carrier} gear_pair {not a member: {name} is a gear pair; name the member of one of its wheels} device {not a member: {name} is a device; name a member that it holds} other {not a member: {name} is a join; name a member of it}}',
  'problem.joined to itself': 'joined to itself: {name}; name another member',
  'problem.case cannot turn':
    '{end, select, input {the case cannot turn: name another member as the input} other {the case cannot turn: name another member as the output}}',
  'problem.end taken':
    '{end, select, input {the output is the input: {member} turns with {by}; name the member that drives the load} other {one output by two names: {member} turns with {by}; name it once}}',
  'problem.planet as an end':
    'a planet as the output: {member} goes round with its carrier; is a member on the axis meant?',
  'problem.forward against':
    'most gears that drive turn the output the other way than {key} says: is it seen from the input end?',
  'problem.forward taken':
    'the gears drive the output both ways; forward is taken to be {way}, as most of them go: write {key}, or the other way',
  'problem.cannot share':
    'cannot share: {name} has no planets that another set can use; share those of a plain, pair or stepped set',
  'problem.shares in a circle':
    'sharing in a circle: {names}; one of them must have planets of its own',
  'problem.planets differ':
    'planets differ: {planets} here, {there} in the {set} set, whose planets they are; make them equal',
  'problem.meshes itself': 'wheel in mesh with itself: {name}; name the other wheel',
  'problem.none carried':
    'neither is carried: {a} and {b} both turn on the main axis and cannot mesh; name one of them under carried',
  'problem.ring does not fit':
    '{kind, select, one {ring does not fit: {ring} teeth in the {set} set, where {from} close over the sun and the planets; profile shift allows {allowance} more or less; count again} least {ring does not fit: {ring} teeth in the {set} set, where the sun and the planets need {from} or more; profile shift allows {allowance} less; count again} other {ring does not fit: {ring} teeth in the {set} set, where {from} to {to} close over the sun and the planets; profile shift allows {allowance} more or less; count again}}',
  'problem.planets not evenly spaced':
    '{has, select, yes {planets not evenly spaced: {planets} in the {set} set, where {rule} = {sum} does not divide by {planets}; it does by {counts}} other {planets not evenly spaced: {planets} in the {set} set, where {rule} = {sum} does not divide by {planets}; count again}}',
  'problem.planets touch':
    'planets touch: {planets} of {teeth} teeth in the {set} set overlap at their tips by {overlap} modules; {most, plural, =0 {none has room} one {at most one has room} other {at most {most} have room}}',
  'problem.centre distances differ':
    'centre distances differ: {name} of the {set} set would sit {distances} modules from the main axis; profile shift allows {allowance} tooth a wheel; count again',
  spacing:
    '{by, select, sun_ring {sun + ring} ring_sun {ring − sun} sides {left + right} other {sun · second step + ring · first step}}',
  'centre distance': '{distance} by its mesh with {name}',
  'problem.no room inside':
    'no room inside: a wheel of {inner} teeth in a ring of {outer}, in {name}; count them again',
  'problem.half written':
    'half written entry: it was cut short, and is left out; what was not kept must be added again',
  'problem.changed since':
    'entry changed since it was written, and left out: strike an entry through, never edit it',
  'problem.strikes nothing': 'strikes nothing: there is no entry {id} in this job',
  'problem.unknown test':
    'unknown test: {name}{has, select, yes {; did you mean {near}?} other {; name a gear, a gear and coast, stall, pressure, fluid, air or turn}}',
  'problem.no scale of speeds':
    "an engine speed tells a ratio by tyre and final drive, or beside a gear that drives: add car: '{' tyre mm: 632, final drive: 3.65 '}' to the train file, or write what a good gear reads and that it drives",
  'problem.unknown outcome':
    '{test} cannot show {name}{has, select, yes {; did you mean {near}?} other {; write {all}}}',
  'problem.unknown carried':
    'nothing to carry: {name}{has, select, yes {; did you mean {near}?} other {; name a member, a device, or NAME.inner or NAME.outer of a one-way clutch}}',
  'problem.unknown teardown part':
    'unknown part: {name}{has, select, yes {; did you mean {near}?} other {; name one that stands under teardown}}',
  'problem.nothing to measure':
    'nothing to measure: {name}{has, select, yes {; did you mean {near}?} other {; name what stands under packs, bands, endplay or preload}}',
  'problem.carried twice': 'carried twice: {name} comes with {by} already; keep one of them',
  'problem.comes off too early':
    '{itself, select, yes {covered by itself: {part}; name another part} other {comes off too early: {part} is under {cover}, which must stand before it}}',
  'problem.closes too early':
    '{part} closes {name}, but {later}, which sets it or brings a gear of it, goes on later: it is measured after that; let the last of them close it',
  'problem.feeds all':
    '{part} feeds every clutch, brake and band: taken for a valve body, which covers the ports in the case, so plan puts air on everything before it goes on; leave feeds out of a valve body, and in a pump or a support name only what it alone lets through',
  'problem.not carried': 'forgotten part: nothing carries {name}; let a part carry it',
  'problem.and more':
    '{count, plural, one {and one more like these} other {and {count} more like these}}',
  'problem.member carries nothing':
    'idle member: {name} touches only {touched}, so it can carry no load; join it, or give it a device',
  'problem.set stands alone':
    'idle set: nothing but {name} touches any of its members; join them, or give them devices',
  'problem.device does nothing':
    'idle device: {name} joins members that cannot turn against each other anyway; look at its names',
  'problem.device never applied': 'idle device: {name} is applied in no gear; add it to one',
  'problem.oil':
    '{is, select, unfed_line {nothing gives this line oil: {name}{has, select, yes {; did you mean {near}?} other {; say what feeds it}}} unknown_solenoid {no such solenoid: {name}{has, select, yes {; did you mean {near}?} other {; name one of the solenoids}}} unknown_range {no such range: {name}{has, select, yes {; did you mean {near}?} other {; name one of the ranges}}} unknown_gear {no such gear in this range: {name}{has, select, yes {; did you mean {near}?} other {; name one of its gears}}} range_without_position {the selector has no position {name}, and the ranges do; say what it feeds there, [] for nothing} never_asked {no gear gives {name} current, and none names its pressure; name it where it has some, or take it out} no_chamber {nothing here brings oil to {name}; give its line, or say that something else moves it} other {only {name} itself feeds what pushes it, so it never moves; name what moves it first}}',
  'problem.one cause':
    '{mend, select, turned {turned-round one-way clutch: look at {name} first; with {key},} devices {exchanged devices: look at {name} and {other} first; each with the members of the other,} members {exchanged members: look at {name} and {other} first; each where the file has the other,} other {other member: look at {name} first; with {other} in place of {was},}} {gears, plural, one {nothing is odd in the gear named below} other {nothing is odd in any of the # gears named below}}',
  'problem.gear is neutral': 'neutral gear: {name} drives nothing; look at what it applies',
  'problem.oil differs':
    '{does, select, applies {oil applies {device} in {gear}, and the ranges do not} other {no oil applies {device} in {gear}, and the ranges do}}; look at its line, and at what the gear applies',
  'problem.oil unsettled':
    '{is, select, chase {valves chase each other in {gear}, and nothing comes to rest} short {an open way leads from the pump to the exhaust in {gear}: no line has pressure to rely on} other {which valve moves first decides what {gear} applies}}; look at what pushes them',
  'problem.gear ties up': 'tied-up gear: {name} lets nothing turn; look at what it applies',
  'problem.neutral drives': 'driving neutral: {name} drives the output; look at what it applies',
  'problem.counts differ':
    'counts differ: the frictions of {name} are {counts}, and a friction disc has two faces; count the plates, and correct what is wrong',
  'problem.counted':
    '{faces, select, yes {{count, plural, one {one face} other {{count} faces}}} other {{count, plural, =0 {none} other {{count}}}}} under {section}',
  'problem.limit without figures':
    'limit without figures: a limit of {name} tells neither least nor most, so nothing is judged by it; add one',
  'problem.limits turned round':
    'limits turned round: {name} has a least that is more than its most; swap or correct them',
  'problem.shelf out of reach':
    'shelf out of reach: by the sizes of the file no part of it brings {name} inside its limits; look for a size, a plate or a unit that is wrong',
  'problem.shelf too coarse':
    'shelf too coarse: two sizes of {name} lie farther apart than its limits, so some clearances cannot be set; is a size missing?',
  'problem.fitted not on the shelf':
    'fitted part not on the shelf: {name} has one of no size that is listed; measure it again, or add its size',
  'problem.shelf without limits':
    'shelf without limits: {name} needs both a least and a most, or no part can be selected',
  'problem.no friction to share':
    'no friction to share: {name} has limits for each friction, and no friction disc',
  'problem.squash of no cushion':
    'squash of no cushion: only a cushion plate of {name} can have one; it is left out of account',
  'problem.squash without air':
    'squash without air: say under at, for {name}, at what pressure the squash was measured',
  'problem.lonely name': 'lonely name: {name} stands nowhere else; did you mean {near}?',
  'problem.renamed': 'renamed: {old} is called {now} now; it is still read',
  'problem.one body':
    'idle device: {name} joins {a} to {b}, which are one piece, so it can do nothing; name another member',
  expected:
    "{what, select, section {expected entries, a name, a colon and its thing each} two_ends {expected the names of the two ends, the input end first, as in [pump end, cover end]} gear_pairs {expected a gear pair or a list of them} facing {expected input, output, up or down} end {expected input or output} bolts {expected bolts, as in '{' torque: 24 Nm, count: 7, once: yes '}'} torque {expected a torque with its unit, as in 24 Nm, 18 lbft or 72 lbin} volume {expected a volume with its unit, as in 5.4 L or 5.7 qt} fluid_to_fill {expected what is filled in, as in '{' kind: the one in the manual, fill: 5.4 L '}'} closed {expected a list of packs, bands and shafts, as in [turbine shaft]} version {expected the number 1} text {expected text} name {expected a name} member {expected the name of a member} members {expected a list of members, as in [front.sun, rear.sun]} two_members {expected two members, as in [front.sun, case]} devices {expected a list of devices, as in [forward clutch]} wheel_names {expected a list of wheels, as in [idler]} meshes {expected a list of meshes, as in [[sun, idler]]} mesh {expected two wheels, as in [sun, planet] or [ring, planet, internal]} internal {expected the word internal, or nothing} wheel {expected a member and its teeth, as in [layshaft, 43]} teeth {expected a number of teeth, a whole number from 1 to 1000000} two_teeth {expected two numbers of teeth, as in [24, 44]} count {expected a whole number from 1 to 100} way {expected clockwise or anticlockwise} pair_kind {expected external, internal or chain} set {expected a set, as in '{' sun: 30, ring: 66 '}'} gear_pair {expected a gear pair, as in '{' driver: [shaft, 41], driven: [layshaft, 43] '}'} proportion {expected a number from 0 to 1000000} proportions {expected some numbers above 0, or nothing can be shown} minutes {expected a number above 0} under_fifty {expected a number above 0 and below 50} over_fifty {expected a number above 50 and below 100} risk {expected none, low or high} stage {expected in the car, pan off or on the bench} tool {expected nothing, road, rag and light, scan tool, stopwatch, gauge, tachometer, logger, rule, air nozzle, bench or dial indicator} pressure {expected good, low or high} fluid {expected clean, burnt, metal or milky} tests_seen {expected what was seen, as in D 1: drives} outcome {expected what was seen, as in slips or: slips, not sure} part {expected a part, as in '{' carries: [front.sun] '}'} carried {expected a list of members and devices, as in [front.sun, low brake]} part_kind {expected what the part is: shaft, drum, shell, hub, sun, ring, carrier, gear, pack, band, one-way clutch, race, washer, bearing, snap ring, gasket, seal, piston, spring, servo, pawl, pump, support, cover or valve body} part_names {expected a list of parts, as in [sun shell]} note {expected a text of one line, of 1 to 200 characters} yes_or_no {expected yes or no} refit {expected reuse or replace} size {expected a number from 0.001 to 100000 (the wrap of a band to 1440 degrees, a lever to 20)} ring {expected two diameters, the outer first, as in [136, 100]} friction {expected a coefficient of friction from 0.001 to 1} presses {expected uniform pressure or uniform wear} stall_ratio {expected a torque ratio from 1 to 10} tyre {expected the diameter on which the tyre rolls, 200 to 2500 mm, as in 632} final_drive {expected turns of the output for one of the wheels, 0.2 to 20, as in 3.65} capacity {expected a capacity, as in '{' torque Nm: 600 '}'} pack {expected a pack, as in '{' plates: ['{' kind: steel, thickness: 1.80 mm '}'] '}'} plates {expected a list of plates from the piston on, as in ['{' kind: steel, thickness: 1.80 mm '}']} plate {expected a plate, as in '{' kind: steel, thickness: 1.80 mm '}'} plate_kind {expected friction, steel, cushion or backing plate} depth {expected a depth, as in '{' size: 22.20 mm '}'} shelf {expected a shelf, as in '{' part: backing plate, fitted: 5.00 mm, sizes: [4.80 mm, 5.00 mm] '}'} shelf_part {expected backing plate, steel, snap ring or piston} limit {expected a limit, as in '{' least: 0.80 mm, most: 1.20 mm, source: manual p. 12, by: HT '}'} length {expected a length with its unit, as in 0.42 mm, 0.017 in, 17 thou or 1/64 in} lengths {expected a list of lengths with their units, as in [0.42 mm, 0.44 mm]} air {expected a pressure with its unit, as in 300 kPa, 3 bar or 45 psi} readings {expected readings, as in '{' feeler: [0.42 mm, 0.44 mm, 0.42 mm] '}'} on_air {expected strokes on air, as in '{' pressure: 300 kPa, strokes: [1.12 mm, 1.14 mm] '}'} depth_gauge {expected depths, as in '{' depth: 30.10 mm, edge: 6.40 mm, stack: 22.70 mm '}'} again {expected the part that is in now and what was read, as in '{' fitted: 5.40 mm, read: [1.02 mm] '}'} step_gauge {expected steps, as in '{' fits: 0.80 mm, does not fit: 1.20 mm '}'} end_play {expected an end play, as in '{' limit: '{' least: 0.30 mm, most: 0.60 mm '}' '}'} washer_part {expected washer, race or shim} stack {expected a list of parts, as in ['{' part: case, size: 80.00 mm, gap: opens '}']} band_setting {expected how a band is set, as in '{' pitch: 1.50 mm, lever: 1.5 '}'} lever {expected a lever ratio from 0.001 to 20, as in 1.5} rod_part {expected servo rod, apply rod or apply pin} turns {expected a number of turns, 0 to 100, as in 2.5 for two and a half} wear_check {expected what is measured, as in '{' measure: bushing, limit: '{' most: 0.15 mm '}' '}'} wear_kind {expected bushing, planet side, gear to case, gear to crescent, gear side, ring gap, ring side, drum dish, spline play, thickness or spring length} band_readings {expected readings of a band, as in '{' turns: 2.5 '}' or '{' travel: [3.10 mm] '}'} preload {expected a preload, as in '{' turning: '{' least: 0.6 Nm, most: 1.4 Nm '}' '}'} preload_part {expected shim, washer or spacer} torque_limit {expected a limit of a torque, as in '{' least: 0.6 Nm, most: 1.4 Nm, source: manual p. 12, by: HT '}'} force {expected a force with its unit, as in 22 N, 5 lbf or 2.2 kgf} torques {expected a list of torques with their units, as in [1.2 Nm, 1.3 Nm]} forces {expected a list of forces with their units, as in [22 N, 23 N]} pull {expected forces on a cord and its radius, as in '{' force: [22 N], radius: 45 mm '}'} bearings {expected new or used} preload_readings {expected readings of a preload, as in '{' turning: [1.2 Nm] '}' or '{' gap: [0.14 mm] '}'} play_kind {expected end play or backlash} play_readings {expected readings of an end play, as in [0.82 mm, 0.84 mm] or '{' play: [0.82 mm], again: '{' fitted: 2.00 mm, read: [0.44 mm] '}' '}'} sure {expected yes, where a limit far from the train file’s is meant} limit_of {expected what the limit is of: clearance, each friction, friction, steel or cone of a pack; clearance or travel of a band} wear_readings {expected readings, as in '{' read: [0.08 mm] '}' or '{' bore: [38.10 mm], shaft: [38.03 mm] '}'} stack_part {expected a part, as in '{' part: case, size: 80.00 mm, tolerance: 0.10 mm, gap: opens '}'} opens_or_fills {expected opens or fills} controls {expected controls, as in '{' selector: '{' D: [drive] '}', solenoids: … '}'} lines {expected a list of lines, as in [drive]} normally {expected open or closed, of a switching one high or low} solenoid {expected a solenoid, as in '{' bleeds: signal, normally: open '}'} solenoids {expected a list of solenoids, as in [shift A]} valve {expected a valve, as in '{' away: [signal], positions: ['{' apply: exhaust '}', '{' apply: drive '}'] '}'} pressures {expected a list of pressures, as in [120 kPa]} positions {expected two positions or more, as in ['{' apply: exhaust '}', '{' apply: drive '}']} one_or_two_lines {expected one line or two, as in [drive, reverse]} ball {expected a ball, as in '{' from: [drive], to: apply '}'} orifice {expected an orifice, as in '{' from: drive, to: signal '}'} servo {expected chambers, as in '{' applies: [second apply] '}'} side {expected applies or releases} job {expected the number 1, the form of job files} entry {expected one thing told, as in reading: '{' low brake: '{' feeler: [0.42 mm] '}' '}'} photograph {expected a photograph, as in IMG_0012.jpg or '{' file: IMG_0012.jpg, part: sun shell '}'} installed {expected a part that went on, as in sun shell or '{' part: sun shell, replaced: yes '}'} built {expected a task of the build, as in '{' task: 8, of: sun shell '}', '{' task: 8.1, went: right '}', 8 sound, 8 stop or start 2} unbuilt {expected the step from which all was taken off again, and why, as in '{' step: 6, why: rear ring not home '}'} went {expected right, wrong or found} time {expected a time, as in 2026-11-25T12:40:07.000Z or 2026-11-25T13:40:07.000+01:00} initials {expected initials, 1 to 8 letters and digits, as in TW} id {expected the id of an entry, 8 letters and digits} other {expected a device, as in '{' brake: rear.carrier '}'}}",

  // Tables and headings.
  state: '{state, select, driving {drives} neutral {neutral} other {tied up}}',
  'both ways': '{forward}; in reverse {reverse}',
  coast: '{state, select, driving {drives the engine} neutral {runs free} other {tied up}}',
  kind: '{kind, select, clutch {clutch} brake {brake} band {band} pawl {park pawl} one_way {one-way} other {device}}',
  'device.state':
    '{state, select, applied {applied} released {released} holding {holding} over_running {over-running} other {free}}',
  braking:
    '{state, select, driving {{braking, select, yes {yes} other {no}}} neutral {no} other {tied up}}',
  'on.nothing': 'nothing',
  head: `{head, select,
    device {device} kind {kind} state {state} slip {slip} torque {torque} member {member}
    speed {speed} pin {on its pin} set {set} power {power in} wheel {wheel} meshing {meshes with}
    gear {gear} on {on} ratio {ratio} holding {holding} braking {engine braking}
    coast {on coast} step {from > to} release {off-going} apply {on-coming} both {overlap}
    neither {gap} turns {turns} part {part}
    test {test} seen {seen} sure {sure} chance {chance} leaves {would leave}
    shows {would show} known {how that is known}
    passes {passes, N·m} spare {margin} first {slips first}
    must {must carry, N·m} can {can carry, N·m}
    mistake {mistake} made {made} felt {felt at step} instead {instead} until {until}
    way {by} clearance {clearance} spread {spread} worst {worst place} rank {choice} size {size}
    gives {gives} give {± at worst} likely {± likely} then {then} limit {limit} verdict {verdict}
    stacks {of 1000 stacks} leave {leave at most} measure {measured}
    own {before final drive} other {}}`,
  severity: '{severity, select, error {error} other {warning}}',
  'check.summary':
    '{errors, plural, =0 {{warnings, plural, =0 {{file} is a train: nothing wrong found.} one {{file} is a train: one warning.} other {{file} is a train: {warnings} warnings.}}} one {{file} is not a train yet: one error, {warnings, plural, one {one warning} other {{warnings} warnings}}.} other {{file} is not a train yet: {errors} errors, {warnings, plural, one {one warning} other {{warnings} warnings}}.}}',
  'flow.title':
    '{named, select, yes {{train}, gear {gear}: {count, plural, =0 {nothing} other {{on}}} on} other {{train}: {count, plural, =0 {nothing} other {{on}}} on}}',
  'flow.drive':
    '{state, select, driving {{sense, select, reverse {Under power it drives in reverse at a ratio of {ratio}.} direct {Under power it drives direct, at a ratio of {ratio}.} overdrive {Under power it drives in overdrive at a ratio of {ratio}.} other {Under power it drives at a ratio of {ratio}, a reduction.}}} neutral {Under power it is in neutral: nothing reaches the output.} other {Under power it is tied up: the input cannot turn.}}',
  'flow.before final': 'Before the final drive the ratio is {ratio}.',
  'flow.efficiency':
    '{state, select, runs {After mesh losses {percent} % of the power comes out.} other {With mesh losses it is self-locking: no torque at the input turns it.}}',
  'flow.coasting':
    '{travels, select, reverse {On coast in reverse} other {On coast}} {state, select, driving {the output turns the engine: there is engine braking, at a ratio of {ratio}.} neutral {it runs free: there is no engine braking.} other {it is tied up: the output cannot turn.}}',
  'flow.rollback':
    '{free, select, rolls {{held, select, rolls {On a hill it rolls {travels, select, reverse {forward} other {back}}, even with the input held.} other {On a hill it rolls {travels, select, reverse {forward} other {back}} with the input free; with the input held, {heldCount, plural, =0 {it is held} other {it is held by the {heldBy}}}.}}} other {On a hill it does not roll {travels, select, reverse {forward} other {back}}: {freeCount, plural, =0 {it is held} other {it is held by the {freeBy}}}.}}',
  'flow.power': 'Under power',
  'flow.why': 'Why',
  'flow.coast': 'On coast',
  'flow.coast.why': 'Why, on coast',
  'flow.coast.reverse': 'On coast in reverse',
  'flow.coast.reverse.why': 'Why, on coast in reverse',
  'flow.rollback.free': 'Rolled on a hill, the input free',
  'flow.rollback.held': 'Rolled on a hill, the input held',
  'flow.legend':
    '{end, select, drive {Speeds: turns for one turn of the input.} coast {Speeds: turns for one turn of the output.} other {Speeds: in the unit of those that are given.}} {unit, select, input {Torques: times input torque; a device’s is on the member it names first.} given {Torques: times the torque at the first given speed; a device’s is on the member it names first.} other {Torques: times output torque; a device’s is on the member it names first.}} Plus is {plus}, {seen}. Power in: what the member brings into the set, times the power put in.',
  'flow.more': 'Coast and rolling back in full, and every mesh: --all.',
  'gears.none': 'The file names no gears; ask for some devices with --on.',
  'gears.more': 'One gear with its reasons: --range RANGE --gear GEAR, or --on "DEVICE,DEVICE".',
  'chart.title':
    '{train}: {devices, plural, one {{devices} friction device} other {{devices} friction devices}}{pawls, plural, =0 {} one { and a park pawl} other { and {pawls} pawls}}, {combinations, plural, one {{combinations} combination} other {{combinations} combinations}}\n{driving, plural, =0 {None drives} one {{driving} drives} other {{driving} drive}}, {neutral, plural, one {{neutral} is neutral} other {{neutral} are neutral}}, {tied, plural, one {{tied} is tied up} other {{tied} are tied up}}.',
  'chart.all': 'Every combination',
  doing:
    '{doing, select, on {on} idle {idle} holding {holds} over_running {over-runs} other {off}}',
  'chart.named': 'Gears that the ranges name',
  'chart.unnamed': 'Gears that no range names',
  'chart.steps': 'Shifts by one device, and what an overlap or a gap between two gives',
  'chart.through':
    '{state, select, driving {{named, select, yes {drives: {gear}} other {drives at {ratio}}}} neutral {neutral} other {tied up}}',
  'chart.more':
    'Every combination, neutral and tied up too: --all. What each device does in each gear, for a spreadsheet: --csv.',
  'hand.turns': 'It turns',
  'hand.locks': 'It locks',
  'hand.legend':
    'Turns: for one turn of the hand. Torques: times the torque of the hand. Plus is {plus}, {seen}.',
  'faults.title':
    '{train}: {faults, plural, one {one fault} other {{faults} faults}}{pairs, plural, =0 {} one { and one pair} other { and {pairs} pairs}}, against {gears, plural, one {one gear} other {{gears} gears}}',
  'faults.caution':
    'Caution: a train that ties up can lock the driven wheels. Road-test slowly, away from traffic, and stop at the first bind; keep out from under wheels that turn on a hoist; no stall test before the pressure is known to be right.{air, select, yes { Air checks: at the maker’s limit at most, a rag over the port, fingers out.} other {}} What the unit’s maker says comes first.',
  'faults.legend':
    'Two lines each: under power, and below it on coast, the way the healthy gear travels. A dot: as the healthy train. A number: another ratio, input speed over output speed. --: neutral, or free on coast. Where a gear drives nothing and reverse is otherwise: forward / in reverse. {tied}: tied up. {slips}: as it should up to the load that is still carried, above it the engine runs up.',
  'faults.apart': 'no road test tells these apart',
  'faults.signs': 'What shows first',
  'faults.silent': 'These change nothing in any gear',
  'faults.healthy': 'healthy',
  'faults.more':
    'Two faults at once: --pairs. Some faults: --only "NAME: FAULT, NAME: FAULT". Exact fractions: --json. For a spreadsheet: --csv.',
  'faults.cell': '{state, select, neutral {--} slips {slips} other {tied}}',
  'faults.column':
    '{column, select, fault {fault} class {class} bench {on the bench} road {on the road} drive {{gear} under power} coast {{gear} on coast} other {{gear} on coast in reverse}}',

  // Suspects: causes, tests, what was seen, and what to test next.
  cause:
    '{cause, select, low_line_pressure {low line pressure} high_line_pressure {high line pressure} stator_slips {the converter’s stator slips} engine_weak {a weak engine} selector_linkage {the selector linkage} control {the control stays in one gear} nothing_wrong {nothing wrong in the train} other {several faults}}',
  test: '{test, select, under_power {{name} under power} coast {{name} on coast} noise {noise in {name}} shift {shift {name}} engagement {N to {name}} stall {stall in {name}} slip_log {slip in {name}, by a logger} manual_shift {gears by the lever alone} pan {pan and magnet} valve_body {valve body} build_record {record of the build} seal_rings {seal rings in the feed of the {name}} seals {piston seals of the {name}} one_way_check {{name} turned in the hands, out of the unit} pump {pump taken apart} inspection {{name} taken apart and looked at} fluid {fluid} codes {codes and the commanded gear} selector {selector at the unit} filter {filter} end_play {{has, select, yes {end play of the {name} set} other {end play}}} pressure {{has, select, yes {line pressure in {name}} other {line pressure}}} device_pressure {pressure at the {name}} stray_pressure {pressure where there should be none, at the {name}} engine {the engine by itself} converter {the converter’s stator by hand} air_check {air check of the {name}} band_check {adjustment and travel of the {name}} other {hand check}}',
  'test.standing': '{name} with the engine running',
  'test.hand':
    '{name} turned {way}{count, plural, =0 {} other {, {held} held}}{devices, plural, =0 {} other {, {on} on}}',
  outcome:
    '{word, select, drives {{has, select, yes {drives at {ratio}} other {drives}}} brakes {{has, select, yes {brakes at {ratio}} other {brakes}}} slips {slips} no_drive {no drive} ties_up {ties up} another_ratio {another ratio} runs_free {runs free} turns {turns} locks {locks} normal {normal} high {high} low {low} good {good} flares {flares} late {late} harsh {harsh} none {none} quiet {quiet} growls {growls} clear {clear} set {set} blocked {blocked} in_place {in place} out_of_place {out of place} right {right} too_big {too big} too_small {too small} loose {loose} tight {tight} thud {thud} hiss {hiss} nothing {nothing} clean {clean} burnt {burnt} metal {metal} milky {milky} holds {holds} gears_come {the gears come} gears_missing {gears are missing} friction {friction material} free {free} sticks {sticks} worn {worn} complete {complete} part_missing {a part is missing} wrong_way_round {fitted wrong way round} cut {hard or cut} one_way {turns one way and locks the other} turns_both_ways {turns both ways} locks_both_ways {locks both ways} wrong_way {turns the wrong way} weak {weak} pressure {pressure} sound {sound} broken {broken} as_it_should {as it should} other {not as it should}}',
  'seen.said': '{test}: {outcome}',
  'seen.speed': '{reading}, a ratio of {from} to {to}',
  'seen.against': '{test}: {outcome}, not {would}',
  'seen.of': '{evidence} (of {suspects}{more, plural, =0 {} other { and {more} more}} only)',
  'seen.sure': '{sure, select, sure {sure} other {not sure}}',
  'suspects.title': '{train}: what may be wrong',
  'suspects.nothing seen': 'Nothing has been seen yet: this is how often things are wrong.',
  'suspects.seen': 'Seen',
  'suspects.stage':
    'Where the unit is, by the job: {stage, select, on_the_road {on the road} on_the_hoist {on the hoist} open {opened} other {in pieces; only what can be looked at on the bench is asked, and nothing of the car}}.',
  'suspects.ranked': 'Suspects, the likeliest first',
  'suspects.bracket':
    '{place}. {chance} %: {count, plural, one {{suspect}} other {{count} suspects that nothing seen so far surely tells apart}}',
  'suspects.starves':
    '{suspect} (it carries nothing where it slips; a leak takes the pressure of what does)',
  'flow.slipping':
    '{count, plural, one {With {devices} slipping, this is the gear above the load that it still carries. Below it the gear is as it should be; between, speeds lie between the two, and where this one is free they rise with the engine.} other {With {devices} slipping, this is the gear above the load that they still carry. Below it the gear is as it should be; between, speeds lie between the two, and where this one is free they rise with the engine.}}',
  'suspects.one': '{chance} %  {suspect}',
  'suspects.hidden':
    '{count, plural, one {and one more, {chance} %} other {and {count} more, together {chance} %}}',
  'suspects.for': 'For: {evidence}',
  'suspects.against': 'Against: {evidence}',
  'suspects.others':
    '{count, plural, one {One other suspect: {chance} %. All of them: --all.} other {{count} other suspects, together {chance} %. All of them: --all.}}',
  'suspects.enough':
    'The first is likely enough to act on; a test that would make it surer stands below, if there is one.',
  'few.more': '{count, plural, other { and {count} more}}',
  'suspects.legend':
    'Weights, minutes and risks are common practice, not measured, from {file}. The unit’s maker has the last word on every test.',
  'proof.title': 'What it would show of all that was seen',
  'proof.all': '{suspect}: explains everything that was seen.',
  'proof.not':
    '{count, plural, one {{suspect}: one thing that was seen it does not explain.} other {{suspect}: {count} things that were seen it does not explain.}}',
  'proof.by': '{by, select, train {proved on the train} other {shop’s experience}}',
  'proof.shows': '{agrees, select, yes {{outcome}} other {{outcome}: not explained}}',
  'suspects.next': 'Next best test',
  'next.best':
    '{test}: {minutes} min{opening, plural, =0 {} other {, and {opening} min to open the unit so far or to shut it}}, with {tool}; risk: {risk}.',
  'next.none': 'None: no test is left that would tell the suspects apart.',
  'next.again': 'It has been made, and found so: put it right, then try again.',
  'next.held':
    '{shown, select, yes {Stop, no {test}: {first} has to be {must}, and that is not how it was seen; put it right first.} other {Stop, no {test} yet: {first} has to be {must}, and nobody has surely seen it; test that first.}}',
  risk: '{risk, select, none {little} low {low} other {high}}',
  contradiction: 'What was seen does not agree',
  'contradiction.doubt':
    '{count, plural, one {No one thing explains all of it. Without {observations} it may be {causes}.} other {No one thing explains all of it. Without these {count} it may be {causes}: {observations}.}}',
  'contradiction.again': 'Worth looking at again, before anything is opened: {tests}.',
  'next.reread':
    'It was seen already, and does not fit with the rest: look again before anything is opened.',
  'contradiction.more':
    '{count, plural, one {There is one other way to explain it by setting aside as many answers.} other {There are {count} other ways to explain it by setting aside as many answers.}}',
  'cause.at':
    '{cause, select, thrust_washer_left_out {{name}: thrust washer left out or worn away} device_fed_by_mistake {{name}: fed when it should not be} other {{name}}}',
  'test.under':
    '{test}{load, select, light {, lightly driven} heavy {, at full load} other {}}{speed, select, idle {, at idle} fast_idle {, at fast idle} full_throttle {, at full throttle} other {}}{heat, select, cold {, cold} hot {, hot} other {}}',
  'next.then': '{count, plural, one {Next to it: {tests}.} other {Next to it: {tests}.}}',
  'contradiction.pairs':
    '{count, plural, one {No one thing explains all of it; two at once do, and stand below.} other {No one thing explains all of it; two at once do, {count} pairs of them, which stand below.}}',
  'caution.engagement':
    'The foot brake held down, wheels chocked, nobody before or behind the car. At idle only.',
  'caution.shift': 'On the road, by somebody who may drive it, with an eye to traffic.',
  'caution.noise':
    'On the road, by somebody who may drive it. A set that growls is cutting itself: no longer than it takes to hear it.',
  'caution.codes': 'Wires clear of moving and hot parts; nobody reads and drives at once.',
  'caution.selector':
    'Engine off, wheels chocked, park brake on: with its cable off, the lever in the car tells nothing.',
  'caution.filter':
    'Under the car only with it on stands. The fluid may be hot enough to burn, and a full pan is heavy.',
  'caution.end play':
    'Engine off, battery off where the dial needs it; fingers clear of shafts that are pried. Lift a unit with a hoist, or two people, and lock its stand.',
  'caution.device pressure':
    'Wheels chocked, park brake on, hands and hoses clear of belts and exhaust. The fluid is hot and under pressure. Not at full throttle standing: that is a stall test.',
  'caution.band check':
    'Engine off, the lock nut tightened after it. By the unit’s own data only: a band set too tight drags and burns.',
  pair: '{a} with {b}',
  'caution.slip log':
    'On the road, by somebody who may drive it, while another reads the logger. Part throttle only: lift off as soon as it slips.',
  'caution.manual shift':
    'Only if the unit’s maker allows it: with the control unplugged the pressure may be at its highest, shifts are harsh, and a low gear can over-speed an engine. Slowly, away from traffic.',
  'caution.pan':
    'Under the car only with it on stands. The fluid may be hot enough to burn, and a full pan is heavy.',
  'caution.valve body':
    'Springs and check balls jump out: glasses on, over a tray. Keep the valves in their order.',
  'caution.seal rings':
    'Lift a unit with a hoist, or two people, and lock its stand. Edges of bores cut.',
  'caution.seals':
    'Springs under snap rings store hundreds of newtons: the maker’s compressor, centred, the face out of line, eye protection on.',
  'caution.one-way check':
    'Fingers clear of its springs: one that jumps out takes rollers with it. Eye protection on; turn it slowly.',
  'caution.pump':
    'A pump is heavy and drips hot fluid, its edges cut; some have a spring under load. Eye protection on, mark which face of each gear is up.',
  'caution.build record': 'Nothing is touched.',
  'caution.engine':
    'Wheels chocked, park brake on, lever in park; hands, sleeves and hoses clear of belts, fan and exhaust. Exhaust out of the room.',
  'caution.converter':
    'A converter is heavy and full of hot fluid: two people, or a hoist, and a tray under its hub.',
  'caution.stray pressure':
    'On stands, the wheels free and nobody near them, at idle. Hands and hoses clear of belts and exhaust; the fluid is hot and under pressure. A gear in which the train ties up is left at once.',
  'caution.inspection':
    'Springs under snap rings store hundreds of newtons: the maker’s compressor, centred, the face out of line. Lift a unit with a hoist, or two people, and lock its stand. Steels and snap rings cut.',
  stop: '{stops, select, road_test {Stop, no road test} pulling_hard {No hard pull} stall_test {No stall test} other {The unit stays shut}}: {count, plural, =0 {for the same reasons} other {{reasons}}}.',
  'stop.why':
    '{why, select, low_pressure {low pressure burns whatever slips} high_pressure {the pressure is too high} bad_fluid {water or metal in the fluid ruins what still runs} burnt_fluid {the fluid is burnt} ties_up {a train that ties up can lock the wheels} no_drive {what should drive does not, and pulling on it breaks more} drives_in_neutral {it moves with the lever in neutral} end_play {with so much end play it cuts itself} growls {what growls is cutting itself} slips {pulling burns what slips} pressure_unknown {nobody has surely read the pressure} shows_nothing {it would show nothing that is in question} lever_first {the lever may be out of its place, which is looked at first} backwards {nobody lets a car roll backwards to see whether it brakes} not_in_question {nothing that was seen points at it} made {it was made already} in_pieces {the unit is in pieces} other {the fluid is looked at first}}',
  'stop.seen': '{why} ({seen})',
  'stop.left':
    'What can be done meanwhile, {place, select, on_the_road {on the road} standing_still {standing still} on_stands {on stands} other {on the bench}}: {tests}.',
  'test.kind':
    '{test, select, under_power {gears under power} coast {engine braking} noise {listening} shift {shifts} engagement {engagement from N} stall {stall} fluid {fluid} codes {codes} selector {lever and detent} filter {filter} end_play {end play} pressure {line pressure} device_pressure {pressure at a device} stray_pressure {pressure where there should be none} engine {the engine by itself} converter {the converter by hand} air_check {air checks} band_check {adjustment of bands} slip_log {slip by a logger, at part throttle} manual_shift {gears by the lever alone} pan {pan and magnet} valve_body {valve body} build_record {record of the build} seal_rings {seal rings} seals {piston seals} one_way_check {one-way clutches in the hands} pump {the pump taken apart} inspection {taking apart and looking} other {hand checks}}',
  'next.with':
    '{tool, select, nothing {nothing} road {a quiet road} rag_and_light {a rag and a light} scan_tool {a scan tool} stopwatch {a stopwatch} gauge {a pressure gauge} tachometer {a tachometer} logger {a logger} rule {a rule} air_nozzle {an air nozzle} dial_indicator {a dial indicator} other {the bench}}',
  'noise.title': 'Where the noise may be',
  'noise.part':
    '{part, select, planets {planets of the {name} set} pair {the {name} wheels} races {the races of the {name}} other {bearings of the {name}}}: {because, select, turns {at work in every noisy gear and in no quiet one} other {loaded in the noisy gears alone}}{count, plural, =0 {} other {; loaded in {gears}}}',
  // Why it failed: from what was found back to what caused it. Common practice, no source.
  'failure.title': 'Why it failed, from what was found',
  finding:
    '{has, select, yes {{name}: } other {}}{sign, select, burnt {burnt} hot_spots {hot spots} bad_seal {a hard or cut seal} worn_rings {worn rings or their groove} broken {broken or chipped} blued {blued, or loose pins} worn_bushing {a worn bushing} worn_thrust_face {a worn thrust face} worn_splines {worn splines} turns_both_ways {turns both ways} locks_both_ways {locks both ways} wrong_way_round {fitted wrong way round} sound {sound} burnt_fluid {burnt fluid} water {water in the fluid} metal {metal} lining_dust {lining dust} blocked_filter {a blocked filter} worn_pump {a worn pump} stuck_valve {a valve that sticks} worn_converter {a worn or blued converter} other {a blocked cooler}}',
  failure:
    '{root, select, low_pressure {Line pressure too low: it starved what is burnt} high_pressure {Line pressure too high: everything engaged like a hammer} poor_cooling {Too hot: little flow through the cooler, or none} water {Water in the fluid: it loosens linings and rusts what runs} debris {Debris went round: it blocks the filter, scores the pump and jams valves} wrong_fluid {Not the fluid that its linings and seals are made for} leaking_circuit {The circuit of the {name} leaks} wrong_clearance {The clearance of the {name} was not right: too much comes late and slips, too little drags} dragging_device {The {by} dragged against the {name}: the train ties up with the two on together} shock {Shock on the {name}: harsh engagement, or wheels that spun and gripped} no_lubrication {Too little oil came to the {name}} other {The end play at the {name} was not right, or its washer was missing or the wrong way round}}',
  'failure.from': '{failure} ({findings}).',
  'failure.mend':
    'Before the build: {root, select, low_pressure {measure the pump, replace the filter, see that the regulator moves freely; read the pressure before any load} high_pressure {see that the regulator and what controls it move freely; read the pressure before any load} poor_cooling {flush the cooler and its lines both ways and measure the flow, or replace it} water {test the cooler for leaks or replace it; replace every lining; flush the lines} debris {replace or flush the cooler, clean every passage, replace the filter, look into the converter} wrong_fluid {fill what the maker names} leaking_circuit {new seals and rings, measure their bores and grooves, air check before the valve body goes on} wrong_clearance {measure the pack or the band, and choose the part} dragging_device {look for what kept the {by} on: its piston, its check ball, its clearance, its circuit} shock {look at the pressure and the accumulators, and replace the races with it} no_lubrication {open its holes, measure the bushings before it, see which way its washers face} other {measure the end play and choose the washer}}.',
  'failure.legend':
    'Common practice, no source; several may be so at once. What the unit’s maker says comes first.',
  'complaint.unused': 'Of what the driver says, nothing was made of: {parts}.',
  'ask.driver':
    'What does the driver say? In their words, on one line, as in: no reverse, slips in second when hot, flares two to three, harsh into drive, no engine braking, noise in first. Enter for nothing.',
  'ask.understood': 'Taken as seen, not surely: {observations}.',
  'caution.under power':
    'On the road, by somebody who may drive it, with an eye to traffic. On a hoist keep out from under turning wheels, with no loose sleeves; one wheel held makes the other turn twice as fast.',
  'caution.coast':
    'On a quiet downhill road, in reverse at a walk in an empty yard, the foot off the throttle and ready on the brake.',
  'caution.fluid':
    'The fluid may be hot enough to burn: let it cool, or wear long gloves and a face shield. A full pan is heavy.',
  'caution.pressure':
    'Wheels chocked, park brake on, hands and hoses clear of belts and exhaust. The fluid is hot and under pressure. At full throttle a pressure test is a stall test: the same cautions hold.',
  'caution.stall':
    'This can hurt people and burn plates. Only if the unit’s maker allows it: wheels chocked, park brake and foot brake on, nobody before, behind or beside the car, all wheels on the ground; 5 seconds of full throttle at most, two minutes at fast idle in neutral after it; lift off at once if the speed passes the limit.',
  'caution.air check':
    'Goggles on, a rag over the port, fingers out of pistons and servos, air at no more than the maker’s pressure. Hot oil drips from the open pan.',
  'caution.hand check':
    'Seen from the input end. Fingers out of teeth, lugs and splines; turn slowly, and agree who turns and who holds. Lift a unit with a hoist, or two people, and lock its stand.',
  'describe.empty': 'Enter alone: {means}.',
  'describe.further': 'What else is to be told? Enter alone ends.',
  'describe.how':
    'One question after another; answer by the number or in your words, several behind commas. back takes the last answer back, q ends. When a round of questions is whole it is written into {file}.',
  'describe.known': '“{given}” is no answer here: give a number of the list, or what is asked for.',
  'describe.no': 'no, that is all',
  'describe.seen from the input': 'Seen from the input end.',
  'describe.units': 'With its unit: {units}.',
  'describe.yes': 'yes',
  'ask.how':
    'Each question is about one test. Answer y (as it should), n (not as it should), or what it did: {example}. A ? behind an answer says that you are not sure. s skips, p prints what was seen as a file, q ends.',
  'ask.test': '{test}, {minutes} min: {whole}, as it should? ({others})',
  'ask.known':
    'Not an answer: {given}. Type y, n, {others}, s, p or q; ? behind it if you are not sure.',
  'ask.leading': 'Now leading: {suspects}.',
  'ask.leading one': '{suspect} ({chance} %)',
  'ask.leading group':
    '{count, plural, one {# suspect} other {# suspects not told apart}} ({chance} %)',
  'ask.end': 'What was seen, as a file for next time:',

  // The build: what can go wrong in it, what a part asks for, and what hands find.
  mistake:
    '{what, select, jammed {{name}: drags, plates jammed} tight {{name}: drags, set too tight} weak {{name}: does not grip} stays_in {{name}: does not come out} no_hold {{name}: does not hold} backwards {{name}: backwards} seized {{name}: seized} left_out {{name}: left out} out_or_slips {{name}: left out, or worn and slips} unseated {{place}: not home in the {name}} wrong_way_round {{name}: wrong way round} out_of_line {{name}: out of line} miscounted {{name}: plates miscounted} wrong_thickness {{name}: wrong thickness} other {{name}: stripped}}',
  felt: '{felt, select, both_ways {turns both ways} neither_way {turns neither way} clockwise_only {turns clockwise only} other {turns anticlockwise only}}',
  inspection:
    '{inspection, select, look {look} count {count} measure {measure} height {height} clearance {pack clearance} band {band adjustment} end_play {end play} hand_check {hand check} preload {preload} pawl_check {trying the pawl} other {air check}}',
  'part.note':
    '{what, select, inner {Engages inside: {note}} outer {Engages outside: {note}} align {Line up: {note}} other {Photograph: {note}}}',
  'part.faces':
    '{end, select, input {Faces input} output {Faces output} other {Faces}}{way, select, up {{end, select, none { up} other { (up now)}}} down {{end, select, none { down} other { (down now)}}} other {}}{named, select, yes {: {note}} other {}}',
  'part.plates':
    '{frictions, plural, =0 {Count the plates: {steels, plural, one {# steel} other {# steels}}} one {Count the plates: # friction{steels, plural, =0 {} one { and # steel} other { and # steels}}} other {Count the plates: # frictions{steels, plural, =0 {} one { and # steel} other { and # steels}}}}',
  'part.selective': 'Selective: measure, and choose',
  'part.refit':
    '{refit, select, reuse {Goes in again: clean and look it over} other {A new one goes in}}',
  'part.fitted': 'On',
  'plan.title': '{train}: the build in {steps, plural, one {one step} other {{steps} steps}}',
  'plan.caution': 'Take care',
  'plan.caution.of':
    '{what, select, hands {Hand checks put fingers near teeth, lugs and splines: agree who holds and who turns, turn slowly. A member that is free may start to move.} springs {Return springs and snap rings store energy: use the maker’s compressor, keep your face out of line, wear eye protection, and see the ring in its groove all round before you release it.} air {Air checks: at the maker’s pressure at most, eye protection, a rag over the port, fingers out of pistons and servos.} weight {The unit is heavy and slippery: lift it with a hoist or two people, and lock the holding fixture before you turn it over.} other {The unit’s maker has the last word on order, clearances, torques and pressures.}}',
  'plan.coverage':
    '{checks, plural, =0 {No hand check feels any of the {mistakes} mistakes that this build can have: each takes a look, a count, a measurement or an air check.} other {{caught} of the {mistakes} mistakes that this build can have are felt by {checks, plural, one {one hand check} other {{checks} hand checks}}, each at the first step at which a hand can feel it. {proven, select, yes {Fewer checks cannot do it: that is proven.} other {Fewer checks may do: the search was cut off.}} The others take a look, a count, a measurement or an air check.}}',
  'plan.how':
    'In a hand check nothing is applied: turn by hand, both ways. Clockwise is {seen}. Predict first, then write down what was felt.',
  'plan.check':
    '{holds, select, yes {Check {number}. Hold the {hold}, turn the {turn}.} other {Check {number}. Hold nothing, turn the {turn}.}}',
  'plan.right': 'Right: it {felt}.',
  'plan.wrong': 'If it {felt}: {mistakes}',
  'strip.finding':
    '{is, select, worn_splines {Splines worn} scored {Scored} worn_ring_groove {Ring groove worn} bent {Bent} notched {Lugs or teeth notched} worn_bushing {Bushing worn} scored_bore {Bore scored} glazed {Band surface glazed} cracked {Cracked} blocked_hole {Oil hole blocked} chipped {Teeth chipped or pitted} scored_face {Thrust face scored} loose_pins {Pins loose} loose_planets {Planets loose on their pins} blued {Blue from heat} burnt {Linings burnt} worn_linings {Linings worn} hot_spots {Steels with hot spots} wrong_order {Plates in the wrong order} strut_out {Strut or anchor out of place} backwards {Was fitted the wrong way round} warped {Steels warped} worn_ends {Ends worn} slips_both_ways {Turns both ways} locks_both_ways {Locks both ways} marked_rollers {Sprags or rollers marked} broken_springs {Spring broken} marked_track {Track marked} worn_thin {Worn thin} broken_tangs {Tangs broken} rough {Runs rough} falls_apart {Falls apart} worn_groove {Its groove worn} torn {Torn or leaking} hard_or_cut {Hard or cut} cut_seals {Seals cut or hard} stuck_ball {Check ball stuck or leaking} sagged {Sagged} worn_rod {Rod or pin worn} rounded {Tooth rounded} scored_gears {Gears scored} stuck_valve {A valve sticks} other {Metal in it}}',
  'strip.sound': 'Sound',
  'strip.counted':
    'Counted otherwise: {frictions, plural, one {one friction} other {{frictions} frictions}}, {steels, plural, one {one steel} other {{steels} steels}}; the file says {fileFrictions} and {fileSteels}{follows, select, larger {: the stack is thinner by {by}, so the clearance is larger by as much} smaller {: the stack is thicker by {by}, so the clearance is smaller by as much} other {}}',
  'strip.held on':
    'Not yet: {count, plural, =1 {{parts} is over it, and still on} other {{parts} are over it, and still on}}.',
  'strip.kept off':
    'Not yet: {count, plural, =1 {{parts} goes under it, and is still off} other {{parts} go under it, and are still off}}.',
  'plan.late': '{mistake} (strip back to step {step})',
  'plan.stop':
    'Stop. Last step at which these can still be seen, and put right without stripping: {mistakes}.',
  'plan.step':
    '{does, select, height {Height: {name}} tighten {Tighten: {name}} clearance {Pack clearance: {name}} band {Band adjustment: {name}} end_play {End play: {name}} backlash {Backlash: {name}} preload {Preload: {name}} pawl_check {Try it by hand: {name}} air_check {Air check: {name}} other {Fill with fluid}}',
  'plan.first up': 'It begins with the {end, select, input {input} other {output}} end up.',
  'plan.turn over': 'Turn the unit over: {end, select, input {input} other {output}} end up',
  'plan.turned': 'Turned over, and the fixture locked',
  'plan.danger':
    '{danger, select, springs {Springs: the compressor square on, your face out of line, the ring in its groove all round.} air {Air: low first and never above the maker’s pressure; goggles on, a rag over the port, fingers out.} weight {A hoist or two people; see that nothing loose drops out, and lock the fixture before hands go near.} other {Used fluid may be hot: let it cool, or wear long gloves and a face shield.}}',
  'plan.height':
    'Depth gauge from the face of the case, in several places. What stands proud is not home: a plate or a spline is not engaged.',
  'plan.clearance':
    'Feeler between snap ring and backing plate, the plate lifted against the ring, in three or four places all round.',
  'plan.select':
    'Outside the limits: the {part, select, flange {backing plate} backing_plate {backing plate} steel {steel} snap_ring {snap ring} piston {piston} washer {washer} race {race} shim {shim} spacer {spacer} servo_rod {servo rod} apply_rod {apply rod} other {apply pin}} on the shelf sets it. Choose, fit it, and measure again.',
  'plan.read': 'Read: {places}  mean: {mean}',
  'plan.bolts once': 'Used once only: new bolts',
  'plan.draw down':
    'Drawn down evenly, a little at a time{has, select, yes {: {sequence}} other {}}',
  'plan.bolts':
    '{count, plural, =0 {Bolts} one {One bolt} other {# bolts}}{has, select, yes { to {torque}} other {: the torque is not in the file}}; {sourced, select, yes {source: {source}} other {unsourced}}{signed, select, yes {, {by}} other {}}. Your unit’s own data wins',
  'plan.still':
    'After each round of tightening turn the {turn} by hand: it {felt} as before. If it binds, stop and take it off again',
  'plan.air heard': '{sound, select, thud {thud (right)} hiss {hiss} other {nothing}}',
  'plan.air locks':
    '{joins, select, yes {With the air on the {a} and the {b} turn as one} other {With the air on the {a} stands still}}',
  'plan.air check':
    '{holds, select, yes {With the air on hold the {hold}, turn the {turn}.} other {With the air on hold nothing, turn the {turn}.}}',
  'plan.air unseen': 'Hands reach nothing that shows it now: go by the sound.',
  'plan.air doubt':
    'Hiss: a seal leaks, or the port vents by design, which the maker’s manual tells. Nothing: no air gets there, or the piston sticks.',
  'plan.pawl':
    'Engage it by its own rod and lever, as the selector does in park, and look where it drops in. A pawl that does not hold lets the car roll away: it goes no further until this is right.',
  'plan.pawl locks':
    'Engaged, the {a} stands still both ways; released, it comes clear and the {a} turns',
  'plan.pawl check':
    '{holds, select, yes {With it engaged hold the {hold}, turn the {turn}.} other {With it engaged hold nothing, turn the {turn}.}}',
  'plan.one-way':
    'No later hand check feels it backwards, so try it here, before its races are covered. {words} Wrong way: take it out and turn it round. The one-way card has every way to hold it.',
  'plan.assumed':
    '{count, plural, one {Of one part the file does not say what keeps hands off it: the part above it is taken to. Where a hand gets past, say so with under or hidden by, and more checks can be made.} other {Of {count} parts the file does not say what keeps hands off them: the part above each is taken to. Where a hand gets past, say so with under or hidden by, and more checks can be made.}}',
  'plan.fill':
    '{has, select, yes {{fill} goes in} other {How much goes in is not in the file}}{named, select, yes {, {kind}} other {}}; {sourced, select, yes {source: {source}} other {unsourced}}{signed, select, yes {, {by}} other {}}. Your unit’s own data wins',
  'plan.fill level':
    'The level is read as the maker says, warm, and what came out is compared with it',
  'plan.soak':
    'Frictions soaked first in the unit’s own fluid, as long as its maker says; assembled wet',
  'plan.clicks':
    'Turned gently, never pressed: {frictions, plural, one {one click} other {# clicks}}, one for each friction that drops in',
  'plan.catches': 'Catches: {mistakes}',
  'plan.until': '{late, select, yes {{until}, strip to {open}} other {{until}}}',
  'plan.at': '{by}, step {step}',
  'plan.felt': 'Mistakes that a hand check catches',
  'plan.instead': 'Mistakes that no hand check catches',
  'plan.end': 'end',
  'plan.legend':
    'Made: the step at which it can be made. Until: the last step at which it can be caught; “strip to 5”: it is covered by then, and what went on after step 5 comes off again.',

  // The first start of a rebuilt unit.
  'start.heading': 'First start',
  'start.numbered': 'Start {number}. {title}',
  'start.practice':
    'Common practice, with no source: the unit’s maker has the last word on every line, and where the maker says otherwise, do that.',
  'start.title':
    '{step, select, cooler {Cooler flushed} converter {Converter filled and home} fill {Fluid before it turns} prime {Prime at idle} pressure {Pressure before load} ranges {Each range at idle} leaks {Leaks} level {Level, warm} drive {A gentle first drive} other {After the drive}}',
  'start.cooler':
    'Before the unit goes in: flush the cooler and its lines both ways until they run clean, and see that they flow freely. What the old unit shed is in there; a cooler that does not come clean is replaced.',
  'start.converter':
    'Put fluid into the converter, turn it on until it drops home, and measure from it to the face that it is bolted to, as the maker says. It must turn freely before a bolt is tightened: one that is not home breaks the pump at the first start.',
  'start.fill':
    'Put in fluid of the maker’s kind: most of what the unit takes, not all. The rest goes in once the pump has filled the converter and the cooler.',
  'start.prime':
    'A gauge at the line pressure port first, before the engine is started. Chocks at the wheels, park, the parking brake on. Start, and let it idle; no pressure within seconds means switch off. Top it up at once as the level falls. Switch off if the pump howls.',
  'start.pressure':
    'At idle, in park and in neutral, read the gauge at the line pressure port before any range is engaged: too little means switch off. Compare it with the maker’s figures.',
  'start.ranges':
    'Pressure good: both brakes on, at idle, the lever slowly through every range, a few seconds in each. Read the pressure and how long each takes to engage; one that is late or harsh is found now.',
  'start.leaks':
    'Look at the pan, the cooler lines, the output seals and the converter housing: with the engine off, or from where nothing can turn.',
  'start.level':
    'At the temperature and in the range that the maker says, read the level and correct it. Clear what the control unit has learned, where the maker says so; read its codes.',
  'start.drive':
    'Quiet road, light throttle, no kickdown: every gear up and down, then coast. Read ratio and slip in each gear, temperature, codes. Stop at the first flare, slip or bind: go on, and what was built is burnt.',
  'start.after':
    'Leaks, level and codes once more; look at the fluid for metal or foam. Write down the pressures and what the drive was like. Tell the driver what to come back with, and when the level is looked at again.',
  'start.danger':
    '{danger, select, oil {Hot fluid burns, and so do the pan and the cooler lines: let it cool, or wear long gloves and a face shield.} car {The car can start to move: chocks, both brakes, nobody in front or behind. Exhaust goes outside.} wheels {Wheels that turn on a hoist: a hoist or stands that the car’s maker allows, nobody under it, no loose sleeves, and the speed low; one wheel that is held makes the other run at double speed.} other {No stall test on a fresh unit unless its maker asks for one: never on low pressure, with all wheels chocked and both brakes on, 5 seconds at most, then idle in neutral. Some makers forbid it.}}',

  // Packs of plates: lengths, limits, what was measured, and the part from the shelf.
  length: '{first} ({second})',
  limit:
    '{kind, select, both {{least} to {most}} least {at least {least}} other {at most {most}}}; {sourced, select, yes {source: {source}} other {unsourced}}{signed, select, yes {, {by}} other {}}',
  verdict:
    '{verdict, select, inside {inside} too_small {too small} too_big {too big} other {not judged}}',
  plate:
    '{kind, select, friction {friction} steel {steel} cushion {cushion plate} other {backing plate}}',
  'clearance way':
    '{way, select, feeler {feeler} lifted {dial, backing plate lifted} on_air {dial, on air} other {depth gauge}}',
  'remark.no gap':
    'The readings by {way} leave no gap: nothing can turn like that. Read again, and count the plates.',
  'remark.plate missing':
    'Too big by about the thickness of one {kinds}: a plate is missing. Count, before you select anything.',
  'remark.plate doubled':
    'Too small by about the thickness of one {kinds}: a plate is doubled. Count, before you select anything.',
  'remark.other unit':
    '{of, select, place {Place {place}. } friction {Friction {place}. } steel {Steel {place}. } cone {Cone {place}. } other {}}{meant, select, in {Were inches meant? In them the same digits would be inside the limits. Correct the unit.} thou {Were thousandths of an inch meant? In them the same digits would be inside the limits. Correct the unit.} um {Were micrometres meant? In them the same digits would be inside the limits. Correct the unit.} other {Were millimetres meant? In them the same digits would be inside the limits. Correct the unit.}}',
  'remark.point slipped':
    'Was {meant} meant? {read} is far outside, and a point slips easily. Read it again, and correct it; a second reading beside it that says the same stands by it.',
  'remark.digits swapped':
    'Place {place}: were two digits exchanged? {read} is alone, and {meant} would stand with the others. Read it again before anything is chosen.',
  'remark.not possible':
    'Place {place}: {read} is not possible where the limit is {limit}. Nothing is judged by it: strike it, and read again.',
  'remark.sizes apart':
    'A bore of {bore} and a shaft of {shaft} do not belong together: a point has slipped, or a unit is wrong. Measure both again.',
  'remark.uneven torque':
    'The readings go from {least} to {most}: so they prove nothing. A tight spot, a rough bearing or dirt reads like this: turn it some times both ways, find it, and read again.',
  'remark.uneven':
    '{where, select, round {Round the pack the readings differ by {spread}, and the limits are {width} apart. {beyond, select, yes {No part can set that right, so none is chosen.} other {Look before you choose a part.}} A cocked plate, a bent backing plate, a ring that is not home or a feeler that is not held square reads like this: find it, and read again.} teeth {From tooth to tooth the readings differ by {spread}, and the limits are {width} apart. {beyond, select, yes {No part can set that right, so none is chosen.} other {Look before you choose a part.}} A ring gear that is not seated or runs out, dirt or a burr reads like this: find it, and read again.} other {Readings of the same play differ by {spread}, and the limits are {width} apart. {beyond, select, yes {No part can set that right, so none is chosen.} other {Look before you choose a part.}} A dial that has moved, a shaft that was not pushed home both ways, or dirt reads like this: find it, and read again.}}',
  'remark.few places':
    '{places, plural, one {One place only} other {Only {places} places}} with the feeler: take three or four, evenly round, the backing plate lifted against the ring.',
  'remark.squash unknown':
    'Air squashes the cushion plate, and the file does not say by how much: the stroke is not judged. Add squash, with at, to the plate; or use a feeler.',
  'remark.other pressure':
    'The squash is given at {given}, and the stroke was read at {read}: read it again at {given}.',
  'remark.ways differ':
    'By {a} and by {b} the clearance differs by more than a quarter of what the limits allow: find out why. The first is judged.',
  'remark.no limit':
    'No limit in the file, so nothing is judged: add it, from your unit’s own data.',
  'remark.one limit': 'Only one limit in the file, so no part is selected: add the other.',
  'remark.limits turned round':
    'The least that is allowed is more than the most, so nothing is judged: correct the limits.',
  'remark.limit doubted':
    '{by, select, unit {The job’s limit is about 25.4 times the train file’s, or as small a part of it: inches and millimetres were taken for each other.} point {The job’s limit is about 10, 100 or 1000 times the train file’s, or as small a part of it: a point has slipped.} wide {The job’s limit is far wider than the train file’s.} other {The job’s limit is far from the train file’s.}} So nothing is judged by it, and no part is chosen. Strike it, and write the right one; if it is meant, {way, select, asked {write it again, and say there that it is meant} other {write it again with sure: yes behind it}}.',
  'remark.not on the shelf':
    'The fitted part, {size}, is none of the sizes on the shelf: measure it again, or correct the file.',
  'remark.gauge turned round':
    'A step that fits is no smaller than one that does not: gauge again.',
  'remark.place outside':
    'Place {place} is outside its limits, though the mean is inside: look for dirt, a burr, or a ring that is not home.',
  'remark.coned on purpose':
    'The file says that a steel is coned on purpose, by {by}: such a steel is not warped. Judge the flat ones only.',
  'remark.coned or warped':
    'A steel shows a gap. Some are coned on purpose: ask your unit’s data before you call it warped. If it is not meant, replace the steels.',
  'remark.plates spent':
    'Plates of this pack were found burnt, and nothing says that new ones were in when it was read. Once they are in, write down that the pack went on replaced, and measure again: what was read before chooses no part.',
  'remark.worn':
    '{what, select, friction {A friction is below its limit: replace all the frictions of the pack, never one, and measure again; until then no part is chosen.} other {A steel is below its limit: replace all the steels of the pack, never one, and measure again; until then no part is chosen.}}',
  'remark.shelf too short':
    'No size on the shelf brings it inside: look for another part, and count again what is in.',
  'remark.not as predicted':
    '{like, select, none {Measured again, it is not what was predicted} other {Measured again, it reads as with {like} in: is that the one that is in? Else}}: look whether the right part is in, for a plate out of order, or a ring that is not home.',
  'remark.nothing read':
    'Nothing was read here, so nothing is judged: measure it, and write it down.',
  'remark.gap hidden':
    'With this part in there is no play, so nothing tells how far the bearings are squeezed already: fit a thinner shim or a thicker spacer, so that there is play, and read again.',
  'remark.other torque unit':
    '{meant, select, lbf_in {Were pound-inches meant? In them the same number would be inside the limits. Correct the unit.} lbf_ft {Were pound-feet meant? In them the same number would be inside the limits. Correct the unit.} kgf_cm {Were kgf·cm meant? In them the same number would be inside the limits. Correct the unit.} Ncm {Were newton centimetres meant? In them the same number would be inside the limits. Correct the unit.} other {Were newton metres meant? In them the same number would be inside the limits. Correct the unit.}}',
  'remark.wrench and pull differ':
    'By the wrench and by the pull the torque differs by more than a quarter of what the limits allow: look at the radius, and read both again. The wrench is judged.',
  'remark.no pitch':
    'Turns were read, and the file tells no pitch: write under bands how far one turn moves the screw.',
  'remark.no slack':
    'There is no play at all: look for a reading in the wrong row, dirt, or a part that binds, and measure again.',
  'remark.turns and travel differ':
    'By turns and by travel it differs by more than a quarter of what the limits allow: find out why. The travel is judged.',
  'pack.title':
    '{train}: {packs, plural, one {the clearance of one pack} other {the clearance of {packs} packs}}',
  'pack.device':
    '{device}: {frictions, plural, =0 {no frictions} one {one friction} other {{frictions} frictions}}',
  'pack.clearance':
    'Clearance {clearance}: {verdict}.{has, select, yes { For each friction {each}.} other {}}',
  'pack.before': 'Before that, with the part that was in: {clearance}.',
  'pack.gauge':
    'Step gauge: {does, select, yes {{fits} fits} other {nothing that fits was written}}, {stops, select, yes {{not} does not fit} other {nothing that does not fit was written}}: {verdict}.',
  'pack.limits':
    '{each, select, yes {Limits, by those for each friction: {limits}.} other {Limits: {limits}.}}',
  'pack.thicker':
    '{which, select, thinner {To be inside, the pack must become thinner by {from} to {to}.} other {To be inside, the pack must become thicker by {from} to {to}.}}',
  'pack.drawn':
    'The sizes in the file would leave {clearance}, ± {worst} at worst, ± {likely} as is likely.',
  'trials.made':
    '{trials} trials by chance, each size as likely anywhere between its ends (series {series}):',
  'trials.outside':
    '{none, select, yes {None of them is outside the limits: fewer than {to} % of all are, as far as so many can tell.} other {Outside the limits: {all} % ({from} to {to} %, as far as so many can tell): {below} % too small, {above} % too big.}}',
  'pack.first': 'Look at this first',
  'pack.measured': 'Measured',
  'pack.way':
    '{way}{has, select, squash {, {air}, {squash} of squash taken off} air {, {air}} other {}}',
  'pack.place': '{place}: {reading}',
  'shelf part':
    '{part, select, backing_plate {backing plate} steel {steel} snap_ring {snap ring} piston {piston} washer {washer} race {race} shim {shim} spacer {spacer} servo_rod {servo rod} apply_rod {apply rod} other {apply pin}}',
  'pack.shelf':
    '{part, select, backing_plate {Backing plate from the shelf} steel {Steel from the shelf} snap_ring {Snap ring from the shelf} washer {Washer from the shelf} race {Race from the shelf} shim {Shim from the shelf} spacer {Spacer from the shelf} servo_rod {Servo rod from the shelf} apply_rod {Apply rod from the shelf} apply_pin {Apply pin from the shelf} other {Piston from the shelf}}',
  'pack.rank': '{rank, select, best {best} other {second}}',
  'pack.prediction':
    '{verdict, select, inside {{safe, select, yes {inside, even at worst} other {inside, but not at worst}}} too_small {too small} other {too big}}',
  'pack.again':
    '{part, select, backing_plate {Fit the backing plate of {size}} steel {Fit the steel of {size}} snap_ring {Fit the snap ring of {size}} washer {Fit the washer of {size}} race {Fit the race of {size}} shim {Fit the shim of {size}} servo_rod {Fit the servo rod of {size}} apply_rod {Fit the apply rod of {size}} apply_pin {Fit the apply pin of {size}} other {Fit the piston of {size}}}, then measure again in the same way: expect {clearance}, ± {worst}.{safe, select, yes {} other { At worst that is outside its limits.}} Write down both; only the second closes the job.',
  'pack.stays':
    '{part, select, backing_plate {The fitted backing plate of {size}} steel {The fitted steel of {size}} snap_ring {The fitted snap ring of {size}} washer {The fitted washer of {size}} race {The fitted race of {size}} shim {The fitted shim of {size}} servo_rod {The fitted servo rod of {size}} apply_rod {The fitted apply rod of {size}} apply_pin {The fitted apply pin of {size}} other {The fitted piston of {size}}} is the best of the shelf: leave it in.',
  'pack.closed':
    'Measured again with the part of {size}: {clearance}: {verdict}{agrees, select, yes {, as predicted ({predicted}, ± {worst})} no {, and not as predicted ({predicted}, ± {worst})} other {}}.{closes, select, yes { That closes it.} other { It is not closed.}}',
  'pack.wear': 'Plates',
  'pack.wear of':
    '{what, select, friction {thinnest friction} steel {thinnest steel} other {largest gap under a steel}}',
  'pack.legend':
    'Your unit’s own data wins. Limits are those in the file; an unsourced one is nobody’s word but the writer’s. At worst: every tolerance at its end at once. Likely: the root of the sum of their squares. Three places, a quarter of the limits between two ways, and a quarter of a plate for counting are common practice, no source.',

  // Margins: what holds, what slips.
  'margin.title':
    '{train}: what holds at {pressure}, with {engine} N·m from the engine and a stall ratio of {ratio}',
  'margin.pressure': '{value} {unit}',
  'margin.least': 'holds from, {unit}',
  'margin.caution':
    'Do not prove a margin by stalling: a device that slips at full throttle burns in seconds. Pressure test first; no stall test on low pressure.',
  'margin.own data':
    'Your unit’s own data wins: these are sums from the figures of the file, without wear, heat, grooves, oil drag or a shift’s own torque.',
  'margin.drive': 'Under power, {torque} N·m at the input (at stall)',
  'margin.reverse': '{gear}, in reverse',
  'margin.coast': 'On coast, {torque} N·m at the input (an engine drags with less)',
  'margin.first':
    'First to slip of all, if the load grew everywhere alike: {devices}, in {gear} {load, select, drive {under power} coast {on coast} other {on coast in reverse}}, at {spare} times what is asked{holds, select, yes {} other { (less than is asked: it slips)}}.',
  'margin.devices': '{gear}. {side}',
  'margin.no limit': 'no limit known',
  'margin.never': 'at no pressure',
  'margin.unknown': 'nobody has said',
  'margin.shared': '{from} to {to}, shared',
  'margin.engine': 'engine',
  'margin.sources': 'Where the figures come from',
  'margin.source': '{place}: {names}',
  'margin.place':
    '{has, select, yes {{source}{signed, select, yes { ({by})} other {, nobody’s initials}}} other {UNSOURCED{signed, select, yes { ({by})} other {}}}}',
  'margin.legend':
    'Passes: the most torque at the input before something slips, at this pressure. Margin: that over what is asked; below 1 it does not hold. Holds from: the least pressure at which what is asked holds. Every gear is reckoned at stall. Devices that share a reaction are reckoned at the best sharing; the margin of one of them is told as if it carried its greatest share. Pressures are the same at every piston, and the oil’s own head in a turning drum is left out. A friction device slips; a one-way clutch asked for too much rolls over and breaks.',
  'margin.more': 'What each device carries: --range RANGE --gear GEAR. Exact fractions: --json.',

  // End play: what was measured, and the washer or race that sets it.
  'endplay.title':
    '{kind, select, along {{train}: the end play of {shafts, plural, one {one shaft} other {{shafts} shafts}}} teeth {{train}: {shafts, plural, one {one backlash} other {{shafts} backlashes}}} other {{train}: {shafts} plays, along shafts and between teeth}}',
  'endplay.how':
    'Dial indicator on the shaft: push, zero, pull, and take up the other shaft first. A record from before the unit came apart is worth more than any sum.',
  'endplay.backlash':
    'Between teeth: hold one gear, set the dial square to a tooth of the other at its pitch circle, and rock it. Read in four places round.',
  'endplay.measured':
    'Measured {clearance}: {verdict}.{places, plural, one {} other { Mean of {places}, spread {spread}, worst {worst}.}}',
  'endplay.stack':
    'The sizes in the file leave {clearance}, ± {worst} at worst, ± {likely} as is likely.',
  'endplay.add':
    '{which, select, thinner {To be inside, the part must become thinner by {from} to {to}; nothing can be added.} other {To be inside, add from {from} to {to}.}}',
  'endplay.legend':
    'Your unit’s own data wins. Limits are those in the file; an unsourced one is nobody’s word but the writer’s. Measure the part that comes off the shelf: stains hide colours. At worst: every tolerance at its end at once. Likely: the root of the sum of their squares.',

  // Lessons: what a class predicts, and the wrong ideas that lead to wrong choices.
  // Bands at their drums: turns backed off, the rod's travel, and what sets them.
  'preload.title': '{train}: {count, plural, one {one preload} other {{count} preloads}}',
  'preload.how':
    'Clean and oil the bearings, turn them some times both ways so that the rollers seat, and leave out seals and whatever else would be driven. Read while it keeps turning, never what starts it. By a spring balance: wind a cord round the hub and pull evenly; the force times the radius is the torque.',
  'preload.turning':
    '{by, select, pull {Force times radius: it keeps turning at {torque}} other {It keeps turning at {torque}}}: {verdict, select, inside {inside} too_small {too loose} too_big {too tight} other {not judged}}.',
  'preload.limits':
    '{state, select, used {Limits for bearings that run again: {limits}.} other {Limits for new bearings: {limits}.}}',
  'preload.do':
    '{verdict, select, inside {That proves it: write it down.} too_small {Squeeze them more: a thicker shim, or a thinner spacer; then prove it again.} other {Squeeze them less: a thinner shim, or a thicker spacer; then prove it again. Never run it so: tight bearings burn.}}',
  'preload.squeeze': 'Squeeze wanted: {limits}.',
  'preload.gap':
    '{has, select, yes {With {fitted} in, the play is {gap}.} other {The play is {gap}.}}',
  'preload.tighter':
    '{part, select, spacer {{which, select, thinner {To squeeze as wanted, the spacer must become thicker by {from} to {to}.} other {To squeeze as wanted, the spacer must become thinner by {from} to {to}.}}} other {{which, select, thinner {To squeeze as wanted, the shim must become thinner by {from} to {to}.} other {To squeeze as wanted, the shim must become thicker by {from} to {to}.}}}}',
  'preload.choice':
    '{part, select, spacer {Fit the spacer of {size}} washer {Fit the washer of {size}} other {Fit the shim of {size}}}: it squeezes the bearings by {squeeze}, ± {worst}.{safe, select, yes {} other { At worst the squeeze is outside its limits.}} Then prove it by the torque that keeps it turning; only that closes the job.',
  'preload.legend':
    'Your unit’s own data wins. The part that sets it is the fitted one and the play that was read and the squeeze wanted besides; its proof is the torque. Bearings that run again want less than new ones. How it is read is common practice, no source.',

  'band.title':
    '{train}: the clearance of {bands, plural, one {one band} other {{bands} bands}} at the drum',
  'band.how':
    'With a screw: tighten it to the maker’s torque, which seats the band; count the turns as you back it off; hold it while you lock the nut. Without one: a dial on the servo’s rod, from rest until the drum is held.',
  'band.measured':
    '{by, select, turns {{many, select, no {Backed off {turns} turn of {pitch}} other {Backed off {turns} turns of {pitch}}}, the screw has moved {travel}} other {{places, plural, one {Travel {travel}} other {Travel {travel} (mean of {places}, spread {spread}, worst {worst})}}}}. Times the lever ratio of {lever}, the band’s end is clear of the drum by {clearance}: {verdict}.',
  'band.all round': 'Spread evenly round the drum that is {clearance}.',
  'band.clearance': 'Clearance at the drum: {limits}.',
  'band.limits':
    '{from, select, clearance {Limits of the travel, by those of the clearance and the lever: {limits}.} other {Limits of the travel: {limits}.}}',
  'band.back off':
    '{many, select, no {Back off {turns} turn} other {Back off {turns} turns}}, for the middle of the limits; {from} to {to} are inside. Count them again, and write both down.',
  'band.legend':
    'Your unit’s own data wins. Limits are those in the file; an unsourced one is nobody’s word but the writer’s. A hand tells an eighth of a turn, and no length here is told finer: common practice, no source.',

  // Wear: bushings, planets, pumps and springs against their limits.
  'wear.title': '{train}: {parts, plural, one {one part} other {{parts} parts}} against wear',
  'wear.do': 'What to do',
  'wear.how': 'How it is measured',
  'wear.kind':
    '{kind, select, bushing {bushing clearance} planet_side {planet side clearance} gear_to_case {gear to case} gear_to_crescent {gear to crescent} gear_side {gear side clearance} ring_gap {seal ring gap} ring_side {seal ring in its groove} drum_dish {dish of a drum} spline_play {spline play} thickness {thickness} other {spring free length}}',
  'wear.how of':
    '{kind, select, bushing {Bushing: inside micrometer in two directions at both ends, less the shaft where it runs. The widest bore on the thinnest shaft counts.} planet_side {Planet side: a feeler beside each planet, the planet pushed to the other side. The loosest planet counts.} gear_to_case {Gear to case: a feeler between the outer gear and the pump’s body, at three places or more.} gear_to_crescent {Gear to crescent: a feeler between the teeth’s tips and the crescent, for both gears.} gear_side {Gear side: a straight-edge across the body, a feeler down to each gear, dry and clean.} ring_gap {Seal ring gap: the ring squared up in the bore where it runs, a feeler between its ends.} ring_side {Seal ring in its groove: the ring free in a clean groove, a feeler beside it at several places.} drum_dish {Drum: a straight-edge along the surface where the band or the lining runs, a feeler under it at several places.} spline_play {Splines: hold one part, set the dial square to the other at the spline’s own radius, and rock it; at both ends of the stroke and in several places round.} thickness {Thickness: a micrometer at three places or more, clear of the oil grooves. The thinnest counts.} other {Free length: several springs of the set beside each other, square on a plate. The shortest counts.}}',
  'wear.do of':
    '{verdict, select, inside {Leave it in, and write the reading down.} too_big {{kind, select, bushing {Drive in a new bushing, at the same depth and with its hole in line; look at the shaft before you blame the bushing.} planet_side {Replace the carrier with its planets; look at the pins’ stakes, for blueing and at the washers.} gear_to_case {Replace the pump’s body and gears together: they are matched.} gear_to_crescent {Replace the pump’s body and gears together: they are matched.} gear_side {Replace the pump’s gears, matched to the body, or the pump; look for scores in the cover.} ring_gap {Fit a new ring; if the new one gapes too, the bore is worn.} ring_side {Fit a new ring, and look at the groove’s walls; a worn groove takes a new shaft or drum.} drum_dish {Replace the drum: a band or a lining does not bed in on a dish.} spline_play {Replace the more worn of the two, and look at the other: worn splines wear what is new.} thickness {Too thick: look whether it is the part of this place, or two that stick together.} other {Longer than it should be: look whether it is a spring of this set at all.}}} other {{kind, select, bushing {Too tight: look for a burr, dirt, or a bushing that was driven in askew; size it only as the maker says.} planet_side {Too tight: look for a washer too many, a pin that has moved, or dirt.} gear_to_case {Too tight: look for dirt, burrs, or gears that are not of this body.} gear_to_crescent {Too tight: look for dirt, burrs, or gears that are not of this body.} gear_side {Too tight: look for dirt, burrs, or a gear with the wrong face up; mark faces before you pull them.} ring_gap {Too tight: its ends meet when it is hot; look whether it is the ring of this bore.} ring_side {Too tight: look for dirt, a burr, or a ring of another groove; it must turn freely.} drum_dish {Look again: so flat is no drum; the feeler or the edge was not true.} spline_play {Too tight: look for a burr, dirt, or a part of another spline.} thickness {Worn: replace it, and look at what it ran against.} other {Sagged: replace the springs as a set, never one.}}}}',
  'wear.legend':
    'Your unit’s own data wins. Limits are those in the file; an unsourced one is nobody’s word but the writer’s. What to do is common practice, no source.',

  'lesson.gear':
    '{gear}: {count, plural, =0 {nothing is on.} one {the {devices} is on.} other {the {devices} are on.}} {end, select, coast {The output is turned {way}, {seen}, as on coast.} other {The input is turned {way}, {seen}.}}',
  'lesson.hands':
    '{count, plural, =0 {No device is applied.} one {Applied is only the {devices}.} other {Applied are only the {devices}.}} Hold the {held} and turn the {turned} {way}, {seen}.',
  'lesson.fault': 'Something is wrong: {fault}.',
  'lesson.question':
    '{kind, select, state {Does the train drive?} way {Which way does the output, the {thing}, turn?} engine_braking {Is there engine braking?} device {What does the {thing} do?} hand {Does it turn, and which way does the {thing} go?} ratio {What is the ratio, input speed over output speed?} carriers {Which devices carry the load?} left_free {Which members does nothing settle?} held_torque {{held, select, yes {What does the {thing}, which stands still, put on the {holder}?} other {What does the {thing}, which stands still, put on the case?}}} backwards {What does the output do now?} comes_off {Which of these can come off now?} faces {Which end does the {thing} face with this side of it: {face}?} other {Go through the gears in the order of the chart, first those that drive nothing, each under power and then on coast. Where does it show first, and how?}}',
  'lesson.off':
    'The unit is being stripped. {more, plural, =0 {Off is: {parts}.} one {Off are one part and, last, {parts}.} other {Off are # parts and, last, {parts}.}}',
  'lesson.facing':
    '{to, select, input {it faces input} output {it faces output} other {either way: it makes no difference}}',
  'lesson.turning':
    '{is, select, still {it stands still} free {it is free: nothing settles which way} locked {nothing turns: it locks} other {it turns {way}}}',
  'lesson.ratio':
    '{back, select, yes {{ratio} (the output turns against the input)} other {{ratio}}}',
  'lesson.device':
    '{does, select, carries {it carries load} idle {it carries nothing, and does not over-run} other {it over-runs}}',
  'lesson.members': '{count, plural, =0 {none} other {{members}}}',
  'lesson.yes or no': '{is, select, yes {yes} other {no}}',
  'lesson.torque': '{torque}, {way}',
  'lesson.no torque': 'no torque',
  'lesson.state':
    '{state, select, driving {{at, select, yes {it drives at a ratio of {ratio}} other {it drives}}} tied_up {it is tied up} other {it drives nothing}}',
  'lesson.sign':
    '{end, select, coast {{state, select, driving {{gear}: on coast the engine is turned at a ratio of {ratio}} tied_up {{gear}: tied up on coast} other {{gear}: no engine braking}}} other {{state, select, driving {{gear}: it drives at a ratio of {ratio}} tied_up {{gear}: tied up} other {{gear}: it does not drive}}}}',
  'lesson.no sign': 'no gear shows it',
  'misconception.upside down':
    'That is output speed over input speed. A ratio is input over output: where its size is above 1 the output turns slower, below 1 faster.',
  'misconception.sign dropped':
    'The size may be right, but it turns the other way. Follow the motion from mesh to mesh: wheels that mesh outside turn against one another, a ring turns with the planet inside it.',
  'misconception.mesh reverses':
    'Not every mesh turns the motion round: a ring turns the same way as the planet inside it, and a carrier is pulled along.',
  'misconception.other member held':
    'Sun and ring have changed places in the sum: that is the ratio of a set whose sun has the ring’s teeth. Look at which of them drives, is held or is driven, and put its own teeth there.',
  'misconception.carrier turns':
    'The 1 is there only where the carrier turns. With the carrier held only the teeth of sun and ring count.',
  'misconception.one forgotten':
    'The 1 is missing. The carrier turns too, and takes the planets once round with it.',
  'misconception.one formula for all':
    'The formula 1 + R/S is for a plain set with the sun driving, the ring held and the carrier driven. Look at what drives, what is held and what is driven here.',
  'misconception.pairs taken for plain':
    'The planets of this set are meshed pairs: the second planet turns the motion round once more. Past the carrier the sun and the ring turn the same way, not against one another.',
  'misconception.planets counted in':
    'The teeth of plain planets do not count: they pass on as many as they take. They count in stepped sets.',
  'misconception.ratios multiplied':
    'That is 1 + R/S of each set, multiplied. The sets do not stand one after the other: they share members, so their speeds must be worked out together.',
  'misconception.direct':
    'A clutch that is on does not make it direct. Direct drive needs two members of a set locked to one another; the third follows.',
  'misconception.gears always change':
    'A set changes nothing where two of its members turn as one: the third goes with them, and no planet turns on its pin.',
  'misconception.one-way turned round':
    'The one-way clutch is read the wrong way round. Say which race is held, which turns, and from which end it is seen.',
  'misconception.turning means holding':
    'Follow the push: it needs a way out. Where what is held leaves it none that way, what is pushed does not turn.',
  'misconception.path unseen':
    'Follow the load from member to member: there is a way from the input to the output.',
  'misconception.holding stops all':
    'One member that is held does not stop the others: it gives the set something to push against.',
  'misconception.nothing settles it':
    'More is settled than that: what is held and what is turned leave some members no choice, for teeth and devices settle their speed.',
  'misconception.always settled':
    'Less is settled than that: a member that is held by nobody and drives nothing is free, and no one can tell its speed.',
  'misconception.one-way never holds':
    'Nobody applies a one-way clutch, but the load does: pushed against its free sense, it holds.',
  'misconception.one-way always holds':
    'A one-way clutch holds only what pushes against its free sense. One that over-runs carries nothing, nor does one that nothing pushes.',
  'misconception.over-running unseen':
    'It carries nothing, but look at its two races: they turn at different speeds, so it over-runs.',
  'misconception.applied means carrying':
    'On is not the same as carrying load. Look whether anything pushes on it here.',
  'misconception.released by sharing':
    'What carries is taken for idle. Without it the load has nowhere to go: it is one of the links of the path from the input to the output and the case.',
  'misconception.friction slips one way':
    'A clutch, brake or band that is on holds both ways. Only a one-way clutch over-runs.',
  'misconception.applied means driving':
    'To drive, the load needs a way to the output and something to push against. Count what is joined to the input and what is held: too little is neutral, too much is tied up.',
  'misconception.more devices tie up':
    'Several devices may be on together, as long as they do not ask for different speeds of one member.',
  'misconception.neutral means still':
    'Neutral does not mean that nothing can turn, and tied up does not mean neutral. In neutral members spin, some at no fixed speed; tied up, the input cannot turn.',
  'misconception.braking always':
    'Engine braking does not come with every gear. What holds under power must hold the other way too, and a one-way clutch over-runs.',
  'misconception.one-way ends braking':
    'What carries the load on coast holds both ways here, so the engine is turned. A one-way clutch in the train ends that only where it alone holds.',
  'misconception.still means no torque':
    'Zero speed is zero power, but not zero torque. What stands still takes the reaction, often the largest torque of all.',
  'misconception.reaction is the input':
    'The reaction is not the torque that comes in. All torques on the train add up to nothing: work out what is left.',
  'misconception.reaction is the output':
    'The reaction is not the torque that goes out. All torques on the train add up to nothing: work out what is left.',
  'misconception.reaction added up':
    'Mind the signs. All torques on the train add up to nothing: where the output turns with the input, the case takes output less input; where it turns against it, output and input.',
  'misconception.reaction turned round':
    'That is the way in which the device pushes back. The member is pushed the other way.',
  'misconception.fits either way':
    'A one-way clutch fits either way up, but does not work either way: turned over, it over-runs where it should hold, and holds where it should over-run.',
  'misconception.fault means no drive':
    'A fault need not take the drive away. Ask what the train does instead: another path may carry the load.',
  'misconception.fault ties up':
    'It ties up only where two devices ask for different speeds. Ask what the train does instead.',
  'misconception.fault shows wherever fitted':
    'Here the gear that uses it does not show it so. Something else does its work there, or an earlier gear shows it.',
  'misconception.cover unseen':
    'Something is still over it. What covers a part comes off first, however near at hand the part looks.',
  'misconception.far end first':
    'A unit comes apart from the end that is up; what is deepest in it comes off last.',
  'misconception.wrong way round':
    'That is the other way round. Look for the mark of the face, and write down how it lay as it came off.',
  'misconception.any way round':
    'That it goes in both ways does not make both right: a bearing, a washer or a race that is turned over runs on the wrong face.',
  'misconception.fault hides':
    'Something does show it. Go through the gears, under power and on coast.',

  // Sheets of paper: what stands on each page, and the words of each kind.
  'sheet.title':
    '{sheet, select, chart {Application chart} drawing {Stick diagram} set {Sheet set} job {Job card} strip {Strip sheet} build {Build sheet} measure {Measure and select} capacity {Torque capacity} diagnosis {Diagnosis sheet} one_way {One-way card} other {Sheets}}',
  'sheet.stamp': 'File {hash} · {date} · Holdturn',
  'sheet.page': 'page {page} of {pages}',
  'sheet.printed': '{file}: {pages, plural, one {one page} other {{pages} pages}}',
  'sheet.written': '{file}: source text, for Typst 0.14',
  'sheet.left out': 'Left out, for the file tells nothing of it: {sheets}.',
  'sheet.letters missing':
    'No font here has some of its characters: they are printed as boxes. Install a font that has them, and print again.',
  'sheet.with': '{train} with {faults}',
  'sheet.own data': 'Your unit’s own data wins.',
  'sheet.caution.sharp':
    'Steels and snap rings have sharp edges: wear cut-proof gloves and eye protection.',
  'sheet.caution.maker':
    'The unit’s maker, local rules and licensed practice come before anything that is printed here.',
  drawn: '{file}: stick diagram of {train}',
  'drawn.end': '{set}, {seen}',
  'drawn.circles':
    'A strong circle carries load. Dashes stand still; dots are free. Torques are for 100 N·m put in.',
  'drawn.end written': '{file}: {title}',
  'drawn.lever': 'Lever diagram of {train}',
  'drawn.exploded': 'Exploded row of {train}{page, plural, =1 {} other {, part {page}}}',
  'drawn.exploded up': '{end, select, input {Input} other {Output}} end up',
  'drawn.exploded key':
    'Not to scale: wheels by their teeth, plates as counted, the rest as such parts are usually made. A point beside a number: the side to which the face that is named looks.',
  'drawn.bevel':
    'A scheme: the further side gear is drawn larger, and no pinion can be seen to turn on its pin.',
  'drawn.teeth not counted':
    'The file does not count the teeth of {planets}: drawn are as many as fit.',
  'drawn.planets not counted':
    'The file does not count its planets: drawn {drawn, plural, one {is one} other {are {drawn}}}.',
  'drawn.planets left out': 'Of {counted} planets only {drawn} can be put where their teeth mesh.',
  'drawn.not evenly spaced':
    'The planets stand where their teeth mesh, up to {degrees}° from even.',
  'drawn.teeth do not fit':
    'These numbers of teeth do not go together: a planet is drawn twice, for each of its mates.',
  'drawn.teeth too fine': 'Too many teeth to draw: the wheels are discs.',
  'drawn.gear':
    '{gear}, {side, select, coast {on coast} other {under power}}{state, select, neutral {: neutral} tied_up {: tied up} other {}}',
  'drawn.nothing on': 'Nothing applied',
  'marks.picture':
    '● is on and carries load. ○ is on and carries nothing. ■ holds, or is held. » over-runs. ~ is free. A wide line carries load, the wider the more power. Dashes stand still; dots are free. Torques are for 100 N·m put in: at the input and the output what goes in or out, elsewhere what passes through.',
  'sheet.drawing': 'The half above the axis; sets and devices are symbols, not to scale.',
  'sheet.field':
    '{field, select, job {Job} complaint {Complaint} by {By} day {Date} initials {Initials} limit {Limit} source {Source} driver {What the driver says} other {Unit}}',
  'sheet.head':
    '{head, select, off {off} look {look at} found {found} check {hand check} felt {felt} before {before} fitted {fitted} best {best} time {time} who {who} what {what} chosen {chosen} after {after} initials {initials} predicted {predicted} held {held} turned {turned} end {seen from} face {face up} chance {chance} suspect {suspect} reason {because} reading {reading} mean {mean} other {no.}}',
  'sheet.strip.first':
    '{what, select, wash {Washed outside, and photographed.} fixture {On its holding fixture, which is locked.} feel {Input and output turned by hand; what was felt is written down below.} plates {A tray or a peg board stands ready, for order and faces.} other {End play measured at each shaft, before anything comes off that closes it.}}',
  'sheet.strip.before': 'Before it comes apart',
  'sheet.strip.felt': 'What was felt',
  'sheet.strip.play': 'End play before, {shaft}',
  'sheet.strip.preload': 'Torque that keeps turning, before, {bearings}',
  'sheet.strip.row': 'The parts in a row',
  'sheet.strip.order': 'In the order in which it comes apart',
  'sheet.strip.how':
    'Tick what you have looked at. Found: which face looks at input, marks, plates counted, the thickness of a selective part, wear.',
  'sheet.strip.blank':
    'The file tells no parts: write them down in the order in which they come off.',
  'sheet.measure.how':
    'Feeler: between snap ring and backing plate, the backing plate lifted against the ring, evenly round. On air: write down the pressure. Depth gauge: depth less the stack. A set of plates is replaced whole.',
  'sheet.measure.shelf':
    '{part, select, backing_plate {Backing plates} steel {Steels} snap_ring {Snap rings} washer {Washers} race {Races} shim {Shims} spacer {Spacers} servo_rod {Servo rods} apply_rod {Apply rods} apply_pin {Apply pins} other {Pistons}} on the shelf: {sizes}. Fitted: {fitted}.',
  'sheet.measure.no limit':
    'No limit in the file: write it down, with its source and your initials.',
  'sheet.measure.band': 'Band, {band}',
  'sheet.measure.wear': 'What wears',
  'sheet.measure.dial': '{kind, select, backlash {dial, rocked} other {dial, push and pull}}',
  'sheet.measure.turns': 'turns backed off',
  'sheet.measure.travel': 'travel',
  'sheet.measure.play': '{kind, select, backlash {Backlash, {shaft}} other {End play, {shaft}}}',
  'sheet.measure.preload': 'Preload, {bearings}',
  'sheet.measure.preload by':
    '{by, select, turning {torque, kept turning} pull {force × radius} other {play}}',
  'sheet.test':
    '{test, select, engine {Engine} stray_pressure {Pressure where none belongs} under_power {Road test} coast {Coast} noise {Noise} shift {Shifts} engagement {Engagement} stall {Stall test} fluid {Fluid} slip_log {Slip, by a logger} manual_shift {Lever alone} pan {Pan and magnet} valve_body {Valve body} build_record {Record of the build} seal_rings {Seal rings} seals {Piston seals} one_way_check {One-way clutches} pump {Pump} inspection {Taken apart} codes {Codes} selector {Selector} filter {Filter} end_play {End play} pressure {Line pressure} device_pressure {Pressure at a device} air_check {Air checks} band_check {Bands} other {Hand checks}}: {caution}',
  'sheet.diagnosis.tests': 'Tests, in the order of the trade',
  'sheet.diagnosis.notes': 'Reasoning: which rows point at it, and what would speak against it',
  'sheet.diagnosis.others':
    '{count, plural, one {One other suspect: {chance} %.} other {{count} other suspects, together {chance} %.}}',
  'sheet.race': '{race, select, inner {inner} other {outer}} race: {member}',
  'sheet.end': '{end, select, named {{name}} output {output end} other {input end}}',
  'sheet.one-way face': 'The face to look at, of the {part}: {face}',
  'sheet.fitted': '{fitted, select, other_way_up {wrong: the other way up} other {as described}}',
  'sheet.one-way':
    '{state, select, open {turns both ways} locked {locks both ways} other {{free, select, clockwise {turns clockwise, locks anticlockwise} other {turns anticlockwise, locks clockwise}}}}',
  'sheet.job.checks': 'Checks in the job',
  'sheet.job.entries': 'What was written down, in the order of time',
  'job.title': 'Job: {unit}',
  'job.train': 'Train: {file}',
  'job.complaint': 'Complaint: {complaint}',
  'job.opened': 'Opened by {by}, {at}',
  'job.damaged': 'What of the file cannot be read (it stays there)',
  'job.problem': 'line {line}: {problem}',
  'job.strikes': 'strikes {id}: {because}',
  'job.struck': 'struck by {who} in {id}',
  'job.new': '{file} is opened.',
  'sign.open':
    '{signed, select, yes {Signed with this still open} other {This stands open}}, outside, in doubt or not proved: {open}.',
  'sign.faulty': 'Found faulty, and not replaced: {parts}.',
  'sign.part': '{part} ({what})',
  'sign.off': 'Still off the unit: {names}.',
  'sign.unread': 'Never measured in this job: {names}.',
  'sign.wrong': 'Wrong in the build, and not put right since: {steps}.',
  'sign.unseen': 'Covered, and nobody of this job looked before: the last look at {steps}.',
  'sign.build':
    '{done, plural, =0 {Of the build nothing is written down: {all} steps, checks and stops.} other {Of the build {undone} of {all} steps, checks and stops are not done, the first at step {from}.}}',
  'sign.start': 'Of the first start {undone} of {all} steps are not done.',
  'sign.after': 'written after {who} signed',
  'job.added':
    '{id} is written down.{strikes, select, yes { It strikes {struck} through.} other {}}',
  'sheet.job.none': 'Nothing has been written down yet.',
  'sheet.job.struck': 'Struck by {who}, {at}: {because}',
  'sheet.job.limit': 'The limit of {of} is the job’s: {job}. The train file has {file}.',
  'sheet.job.unused':
    '{count, plural, one {One line of the job is left out: {place}: {problem}} other {{count} lines of the job are left out: {place}: {problem}, and others}}',
  'sheet.job.rebuilt':
    'The unit was built anew and signed for: what was seen and said before then counts no more. Tell what it does now.',
  'sheet.job.other train':
    '{file} was opened with another version of the train file: look whether it still fits.',
  'sheet.job.time': '{day} {time} UTC{zone}',
  'job.off': '{count, plural, one {One part is off} other {# parts are off}}: {names}.',
  'sheet.told':
    '{kind, select, seen {Seen, {of}: {what}} reading {Read, {of}: {what}} chosen {Chosen, {of}: {what}} check {Checked, {of}: {what}} limit {Limit, {of}: {what}} shelf {Shelf, {of}: {what}} photograph {Photograph: {what}} removed {Off: {what}} installed {On: {what}} built {Build: {what}} unbuilt {Taken off again: {what}} note {{what}} signed {Signed: {what}} other {Correction}}',
  'sheet.shelf': '{part} {sizes} ({fitted} is in)',
  'sheet.job.shelf': '{of}: the shelf is this job’s: {row}.',
  'sheet.photograph':
    '{of, select, part {{name}, of {part}} step {{name}, at {step}} both {{name}, of {part}, at {step}} other {{name}}}',
  'sheet.installed':
    '{how, select, replaced {{part}, a new one} why {{part}, the same again: {why}} other {{part}}}',
  'sheet.built':
    '{what, select, sound {step {n}, what was heard} check {step {n}, check by hand} stop {step {n}, the last look} start {first start, {n}} other {step {n}}}{has, select, no {} other {, {of}}}{went, select, right {, right} wrong {, wrong} found {, found so} other {}}{says, select, no {} other {: {said}}}',
  'sheet.unbuilt': 'from step {step} on: {why}',
  'sheet.felt': '{has, select, yes {predicted {predicted}; felt {felt}} other {felt {felt}}}',
  'marks.chart':
    '● is on and carries load. ○ is on and carries nothing. ■ holds. » over-runs. Empty: off, or free.',
  'sheet.chart.ratios': '{whole}\ngear: {own}',
  'sheet.chart.parked': 'locked in park',
  'sheet.chart.legend':
    'Nobody applies a one-way clutch: the load makes it hold. A ratio is input speed over output speed, below zero where the output turns against the input; the fraction is exact. On coast the output turns the input.',

  // The command: what its options do.
  'cli.about':
    'For planetary gear trains: describe one as it comes apart, and be told, exactly and with proof, how it works.',
  'cli.usage': 'Usage:',
  'cli.usage.program': 'VERB FILE [options]',
  'cli.usage.verb': 'FILE [options]',
  'cli.usage.job': 'ACTION FILE [WORDS] [options]',
  'cli.arguments': 'Arguments:',
  'cli.options': 'Options:',
  'cli.commands': 'More:',
  'cli.example': 'Example:',
  'cli.group.explain': 'Explain a train:',
  'cli.group.fault': 'Find a fault:',
  'cli.group.measure': 'Measure:',
  'cli.group.build': 'Build:',
  'cli.group.teach': 'Teach:',
  'cli.group.keep': 'Keep:',
  'cli.file': 'a train file, or - for standard input',
  'cli.seen': 'a file of what was seen, or - for standard input; without it, questions are asked',
  'cli.readings.pack': 'a file of readings of the packs, or - for standard input',
  'cli.readings.endplay': 'a file of readings of end plays, or - for standard input',
  'cli.readings.preload': 'a file of readings of preloads, or - for standard input',
  'cli.readings.band': 'a file of readings of bands, or - for standard input',
  'cli.readings.wear': 'a file of readings of worn parts, or - for standard input',
  'cli.action':
    'what to do: new, add (a kind and its words), strike (an id, and what holds instead) or show',
  'cli.job': 'a job file, as in bench-4.job.yaml',
  'cli.words':
    'seen, reading, chosen, check, limit, photograph, note or signed, and its words, as in reading "low brake" "feeler: [0.42 mm]"',
  'cli.kind':
    'what to print: chart, drawing, diagnosis, strip, measure, build, one-way, capacity, job, or set for all',
  'verb.describe': 'make a train file by questions, or go on with one',
  'verb.check': 'is this a train? every error and warning with its place',
  'verb.flow': 'a gear under power and on coast: speeds, torques, and why',
  'verb.chart': 'every combination of the friction devices, and the swaps between gears',
  'verb.draw': 'the stick diagram as SVG: of the bare train, or as all stands in a gear',
  'verb.hand': 'hold some members, turn one: does it turn, and what do the others do?',
  'verb.faults': 'every fault against every gear: what it does, and what shows it first',
  'verb.suspects':
    'which fault does it mean? suspects ranked by what was seen and said, what must not be tested now and why, and the next best test',
  'verb.capacity': 'what each gear can pass, what slips first, and the least pressure that holds',
  'verb.plan': 'the build, step by step: what to look at, and the hand checks that catch mistakes',
  'verb.pack': 'the clearance of packs by your readings, and the part from the shelf that fits',
  'verb.endplay': 'the end play of shafts by your readings, and the washer or race that fits',
  'verb.preload':
    'the preload of bearings by the torque that turns them, and the shim that sets it',
  'verb.band': 'the clearance of bands by turns or travel, and how to set it',
  'verb.wear': 'bushings, planets, pump and springs by your readings, and what to do',
  'verb.job': 'write down what is done and found on a job, by whom; nothing is erased',
  'verb.sheet': 'a sheet of paper for the bench or the class, as PDF',
  'verb.screen': 'open the page in a browser; no verb at all does the same',
  'verb.help': 'what a verb does, and its options',
  'verb.completion': 'print the completion script of a shell: bash, zsh or fish',
  'option.range': 'position of the selector',
  'option.gear': 'gear of the range',
  'option.on': 'friction devices that are on, with commas between; "" for none',
  'option.at': 'speeds of two or more members, as in "engine=1000,motor=0"',
  'option.hold':
    'members that are held, with commas between; outer or inner: that race of a one-way clutch',
  'option.turn': 'the member that the hand turns',
  'option.way':
    'clockwise or anticlockwise, as seen from the end of --seen-from; both where it is left out',
  'option.load':
    'how an output stands, as in "left half shaft: held" (or none, as on ice; or road); may stand more than once',
  'option.without': 'parts that are not fitted yet, with commas between',
  'option.fault': 'what is wrong, as in "low sprag: backwards"; may stand more than once',
  'option.mesh-efficiency': 'power that a mesh passes on, as in "external=0.985,internal=0.99"',
  'option.one-way':
    'the hand check of each one-way clutch, or of the one that is named; with --hold outer or inner',
  'option.side': 'drive (under power) or coast (on coast); drive if left out',
  'option.end': 'the set or gear pair to be seen from its end, with its teeth',
  'option.lever': 'the lever diagram: each set a lever, heights are speeds',
  'option.exploded': 'the parts of the teardown on their axis, numbered as they come off',
  'option.seen-from': 'the end from which you look: input or output',
  'option.pairs': 'every two faults at once, too',
  'option.only': 'some faults, with commas between, as in "low sprag: backwards"',
  'option.csv': 'print the answer as CSV, for a spreadsheet',
  'option.pressure': 'at every piston, as in 900 (kPa), "9 bar" or "130 psi"; 900 kPa if left out',
  'option.torque': 'of the engine, as in 220 (N·m) or "162 lbft"; from the file if left out',
  'option.stall-ratio': 'by how much the converter multiplies torque at stall; 1 without one',
  'option.ask': 'go on asking after what stands in the file or the job',
  'option.experience':
    'a file of the shop’s experience: tests, minutes, risks, how often things are wrong',
  'option.unit': 'what is worked on',
  'option.train': 'the train file: names are looked up in it',
  'option.complaint': 'in the words of whoever brought it',
  'option.by': 'your initials',
  'option.time': 'when it was, as in "2026-11-25 12:40"; now if left out',
  'option.predicted': 'what the check should have shown',
  'option.because': 'why the entry is struck through',
  'option.output': 'the file to write, as in chart.pdf; or .typ, for its source text',
  'option.paper': 'a4 or letter; a4 if left out',
  'option.job': 'a job file, from which what was read and seen is taken',
  'option.seen': 'a file of what was seen, for the diagnosis sheet',
  'option.readings': 'a file of readings of the packs, for the measure sheet',
  'option.plays': 'a file of readings of end plays, for the measure sheet',
  'option.trials': 'so many stacks by chance, beside worst case and root of squares, as in 1000000',
  'option.series': 'which trials: the same number makes the same again; 1 if left out',
  'option.date': 'the date on the sheet, as in 2026-11-25; today if left out',
  'option.all': 'leave nothing brief',
  'option.inch': 'put inches first',
  'option.json': 'print the answer as JSON',
  'option.lang': 'language of the answer: en or es',
  'option.help': 'print this',
  'option.port': 'serve the page at another port of this machine than 8477',
  'option.version': 'print the version',
  'screen.at': 'The page is open at {address} (Ctrl-C ends it; holdturn help tells the rest)',
  'screen.over': 'The page is closed.',
  'no.screen': 'there is no network here to open the page with',
  'bad.port': '--port takes a whole number from 0 to 65535, not {given}',

  // The command: what to type instead.
  'no.verb':
    'unknown verb: {given}; {has, select, yes {did you mean {near}?} other {type holdturn help}}',
  'no.capacities':
    'no capacities in {file}: tell under capacities how much each device can carry, by its sizes or as a torque Nm',
  'no.torque': 'no engine torque: type it as in --torque 220, or tell it in {file} under engine',
  'bad.pressure':
    'no pressure to reckon with: {given}; type digits above 0 with their unit, up to 100 MPa, as in --pressure 900 (kPa), --pressure "9 bar" or --pressure "130 psi"',
  'bad.torque':
    'unreadable torque: {given}; type it above 0, as in --torque 220 or --torque "162 lbft"',
  'bad.stall ratio': 'unreadable stall ratio: {given}; type 1 or more, as in --stall-ratio 2',
  'no.teardown':
    'no teardown in {file}: list its parts under teardown, in the order in which they come off',
  'no.measured pack':
    "no readings in {file}: write them by device, as in low brake: '{' feeler: [0.42 mm, 0.44 mm, 0.42 mm] '}'",
  'no.measured endplay':
    'no readings in {file}: write them by shaft, as in input shaft: [0.42 mm, 0.44 mm]',
  'no.measured preload':
    "no readings in {file}: write them by bearings, as in differential bearings: '{' turning: [1.2 Nm] '}' or '{' gap: [0.14 mm] '}'",
  'no.measured band':
    "no readings in {file}: write them by band, as in low band: '{' turns: 2.5 '}' or low band: '{' travel: [3.10 mm] '}'",
  'no.measured wear':
    "no readings in {file}: write them by part, as in pump gear side: '{' read: [0.04 mm] '}'",
  'bad.trials':
    'unreadable number of trials: {given}; type a whole number, as in --trials 1000000, from {least} to {most}',
  'bad.series':
    'unreadable series: {given}; type a whole number, as in --series 7, from {least} to {most}',
  'bad.series alone': '--series is for --trials: type both, as in --trials 1000000 --series 7',
  'no.kind':
    'unknown sheet: {given}; {has, select, yes {did you mean {near}?} other {the sheets are {all}}}',
  'no.job': 'no job: name its file, as in --job unit.job.yaml',
  'no.paper': 'unknown paper: {given}; type --paper a4 or --paper letter',
  'no.press':
    'the typesetter is not installed here: install the package @myriaddreamin/typst-ts-node-compiler beside holdturn, or write the source text with -o sheet.typ',
  'bad.date': 'unreadable date: {given}; type it as in --date 2026-11-25',
  'bad.missing output': 'missing file to write: type -o sheet.pdf',
  'bad.unwritable': 'cannot write {file} ({reason}); give the path of a file that you may write',
  working:
    '{is, select, counted {{done} of {all} done, after {seconds} s} other {still at it, after {seconds} s}}; Ctrl-C stops it',
  'bad.many faults':
    'too many to try: {rows} faults in {gears} gears; name some with --only, or leave out --pairs',
  'bad.output read':
    '{file} is what this answer is made from, and would be lost: give another name behind -o',
  'bad.output kind':
    '{file} is there already and is no {kind} file; it was left as it is: give another name behind -o',
  'bad.full': 'the disk is full: {file} is not written whole; make room, then do it again',
  'bad.stdout': 'cannot print ({reason}): what was asked did not arrive; print it elsewhere',
  'bad.too big': 'too large: {file} has more than {most} MB; give the path of a train file',
  'bad.nobody asked':
    'describe asks questions: give the path of a train file, there or not yet, and a terminal to answer in',
  'bad.silent':
    'nothing comes from {file}, and nobody writes into it; give the path of a train file',
  'bad.link':
    'no such file: {file} is a link to {target}, which is not there; mend the link, or give the path of a train file',
  'bad.ours':
    'something is wrong with Holdturn itself, not with what you typed ({reason}): please report it with your file',
  'no.action':
    'unknown thing to do with a job: {given}; {has, select, yes {did you mean {near}?} other {it is one of {all}}}',
  'bad.missing action': 'missing what to do, or the job file: type holdturn job show FILE',
  'bad.missing id': 'missing the id of an entry: holdturn job show FILE tells the ids',
  'bad.missing option': 'missing option: add {option}',
  'bad.missing words':
    'missing words after {kind}: type them as in {kind, select, seen {seen "D 2: slips"} reading {reading "low brake" "feeler: [0.42 mm]"} chosen {chosen "low brake" "1.80 mm steel"} check {check "turn rear.carrier clockwise" locks} limit {limit "low brake" "least: 0.80 mm, most: 1.20 mm, source: manual p. 12"} photograph {photograph IMG_0012.jpg} removed {removed "sun shell"} installed {installed "sun shell" replaced} built {built "6.1" "right: it turns neither way"} unbuilt {unbuilt 6 "rear ring not home"} note {note "the drum is scored"} other {signed "build sheet"}}',
  'bad.words':
    'unreadable: {given}; type it as in {kind, select, seen {seen "D 2: slips"} reading {reading "low brake" "feeler: [0.42 mm]"} photograph {photograph IMG_0012.jpg "part: sun shell"} other {limit "low brake" "least: 0.80 mm, most: 1.20 mm, source: manual p. 12"}}',
  'bad.entry': 'nothing was written down: {problem}',
  'bad.exists': '{file} is there already: a job is only added to; choose another name',
  'bad.time': 'unreadable time: {given}; type it as in --time "2026-11-25 12:40"',
  'no.entry kind':
    'unknown kind of entry: {given}; {has, select, yes {did you mean {near}?} other {it is one of {all}}}',
  'no.entry':
    'no such entry, or several: {given}; {has, select, yes {did you mean {near}?} other {holdturn job show FILE tells the ids}}',
  'no.measured':
    'unknown device or shaft: {given}; {has, select, yes {did you mean {near}?} other {the train has {all}}}',
  'no.task':
    'no task of this build: {given}; {has, select, yes {did you mean {near}?} other {it has {all}}}',
  'bad.task of': 'step {task} of this build is of {of}: type it as in built {task} "{of}"',
  'bad.missing kind': 'missing sheet or train file: type holdturn sheet chart FILE -o sheet.pdf',
  'no.verb.file': 'missing verb before {given}: type holdturn flow {given}',
  'no.option':
    'unknown option: {given}; {has, select, yes {did you mean {near}?} other {type holdturn help {verb}}}',
  'no.device':
    'unknown device: {given}; {has, select, yes {did you mean {near}?} other {the friction devices are {all}}}',
  'no.device.at all': 'unknown device: {given}; this train has no friction devices',
  'no.friction':
    'not a friction device: {given} is a one-way clutch, which nobody applies; leave it out of --on',
  'no.part':
    'unknown part: {given}; {has, select, yes {did you mean {near}?} other {those that can be left out are {all}}}',
  'no.fault name':
    'unknown name in {option}: {given}; {has, select, yes {did you mean {near}?} other {type it as in "low sprag: backwards"}}',
  'no.fault':
    'unknown fault of {name}: {given}; {has, select, yes {did you mean {near}?} other {type one of {all}}}',
  'no.fault place':
    'unknown place: {given}; {has, select, yes {did you mean {near}?} other {type one of {all}}}',
  'no.output':
    'unknown output: {given}; {has, select, yes {did you mean {near}?} other {the outputs are {all}}}',
  'no.load': 'unknown load: {given}; type {name}: held, {name}: none or {name}: road',
  'bad.oil chase':
    'with this, valves chase each other in {gear}, and nothing comes to rest: what it applies cannot be said; name another fault, or the devices with --on and no fault of the oil',
  'bad.oil on':
    'what is wrong upstream changes what a gear applies, and --on names what is applied: name the gear with --gear, or a fault of the devices themselves',
  'bad.fault twice': 'two faults of one thing: {given} and {before}; name one fault of each',
  'bad.load twice': 'two loads of one output: {output}; name one',
  'bad.loads': 'no output is left that drives a load: leave one of {all} on the road',
  'no.member':
    'unknown member: {given}; {has, select, yes {did you mean {near}?} other {the members are {all}}}',
  'no.range':
    'unknown range: {given}; {has, select, yes {did you mean {near}?} other {the ranges are {all}}}',
  'flow.given':
    '{state, select, driving {At these speeds the output is settled.} neutral {At these speeds the output is free: neutral.} other {These speeds cannot be together: it is tied up.}}',
  'no.ranges': 'the file names no ranges: say which devices are on with --on',
  'no.gear':
    'unknown gear: {given}; {has, select, yes {did you mean {near}?} other {the gears are {all}}}',
  'no.set':
    'unknown set: {given}; {has, select, yes {did you mean {near}?} other {there are {all}}}',
  'no.side': 'unknown side: {given}; type --side drive or --side coast',
  'bad.picture': 'too much: give one of --end, --lever and --exploded',
  'bad.exploded in gear':
    'an exploded row shows no gear: leave out --range, --gear, --on and --side',
  'bad.side alone': 'which gear? add --range and --gear, or --on',
  'no.way': 'unknown way: {given}; type --way clockwise or --way anticlockwise',
  'no.end':
    'unknown end: {given}; type {all, select, no {--seen-from input or --seen-from output} other {--seen-from with {all}}}',
  'no.race': 'unknown race: {given}; type --hold outer or --hold inner',
  'no.one-way':
    'unknown one-way clutch: {given}; {has, select, yes {did you mean {near}?} other {the one-way clutches are {all}}}',
  'no.language': 'unknown language: {given}; type --lang {all}',
  'no.shell': 'unknown shell: {given}; type holdturn completion bash, zsh or fish',
  'no.file':
    'no such file: {file}{has, select, yes {; did you mean {near}?} other {; give the path of a train file}}',
  'bad.directory': 'not a file: {file} is a directory; give the path of a train file',
  'bad.unreadable':
    'cannot read {file} ({reason}); give the path of a train file that you may read',
  'bad.train':
    '{place}: {problem}{more, plural, =0 {} one { (and one more: type holdturn check {file})} other { (and {more} more: type holdturn check {file})}}',
  'bad.missing file': 'missing train file: type holdturn {verb} FILE, or - for standard input',
  'bad.missing readings': 'missing file of readings: type holdturn {verb} FILE READINGS',
  'bad.missing value': 'missing value: type {option}',
  'bad.missing turn': 'missing member to turn: type --turn MEMBER',
  'bad.missing shell': 'missing shell: type holdturn completion bash, zsh or fish',
  'bad.excess': 'too much: {given}; put names with blanks in them between quotes',
  'bad.choice': 'too much: give --on, or --range and --gear, but not both',
  'bad.gear alone': 'gear {gear} stands in several ranges: add --range with one of {all}',
  'bad.held turned': 'the {member} cannot be held and turned at once: leave it out of --hold',
  'bad.case turned': 'the case cannot be turned: name another member with --turn',
  'bad.speeds': 'unreadable speeds: {given}; type them as in --at "engine=1000,motor=0"',
  'bad.few speeds': 'one speed is not enough: give two or more, as in --at "engine=1000,motor=0"',
  'bad.at losses':
    'too much: at given speeds no losses are reckoned; leave out --mesh-efficiency or --at',
  'bad.efficiency':
    'unreadable efficiency: {given}; type it as in --mesh-efficiency "external=0.985,internal=0.99", above 0 and at most 1',
  'bad.many devices':
    'too many friction devices for a chart: {count}, and {most} at most; ask for one combination with holdturn flow FILE --on DEVICES',
  'bad.csv': 'too much: give --json or --csv, but not both',
  'bad.one-way': 'too much: --one-way asks of races; leave out {option}',
  'bad.file':
    '{place}: {problem}{more, plural, =0 {} one { (and one more)} other { (and {more} more)}}',
  'bad.stdin twice': 'standard input can be read once: give one of the two files by its path',
  'bad.many parts':
    'too many parts for a plan: {count}, and {most} at most; leave out of the teardown what nobody can get wrong',
  'bad.stdin': 'cannot read standard input ({reason}); give the path of a train file',
} as const;
