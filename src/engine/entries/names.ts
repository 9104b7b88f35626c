import { memberName, plainName } from '../form/index.ts';
import { type Device, isApplied, isFriction } from '../train/index.ts';

// Names that more than one section uses, and what each is of.

export const MEMBER = memberName(
  'A member: SET.part, `case`, the input, the output, or any name that you give it.',
);
const notApplied = (device: string) => ({ problem: 'not applied', device }) as const;
const noPlates = (device: string) => ({ problem: 'no plates', device }) as const;
const notABand = (device: string) => ({ problem: 'not a band', device }) as const;
const hasPlates = ({ kind }: Device) => kind === 'clutch' || kind === 'brake';

export const APPLIED_DEVICE = plainName('A clutch, brake or band that is applied in this gear.', {
  as: 'applied',
  names: 'device',
  only: isApplied,
  otherwise: notApplied,
});
export const FED_DEVICE = plainName('A clutch, brake or band whose oil goes through the part.', {
  as: 'fed',
  names: 'device',
  only: isApplied,
  otherwise: notApplied,
  offered: isFriction,
});
export const SIZED_DEVICE = plainName('A device whose capacity this is.', {
  as: 'sized',
  names: 'device',
});
export const PACKED_DEVICE = plainName('A clutch or brake whose plates these are.', {
  as: 'packed',
  names: 'device',
  only: hasPlates,
  otherwise: noPlates,
});
export const SET_BAND = plainName('A band whose clearance this is.', {
  as: 'set band',
  names: 'device',
  only: ({ kind }) => kind === 'band',
  otherwise: notABand,
});
