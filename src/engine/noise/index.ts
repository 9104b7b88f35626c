export * from './atwork.ts';
export * from './noise.ts';
