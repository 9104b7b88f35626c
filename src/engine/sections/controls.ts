import * as v from 'valibot';
import { APPLIED_DEVICE, byName, plainValue, section } from '../entries/index.ts';
import { kinds, or, plainName, pressure } from '../form/index.ts';
import type { Controls } from '../hydraulics/index.ts';
import { checkControls, lookAtControls } from './controlscheck.ts';

// What tells the devices to apply. The words are the trade's, the symbols' sense ISO 1219-1's.

const line = (description: string) => plainName(description);
const LINE = line('A line of the valve body; `pump` and `exhaust` are two of them.');
const lines = (description: string) =>
  v.pipe(v.array(LINE, or('lines')), v.description(description));
const SOLENOID_NAME = plainName('A solenoid.');
const part = (description: string) => plainName(description);

const AREAS = v.exactOptional(
  v.pipe(
    v.record(
      LINE,
      v.pipe(
        v.number(or('proportion')),
        v.minValue(0.001, or('proportion')),
        v.maxValue(1_000_000, or('proportion')),
        v.description('How large the area is that it pushes on.'),
      ),
      or('section'),
    ),
    v.description('Areas of lines that push on more or less than 1; of a servo, all or none.'),
  ),
);
const opens = v.pipe(
  v.picklist(['open', 'closed'], or('normally')),
  v.description('How it stands without current.'),
);
const BLEEDS = v.pipe(
  v.strictObject({ bleeds: line('The line that it empties while it is open.'), normally: opens }),
  v.description('A two-way solenoid that drains its line.'),
);
const FEEDS = v.pipe(
  v.strictObject({
    feeds: line('The line that it gives oil while it is open.'),
    from: line('Where that oil comes from.'),
    normally: opens,
  }),
  v.description('A two-way solenoid that gives oil.'),
);
const SWITCHES = v.pipe(
  v.strictObject({
    switches: line('The line that it gives oil while it is high, and empties while it is low.'),
    from: line('Where that oil comes from.'),
    normally: v.pipe(
      v.picklist(['high', 'low'], or('normally')),
      v.description('What its line has without current.'),
    ),
  }),
  v.description('A three-way solenoid, or one that controls the pressure of its line.'),
);
const SOLENOID = kinds(
  [BLEEDS, FEEDS, SWITCHES],
  [
    ['bleeds', BLEEDS],
    ['feeds', FEEDS],
    ['switches', SWITCHES],
  ],
  or('solenoid'),
);
const VALVE = v.pipe(
  v.strictObject(
    {
      away: v.exactOptional(lines('Lines that push it away from its first position.')),
      back: v.exactOptional(lines('Lines that push it back, with the spring.')),
      areas: AREAS,
      springs: v.exactOptional(
        v.pipe(
          v.array(pressure('What oil on an area of 1 must exceed.'), or('pressures')),
          v.description('What takes it on from each position; absent: any oil does.'),
        ),
      ),
      positions: v.pipe(
        v.array(
          v.pipe(
            v.record(LINE, LINE, or('section')),
            v.description('Which line each outlet is joined to in this position.'),
          ),
          or('positions'),
        ),
        v.minLength(2, or('positions')),
        v.description('From the one where its spring keeps it.'),
      ),
    },
    or('valve'),
  ),
  v.description('A spool: what pushes it, and what it joins in each position.'),
);
const BALL = v.pipe(
  v.strictObject(
    {
      from: v.pipe(
        v.array(LINE, or('one or two lines')),
        v.minLength(1, or('one or two lines')),
        v.maxLength(2, or('one or two lines')),
        v.description('One line: a one-way ball. Two: it shuts the one that has less.'),
      ),
      to: line('The line that it lets oil into.'),
    },
    or('ball'),
  ),
  v.description('A check ball.'),
);
const ORIFICE = v.pipe(
  v.strictObject(
    { from: line('A line.'), to: line('The line behind the orifice.') },
    or('orifice'),
  ),
  v.description('A narrow way between two lines.'),
);
const SERVO = v.pipe(
  v.strictObject(
    {
      applies: v.exactOptional(lines('Lines whose oil applies it.')),
      releases: v.exactOptional(lines('Lines whose oil takes it off.')),
      areas: AREAS,
      wins: v.exactOptional(
        v.pipe(
          v.picklist(['applies', 'releases'], or('side')),
          v.description('Which side wins where both have oil and no areas are told.'),
        ),
      ),
    },
    or('servo'),
  ),
  v.description('The chambers of a device.'),
);
const inGears = <Its extends v.GenericSchema>(its: Its, description: string) =>
  byName(
    plainName('A range.', { as: 'range', names: 'range' }),
    v.record(plainName('A gear.', { as: 'gear', names: 'gear' }), its, or('section')),
    description,
  );
const named = <Its extends v.GenericSchema>(name: string, its: Its, description: string) =>
  byName(part(name), its, description);

const CONTROLS_FORM = v.pipe(
  v.strictObject(
    {
      pressures: named('A line.', pressure('Its pressure.'), 'Lines with a pressure of their own.'),
      selector: named('A position.', lines('The lines that it feeds.'), 'What the selector feeds.'),
      solenoids: named(
        'A solenoid.',
        SOLENOID,
        'The solenoids, and how each stands without current.',
      ),
      valves: named('A valve.', VALVE, 'The valves, from the nearest to the pump.'),
      balls: named('A ball.', BALL, 'The check balls.'),
      orifices: named('An orifice.', ORIFICE, 'The orifices.'),
      accumulators: named('An accumulator.', LINE, 'The accumulators, each with its line.'),
      oil: byName(APPLIED_DEVICE, SERVO, 'The chambers of each device.'),
      asks: inGears(
        v.pipe(v.array(SOLENOID_NAME, or('solenoids')), v.description('Those with current.')),
        'What the controller asks in each gear: the solenoids that have current.',
      ),
      'pressures in': inGears(
        v.record(part('A line, or a solenoid.'), pressure('Its pressure.'), or('section')),
        'Pressures that are others in a gear: of lines, and of solenoids that control one.',
      ),
      taps: named('A tap.', LINE, 'Where a gauge goes, and the line that it tells of.'),
    },
    or('controls'),
  ),
  v.description('What tells the devices to apply: selector, solenoids, valves, oil.'),
);

export const CONTROLS = section({
  key: 'controls',
  form: v.exactOptional(CONTROLS_FORM),
  read: (entry): { controls?: Controls } => {
    if (!entry) return {};
    return { controls: { ...entry } as unknown as Controls };
  },
  write: ({ controls }) => plainValue(controls),
  check: checkControls,
  lookAgain: lookAtControls,
});
