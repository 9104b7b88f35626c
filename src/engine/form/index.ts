export { fits, type Form, kinds, mayBeAbsent, opened, within } from './form.ts';
export { isMemberName, isName, memberName, plainName } from './name.ts';
export { readNamed } from './named.ts';
export { isBorne, type Mention, type NamedKind, type Role } from './role.ts';
export {
  count,
  force,
  length,
  note,
  or,
  pressure,
  teeth,
  text,
  torque,
  volume,
  WAY,
} from './value.ts';
export { Walker } from './walker.ts';
