export * from './claim.ts';
export * from './seen.ts';
