export type * from './answer.ts';
export { lastSeen } from './last.ts';
export { MOST_PARTS, plan } from './plan.ts';
