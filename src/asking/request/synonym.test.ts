import { expect, it } from 'vitest';
import { plainName, wayMeant } from './synonym.ts';

it.each([
  ['front.ring', 'front ring'],
  ['Front  Annulus', 'front ring'],
  ['front.ring gear', 'front ring'],
  ['rear arm', 'rear carrier'],
  ['rear planet pinion', 'rear planet'],
  ['rear.portasatélites', 'rear carrier'],
  ['turbine shaft', 'turbine shaft'],
])('%s is %s', (said, ours) => {
  expect(plainName(said)).toBe(ours);
});

it.each([
  ['cw', 'clockwise'],
  ['Counter-Clockwise', 'anticlockwise'],
  ['ccw', 'anticlockwise'],
  ['antihorario', 'anticlockwise'],
  ['up', undefined],
])('%s is %s', (said, way) => {
  expect(wayMeant(said)).toBe(way);
});
