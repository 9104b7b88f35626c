export type * from './answer.ts';
export { plan } from './plan.ts';
