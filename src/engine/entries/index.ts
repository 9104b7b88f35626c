export { CAPACITY, size } from './capacity.ts';
export { LIMIT, shelf, SOURCED, tolerance } from './limit.ts';
export {
  SET_BAND,
  SIZED_DEVICE,
  MEMBER,
  PACKED_DEVICE,
  FED_DEVICE,
  APPLIED_DEVICE,
} from './names.ts';
export {
  plainValue,
  listed,
  type PlaceOf,
  whole,
  byName,
  type Entry,
  listOf,
  mapOf,
  section,
  type AnySection,
} from './section.ts';
