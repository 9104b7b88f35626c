export { differencesOf, oilOf, rangesByOil, withRanges } from './oil.ts';
