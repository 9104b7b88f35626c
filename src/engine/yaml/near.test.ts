import { describe, expect, it } from 'vitest';
import { distance, looksLike, nearest } from './near.ts';

describe('the nearest name', () => {
  it.each([
    ['foward clutch', ['direct clutch', 'forward clutch'], 'forward clutch'],
    ['Forward Clutch', ['direct clutch', 'forward clutch'], 'forward clutch'],
    ['forward', ['direct clutch', 'forward clutch'], 'forward clutch'],
    ['snu', ['sun', 'ring'], 'sun'],
    ['sprag', ['low brake', 'ring'], undefined],
    ['a', ['b'], undefined],
    ['A', ['b', 'a'], 'a'],
    ['anything', [], undefined],
  ])('to %s of %j is %s', (name, candidates, near) => {
    expect(nearest(name, candidates)).toBe(near);
  });
});

describe('the distance', () => {
  it.each([
    ['sun', 'sun', 0],
    ['sun', 'snu', 1],
    ['sun', 'son', 1],
    ['ring', 'rings', 1],
    ['brake', 'rake', 1],
    ['front', 'rear', 4],
    ['', 'ring', 4],
  ])('of %s and %s is %i', (a, b, steps) => {
    expect(distance(a, b, 9)).toBe(steps);
    expect(distance(b, a, 9)).toBe(steps);
    expect(distance(a, b, 2)).toBe(Math.min(2, steps));
  });
});

describe('one name spelt twice', () => {
  it.each([
    ['turbin shaft', 'turbine shaft', true],
    ['shaft 1', 'shaft 2', false],
    ['input shaft', 'output shaft', false],
    ['a', 'b', false],
  ])('%s, %s: %s', (a, b, like) => {
    expect(looksLike(a, b)).toBe(like);
  });
});
