import type { Train } from '../../engine/train/index.ts';

/** The train of a file that says nothing yet. */
export const NOTHING: Train = {
  name: '',
  about: '',
  input: '',
  output: '',
  sets: [],
  pairs: [],
  joins: [],
  devices: [],
  ranges: [],
};
