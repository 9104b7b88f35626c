export { type Failure, failuresOf, type Root } from './failure.ts';
export { type Shown, shownOf } from './shown.ts';
export {
  type Finding,
  findingsIn,
  type FoundSign,
  SIGNS_OF_THINGS,
  SIGNS_OF_UNITS,
} from './finding.ts';
