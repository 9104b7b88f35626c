/** What a value should have been. The messages of the definitions are these words. */
export type Expected =
  | 'section' // entries, a name and its thing each
  | 'version' // 1
  | 'text'
  | 'name'
  | 'member'
  | 'members' // a list, one member or more
  | 'two members' // a list of two
  | 'devices' // a list, possibly empty
  | 'wheel names' // a list, possibly empty
  | 'meshes' // a list of meshes
  | 'mesh' // [wheel, wheel] or [wheel, wheel, internal]
  | 'internal' // the word
  | 'wheel' // [member, teeth]
  | 'teeth' // 1 to 1,000,000
  | 'two teeth' // a list of two
  | 'two ends' // a list of two names
  | 'gear pairs' // a name, or a list of names
  | 'count' // 1 to 100
  | 'way' // clockwise or anticlockwise
  | 'pair kind' // external, internal or chain
  | 'set'
  | 'gear pair'
  | 'part'
  | 'part kind' // shaft, drum, ring, … valve body
  | 'carried' // a list of members, devices and races
  | 'part names' // a list
  | 'note' // a text of one line
  | 'yes or no'
  | 'facing' // input, output, up or down
  | 'end' // input or output
  | 'bolts' // their torque, count, sequence, whether they are new each time
  | 'torque' // with its unit
  | 'volume' // with its unit
  | 'fluid to fill' // its kind and how much
  | 'closed' // a list of packs, bands and shafts
  | 'refit' // reuse or replace
  | 'device'
  | 'size' // 0.001 to 100,000
  | 'ring' // two sizes, the outer first
  | 'friction' // 0.001 to 1
  | 'presses' // uniform pressure or uniform wear
  | 'stall ratio' // 1 to 10
  | 'capacity'
  | 'pack'
  | 'plates' // a list, one plate or more
  | 'plate'
  | 'plate kind' // friction, steel, cushion or backing plate
  | 'depth' // its size, and a tolerance
  | 'shelf'
  | 'shelf part' // backing plate, steel, snap ring or piston
  | 'limit' // least, most, source, by
  | 'end play' // its limit, shelf and stack
  | 'washer part' // washer, race or shim
  | 'band setting' // its pitch, lever, limits and shelf
  | 'lever' // 0.001 to 20
  | 'rod part' // servo rod, apply rod or apply pin
  | 'turns' // 0 to 100
  | 'wear check' // what is measured, and its limit
  | 'wear kind' // bushing, planet side, gear to case, to crescent, gear side, ring gap, …
  | 'stack' // a list, one part or more
  | 'stack part' // its part, size, tolerance and gap
  | 'opens or fills'
  | 'length' // with its unit, above 0 or 0
  | 'lengths' // a list, one length or more
  | 'air' // a pressure with its unit
  // Of readings of packs.
  | 'readings'
  | 'band readings' // turns or travel
  | 'preload' // turning, used, squeeze and shelf
  | 'preload part' // shim, washer or spacer
  | 'torque limit' // least, most, source, by
  | 'force' // with its unit
  | 'torques' // a list, one torque or more
  | 'forces' // a list, one force or more
  | 'pull' // force and radius
  | 'bearings' // new or used
  | 'preload readings' // turning, pull, gap and bearings
  | 'play kind' // end play or backlash
  | 'play readings' // lengths, or play and again
  | 'sure' // yes
  | 'limit of' // which of its gaps or plates
  | 'wear readings' // gaps; or bores and shafts
  | 'on air' // its pressure, and strokes
  | 'depth gauge' // depth and stack, and the height of a straight-edge
  | 'again' // the part that is in now, and what was read
  | 'step gauge' // what fits, and what does not fit
  | 'tyre' // 200 to 2500 mm
  | 'final drive' // 0.2 to 20
  | 'controls' // selector, solenoids, valves, oil
  | 'lines' // a list, possibly empty
  | 'normally' // open or closed, high or low
  | 'solenoid'
  | 'solenoids' // a list, possibly empty
  | 'valve'
  | 'pressures' // a list
  | 'positions' // a list, two or more
  | 'one or two lines'
  | 'ball' // its from and to
  | 'orifice' // its from and to
  | 'servo' // applies, releases
  | 'side' // applies or releases
  // Of a job.
  | 'job' // 1
  | 'entry' // one thing told
  | 'photograph' // a file's name, or with its part or step
  | 'installed' // a part, or with its replacement or why
  | 'built' // a task of a build
  | 'unbuilt' // a step of a build, and why
  | 'went' // right, wrong or found
  | 'time' // with its day, in UTC
  | 'initials'
  | 'id'
  // Of an experience, and of what was seen.
  | 'proportion' // 0 to 1,000,000
  | 'proportions' // some, and not all of them 0
  | 'minutes' // above 0
  | 'under fifty' // above 0, below 50
  | 'over fifty' // above 50, below 100
  | 'risk'
  | 'stage'
  | 'tool'
  | 'pressure' // good, low or high
  | 'fluid' // clean, burnt, metal or milky
  | 'tests seen' // entries, a test and what it showed each; or a list of them
  | 'outcome'; // and `sure` or `not sure` behind a comma
