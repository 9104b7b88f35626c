import * as v from 'valibot';
import { count, kinds, plainName, or, teeth } from '../form/index.ts';

// A set in the train file: the keys that it has tell its kind.

const SHARED_SET = plainName('The set whose planets and carrier these wheels use.', {
  as: 'shared',
  names: 'set',
});
const WHEEL_NAME = plainName('The name of a wheel; the member is SET.wheel.', {
  as: 'wheel',
  names: 'wheel',
  own: true,
});
const CARRIED_WHEEL = plainName('A wheel that turns on the carrier.', {
  as: 'carried',
  names: 'wheel',
});
const MESHED_WHEEL = plainName('A wheel of this set.', { as: 'meshed', names: 'wheel' });

const PLAIN = v.pipe(
  v.strictObject(
    {
      sun: teeth('the sun'),
      ring: teeth('the ring'),
      planets: v.exactOptional(count('planets')),
      planet: v.exactOptional(teeth('a planet, where they were counted')),
    },
    or('set'),
  ),
  v.description('Plain planets: each meshes the sun and the ring.'),
);
const PAIR = v.pipe(
  v.strictObject(
    {
      sun: teeth('the sun'),
      ring: teeth('the ring'),
      pairs: count('pairs of planets'),
      inner: v.exactOptional(teeth('an inner planet, next to the sun')),
      outer: v.exactOptional(teeth('an outer planet, next to the ring')),
    },
    or('set'),
  ),
  v.description('Meshed pairs: sun, inner planet, outer planet, ring.'),
);
const STEPPED = v.pipe(
  v.strictObject(
    {
      sun: teeth('the sun'),
      ring: teeth('the ring'),
      planets: v.exactOptional(count('planets')),
      steps: v.pipe(
        v.strictTuple(
          [teeth('the step that meshes the sun'), teeth('the step that meshes the ring')],
          or('two teeth'),
        ),
        v.description(
          'Teeth of the planet: the step that meshes the sun, the step that meshes the ring.',
        ),
      ),
    },
    or('set'),
  ),
  v.description(
    'Stepped planets: one body with two wheels; the sun meshes the first, the ring the second.',
  ),
);
export const SHARING = v.pipe(
  v.strictObject(
    {
      shares: SHARED_SET,
      sun: v.exactOptional(teeth('the sun')),
      ring: v.exactOptional(teeth('the ring')),
      planets: v.exactOptional(count('planets; as in the other set')),
      pairs: v.exactOptional(count('inner planets between this sun and the shared planets')),
      inner: v.exactOptional(teeth('an inner planet')),
    },
    or('set'),
  ),
  v.description('A sun, a ring or both on the planets of another set.'),
);
const WHEELS = v.pipe(
  v.strictObject(
    {
      wheels: v.pipe(
        v.record(WHEEL_NAME, teeth('the wheel'), or('section')),
        v.description('Every wheel and its teeth.'),
      ),
      carried: v.pipe(
        v.array(CARRIED_WHEEL, or('wheel names')),
        v.description('The wheels that turn on the carrier; the others turn about the main axis.'),
      ),
      meshes: v.pipe(
        v.array(
          v.union(
            [
              v.pipe(
                v.strictTuple([MESHED_WHEEL, MESHED_WHEEL], or('mesh')),
                v.description('Two wheels in mesh.'),
              ),
              v.pipe(
                v.strictTuple(
                  [MESHED_WHEEL, MESHED_WHEEL, v.literal('internal', or('internal'))],
                  or('mesh'),
                ),
                v.description('A planet in mesh with a ring gear.'),
              ),
            ],
            or('mesh'),
          ),
          or('meshes'),
        ),
        v.description(
          'Which wheels mesh: [wheel, wheel], or with a ring gear [ring, planet, internal].',
        ),
      ),
    },
    or('set'),
  ),
  v.description('Any other arrangement of wheels round one carrier.'),
);
const BEVEL = v.pipe(
  v.strictObject(
    {
      sides: v.pipe(
        v.strictTuple([teeth('the left side gear'), teeth('the right side gear')], or('two teeth')),
        v.description('Teeth of the left and the right side gear.'),
      ),
      pinions: v.exactOptional(count('pinions')),
      pinion: v.exactOptional(teeth('a pinion')),
    },
    or('set'),
  ),
  v.description('A bevel differential: NAME.left and NAME.right, pinions on NAME.carrier.'),
);
/** A set with none of the telling keys is a plain one. */
export const SET = kinds(
  [PLAIN, PAIR, STEPPED, SHARING, WHEELS, BEVEL],
  [
    ['sides', BEVEL],
    ['wheels', WHEELS],
    ['carried', WHEELS],
    ['meshes', WHEELS],
    ['shares', SHARING],
    ['steps', STEPPED],
    ['pairs', PAIR],
    ['inner', PAIR],
    ['outer', PAIR],
    ['sun', PLAIN],
    ['ring', PLAIN],
    ['planets', PLAIN],
    ['planet', PLAIN],
  ],
  or('set'),
);
