import * as v from 'valibot';
import { count, memberName, plainName, note, or, torque } from '../form/index.ts';
import { ENDS, FACINGS, PART_KINDS } from '../train/index.ts';
import { LIMIT, SOURCED, FED_DEVICE } from '../entries/index.ts';

const CARRIED = memberName(
  'What the part carries: a member, a device, or a race of a one-way clutch (NAME.inner, NAME.outer).',
  { as: 'on a part', names: 'carried' },
);
const CLOSED_NAME = plainName(
  'A clutch, brake, band or shaft that is measured, or bearings with a preload.',
  {
    as: 'closed',
    names: 'gap',
  },
);
const COVER_NAME = plainName('The name of another part.', { as: 'cover', names: 'part' });

const yesOrNo = (description: string) =>
  v.pipe(v.picklist(['yes', 'no'], or('yes or no')), v.description(description));
const partNames = (description: string) =>
  v.pipe(v.array(COVER_NAME, or('part names')), v.description(description));

const BOLTS = v.pipe(
  v.strictObject(
    {
      torque: v.exactOptional(torque('What they are tightened to.')),
      count: v.exactOptional(count('bolts')),
      sequence: v.exactOptional(note('The order in which they are drawn down.')),
      once: v.exactOptional(yesOrNo('Whether they are used once only. Absent: no.')),
      ...SOURCED,
    },
    or('bolts'),
  ),
  v.description('What it is bolted down with, and its torque.'),
);

/** A part of the teardown: a person writes what matters and leaves out the rest. */
export const PART = v.pipe(
  v.strictObject(
    {
      carries: v.exactOptional(
        v.pipe(
          v.array(CARRIED, or('carried')),
          v.description('The members, devices and races of one-way clutches that come with it.'),
        ),
      ),
      kind: v.exactOptional(
        v.pipe(
          v.picklist(PART_KINDS, or('part kind')),
          v.description(
            'What it is, for its picture and for what is looked at. Absent: told by its name, or by what it carries.',
          ),
        ),
      ),
      inner: v.exactOptional(note('What it engages inside: splines, lugs, a press fit.')),
      outer: v.exactOptional(note('What it engages outside: splines, lugs, a press fit.')),
      face: v.exactOptional(
        note('Which of its faces is the one to look at; where it looks stands under faces.'),
      ),
      faces: v.exactOptional(
        v.pipe(
          v.picklist(FACINGS, or('facing')),
          v.description(
            'Where its face looks: to an end of the unit, or up or down as the unit stands then. Absent with a face: input.',
          ),
        ),
      ),
      up: v.exactOptional(
        v.pipe(
          v.picklist(ENDS, or('end')),
          v.description(
            'The end of the unit that is up as it comes off and goes on. Absent: as for the part before it.',
          ),
        ),
      ),
      align: v.exactOptional(note('What must line up: a feed hole, a groove, a lug.')),
      frictions: v.exactOptional(count('friction discs')),
      steels: v.exactOptional(count('steel plates')),
      selective: v.exactOptional(yesOrNo('Whether it comes in several thicknesses. Absent: no.')),
      sets: v.exactOptional(
        v.pipe(
          CLOSED_NAME,
          v.description(
            'The pack, the band or the shaft whose gap its thickness sets, or the bearings whose preload.',
          ),
        ),
      ),
      refit: v.exactOptional(
        v.pipe(
          v.picklist(['reuse', 'replace'], or('refit')),
          v.description('Whether it goes in again or a new one does.'),
        ),
      ),
      photo: v.exactOptional(note('The file name of a photograph.')),
      height: v.exactOptional(
        v.pipe(LIMIT, v.description('How far it stands below the face of the case.')),
      ),
      bolts: v.exactOptional(BOLTS),
      feeds: v.exactOptional(
        v.pipe(
          v.array(FED_DEVICE, or('devices')),
          v.description(
            'Clutches, brakes and bands whose oil goes through it, between the port in the case and the piston: air is put on them after it is on. Not of a valve body, which covers the ports: air comes before it.',
          ),
        ),
      ),
      closes: v.exactOptional(
        v.pipe(
          v.array(CLOSED_NAME, or('closed')),
          v.description(
            'Packs, bands, shafts and preloads that can be measured once it is on. Absent of all: a pack and a band by the part that carries them, a shaft and a preload by the last part of the build. None is measured before what sets it is in.',
          ),
        ),
      ),
      covers: v.exactOptional(partNames('Parts that cannot be reached while this one is on.')),
      under: v.exactOptional(
        partNames(
          'Parts that must come off before this one can be reached; [] for none. Absent: the one above it, unless another says that it covers it.',
        ),
      ),
      'hidden by': v.exactOptional(
        partNames('Parts that keep hands off it; [] for none. Absent: those that it is under.'),
      ),
    },
    or('part'),
  ),
  v.description('A part as it comes off: what it carries, and what to look at.'),
);
