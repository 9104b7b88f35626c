export { ESTIMATE, type Inertia, inertiasOf } from './inertia.ts';
