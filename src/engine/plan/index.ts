export type * from './answer.ts';
export { MOST_PARTS, plan } from './plan.ts';
