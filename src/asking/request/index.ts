export { type AsFound, faultsOf, trainAsFound } from './found.ts';
export { errorsIn, type Given, mustBeSound, type Renamed, renamedIn, trainIn } from './given.ts';
export { lossesOf } from './losses.ts';
export { type Hands, handsOf, speedsOf } from './members.ts';
export { meant, unknown } from './names.ts';
export { NoAnswer, type Refused, type Unknown } from './refused.ts';
export { type GearChoice, gearsAsked, type GearSelection, selectionOf } from './selection.ts';
export { AT_THE_INPUT, opposite, type Stand, wayFor } from './stand.ts';
export { raceHeld, standAt } from './standat.ts';
