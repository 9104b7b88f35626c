import fc from 'fast-check';
import { seedOfRun } from './dice.ts';

// Runs before every test file: properties without a seed of their own take the run's.
fc.configureGlobal({ seed: seedOfRun() });
