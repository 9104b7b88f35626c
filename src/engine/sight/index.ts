export { splitConditions, under } from './condition.ts';
export { type TestOutcome, type Sight, sightOf, meantBy } from './outcome.ts';
export { sightMeant, hasRatio, SAID, sayingOf, split, wordsOf } from './saying.ts';
export {
  baseText,
  shiftText,
  type Test,
  testText,
  type EngineSpeed,
  type TestGear,
  type Heat,
  type TestLoad,
  type On,
  type UnitTest,
  testsOf,
  gearText,
  rangesOf,
} from './test.ts';
