export { isWorded, labelOf, optionText, questionOf } from './wording.ts';
