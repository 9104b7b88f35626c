export { differencesOf, type GearOil, oilOf, rangesByOil, withRanges } from './oil.ts';
