export { Stepper } from './stepper.ts';
