export { type Cause } from './cause.ts';
export { inquire, type Inquiry } from './inquiry.ts';
export { type DeviceGrip, type Manner, type Weakness } from './manner.ts';
export { type Prediction } from './prediction.ts';
export { type Reason } from './tables.ts';
