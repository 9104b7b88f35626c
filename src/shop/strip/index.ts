export { kindOfPart } from './kind.ts';
